import { ownUnit, writtenIn } from '../checking/types';
import {
  anyNumber,
  anyQuantity,
  defineMathematics,
  givesNumber,
  isQuantity,
  type MathematicsFunction,
} from './operation';

const angle = { x: anyNumber('angle: with ° or in radians') };
const ratio = { x: anyNumber('ratio from -1 to 1') };
const angleResult = () => writtenIn(ownUnit('rad'));
const outside = 'has no value outside -1 to 1';

export const sin: MathematicsFunction = defineMathematics({
  name: 'sin',
  summary: 'The sine of an angle.',
  parameters: angle,
  infer: givesNumber,
  gives: 'the sine',
  operation: { kind: 'one', compute: Math.sin, slope: Math.cos },
  examples: [{ text: 'sin(30 °)', gives: '0.5' }],
});

export const cos: MathematicsFunction = defineMathematics({
  name: 'cos',
  summary: 'The cosine of an angle.',
  parameters: angle,
  infer: givesNumber,
  gives: 'the cosine',
  operation: { kind: 'one', compute: Math.cos, slope: (x) => -Math.sin(x) },
  examples: [{ text: 'cos(60 °)', gives: '0.5' }],
});

export const tan: MathematicsFunction = defineMathematics({
  name: 'tan',
  summary: 'The tangent of an angle.',
  parameters: angle,
  infer: givesNumber,
  gives: 'the tangent',
  operation: { kind: 'one', compute: Math.tan, slope: (x) => 1 / Math.cos(x) ** 2 },
  examples: [{ text: 'tan(45 °)', gives: '1' }],
});

export const asin: MathematicsFunction = defineMathematics({
  name: 'asin',
  summary: 'The angle whose sine this is.',
  parameters: ratio,
  infer: angleResult,
  gives: 'the angle, -90° to 90°',
  undefinedWhere: outside,
  operation: { kind: 'one', compute: Math.asin, slope: (x) => 1 / Math.sqrt(1 - x * x) },
  examples: [{ text: 'asin(0.5) in °', gives: '30 °' }],
});

export const acos: MathematicsFunction = defineMathematics({
  name: 'acos',
  summary: 'The angle whose cosine this is, such as that of a power factor.',
  parameters: ratio,
  infer: angleResult,
  gives: 'the angle, 0° to 180°',
  undefinedWhere: outside,
  operation: { kind: 'one', compute: Math.acos, slope: (x) => -1 / Math.sqrt(1 - x * x) },
  examples: [{ text: 'acos(0.5) in °', gives: '60 °' }],
});

export const atan: MathematicsFunction = defineMathematics({
  name: 'atan',
  summary: 'The angle whose tangent this is.',
  parameters: { x: anyNumber('any number') },
  infer: angleResult,
  gives: 'the angle, -90° to 90°',
  operation: { kind: 'one', compute: Math.atan, slope: (x) => 1 / (1 + x * x) },
  examples: [{ text: 'atan(1) in °', gives: '45 °' }],
});

export const atan2: MathematicsFunction = defineMathematics({
  name: 'atan2',
  summary: 'The angle of the point (x, y), in the right quadrant; x and y are alike.',
  parameters: { y: anyQuantity('height'), x: anyQuantity('breadth, like the height') },
  infer: ([y, x]) => {
    if (!isQuantity(y) || !isQuantity(x) || y.quantity.dimension !== x.quantity.dimension) {
      return { problem: 'both must be of one kind.', argument: 1 };
    }
    const scaled = [y, x].findIndex((type) => type.quantity.kind === 'absolute');
    return scaled < 0 ? angleResult() : { problem: 'temperatures on a scale make no angle.', argument: scaled };
  },
  gives: 'the angle, -180° to 180°',
  operation: {
    kind: 'two',
    compute: Math.atan2,
    slopes: (y, x) => [x / (x * x + y * y), -y / (x * x + y * y)],
  },
  examples: [{ text: 'atan2(3 kvar, 3 kW) in °', gives: '45 °' }],
});
