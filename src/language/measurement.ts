import { misfit } from './checking/arithmetic';
import type { Type } from './checking/type';
import { meterType } from './checking/types';
import { defineFunction, Failure, type FunctionDefinition } from './library';

/** The accuracy that a meter's maker states: limits ± (reading % × |value| + digits × resolution + range). */
export interface Meter {
  /** % of the reading. */
  readonly reading: number;
  /** Counts of the last digit. */
  readonly digits: number;
  /** In the coherent SI unit, as are the limits. */
  readonly range: number;
  /** What one count is; absent where the reading as written tells. */
  readonly resolution?: number;
}

const limitsSource = 'JCGM 100 (GUM), 4.3.7: limits with nothing known inside them are rectangular, u = a/√3';

export const meter: FunctionDefinition = {
  name: 'meter',
  summary: 'The accuracy of a meter, for readings written with `by`.',
  parameters: {
    reading: { unit: '%', named: true, optional: true, atLeast: 0, meaning: 'share of the reading' },
    digits: { unit: '', named: true, optional: true, atLeast: 0, meaning: 'counts of the last digit' },
    range: { units: [], named: true, optional: true, meaning: 'part that does not hang on the reading' },
    resolution: { units: [], named: true, optional: true, meaning: 'one count; else the last digit as written' },
  },
  result: { text: true, meaning: 'the meter' },
  formula: 'limits = ±(reading × |value| + digits × resolution + range)',
  sources: [limitsSource],
  examples: [{ text: 'meter(reading: 0.8 %, digits: 5)', gives: 'meter ± (0.8 % + 5)' }],
  infer: (types) => {
    const measures = types.find(
      (type) => type.kind === 'quantity' && type.unit.symbol !== '%' && type.unit.symbol !== '',
    );
    if (measures?.kind !== 'quantity') {
      return meterType;
    }
    const odd = types.findIndex((type) => isAbsolute(type) || (hasUnit(type) && !isLike(measures, type)));
    return odd < 0
      ? { kind: 'meter', measures }
      : {
          problem: '`range` and `resolution` are of the kind that the meter reads; for temperatures in K.',
          argument: odd,
        };
  },
  evaluate: ({ reading = 0, digits = 0, range = 0, resolution }: Partial<Meter>) => {
    if (reading === 0 && digits === 0 && range === 0) {
      return new Failure(
        'This meter has no accuracy: state `reading:`, `digits:` or `range:` from its data sheet.',
        undefined,
        'no-accuracy',
      );
    }
    return range < 0 || (resolution !== undefined && resolution <= 0)
      ? new Failure('`range` and `resolution` of a meter are above 0.', undefined, 'out-of-bounds')
      : { reading, digits, range, resolution };
  },
} as FunctionDefinition;

/** A value with its standard uncertainty. The evaluator adds the doubt; the function gives the value. */
export const measured: FunctionDefinition = defineFunction({
  name: 'measured',
  summary: 'A value with a known standard uncertainty, such as one from a calibration certificate.',
  parameters: {
    value: { units: [], meaning: 'the value' },
    standard: { units: [], named: true, meaning: 'its standard uncertainty' },
    with: {
      units: [],
      named: true,
      optional: true,
      repeated: true,
      meaning: 'another reading that it is correlated with; once for each',
    },
    correlation: {
      unit: '',
      named: true,
      optional: true,
      repeated: true,
      meaning: 'the correlation coefficient for each `with:`, in the same order',
    },
  },
  result: { unit: '', meaning: 'the value, uncertain' },
  sources: ['JCGM 100 (GUM), 4.3.3; correlation: 5.2'],
  examples: [{ text: 'measured(13.2 Ω, standard: 0.05 Ω)', gives: '13.20 Ω ± 0.10 Ω' }],
  infer: ([value, standard, ...correlations]) => {
    if (value.kind !== 'quantity') {
      return { problem: 'the value is one quantity.', argument: 0 };
    }
    if (!isLike(value, standard)) {
      return { problem: '`standard` is of the same kind as the value.', argument: 1 };
    }
    const list = correlations.findIndex((type) => type.kind !== 'quantity');
    if (list >= 0) {
      return { problem: '`with:` names one quantity at a time.', argument: 2 + list };
    }
    return correlations.length % 2 === 0
      ? value
      : { problem: 'each `with:` has its `correlation:`, in the same order.', argument: 2 };
  },
  evaluate: ({ value }) => value as unknown as number,
});

export const measurement: readonly FunctionDefinition[] = [meter, measured];

const isAbsolute = (type: Type): boolean => type.kind === 'quantity' && type.quantity.kind === 'absolute';

const hasUnit = (type: Type): boolean =>
  type.kind !== 'quantity' || (type.unit.symbol !== '%' && type.unit.symbol !== '');

/** True for limits of a quantity: like it, or, for a temperature, a difference. */
export const isLike = (value: Extract<Type, { kind: 'quantity' }>, limits: Type): boolean =>
  limits.kind === 'quantity' &&
  (!misfit(value.quantity, limits.quantity) ||
    (value.quantity.kind === 'absolute' && value.quantity.dimension === limits.quantity.dimension));
