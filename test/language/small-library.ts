import {
  Absent,
  defineFunction,
  Failure,
  type FunctionDefinition,
  type Library,
  type ObjectType,
} from '../../src/language';

/** A size of the tests' own trade: beads of a gauge and a colour. */
export interface Bead {
  readonly size: string;
  readonly colour: string;
}

const beadType: ObjectType<Bead> = {
  name: 'bead',
  described: 'a bead',
  text: ({ size, colour }) => `${size} ${colour}`,
  unordered: 'Compare their weights.',
};

const weight = defineFunction({
  name: 'weight',
  summary: 'Weight of a bead.',
  parameters: {
    bead: { object: beadType, meaning: 'which bead' },
    count: { unit: '', named: true, default: 1, atLeast: 1, meaning: 'how many' },
  },
  result: { unit: 'kg', meaning: 'their weight' },
  sources: ['made up for the tests'],
  examples: [],
  evaluate: ({ count }, call) => {
    call.fact({ about: 'weight' });
    call.assume('glass');
    return 2 * count;
  },
});

const drop = defineFunction({
  name: 'drop',
  summary: 'A record with a field that may be absent.',
  parameters: {
    current: { unit: 'A', atLeast: 0, meaning: 'the current' },
    metal: { choice: ['Cu', 'Al'], named: true, default: 'Cu', meaning: 'the metal' },
    long: { yesNo: true, named: true, default: false, meaning: 'yes for a long run' },
    load: { units: ['W', 'VA'], named: true, optional: true, meaning: 'the load' },
  },
  result: {
    record: {
      volts: { unit: 'V', meaning: 'the drop' },
      limit: { unit: 'V', meaning: 'the limit' },
      metal: { choice: ['Cu', 'Al'], meaning: 'the metal' },
      unit: { text: true, meaning: 'unit of the load' },
    },
  },
  sources: ['made up for the tests'],
  examples: [],
  evaluate: ({ current, metal, long, load }) =>
    current > 100
      ? new Failure('More than 100 A is not for this function.', 'current', 'out-of-bounds')
      : {
          volts: current * (metal === 'Cu' ? 1 : 2),
          limit: long ? 5 : new Absent('the run is short.'),
          metal,
          unit: load ? load.unit : 'none',
        },
});

const broken = defineFunction({
  name: 'broken',
  summary: 'Throws, which no function may.',
  parameters: {},
  result: { unit: 'V', meaning: 'never there' },
  sources: ['made up for the tests'],
  examples: [],
  evaluate: () => {
    throw new Error('broken on purpose');
  },
});

/** A small library that shows everything the language asks of one. */
export const smallLibrary: Library = {
  vocabulary: {
    sizeUnits: new Set(['AWG']),
    alwaysSizeUnits: new Set(['AWG']),
    designationWords: new Set(['red', 'blue']),
    hyphenatedWords: new Set(),
  },
  functions: new Map<string, FunctionDefinition>([
    ['weight', weight],
    ['drop', drop],
    ['broken', broken],
  ]),
  designation: {
    type: beadType as ObjectType,
    read: (size, words) =>
      words.length === 0
        ? { problem: 'A bead needs its colour.', code: 'unknown-conductor-word', replacements: [`${size} red`] }
        : { value: { size, colour: words[0] }, assumptions: ['round'] },
  },
  system: 'US',
  settings: undefined,
};
