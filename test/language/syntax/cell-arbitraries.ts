import fc from 'fast-check';

/** Fragments of good and bad cells, joined in any order: far likelier to reach odd corners than plain random text. */
const fragments = [
  ...['a', 'b_1', 'Δθ', 'R₂', 'x', 'kiln', '__proto__', 'schedule', 'from', 'to', 'over range', 'OL'],
  ...['if', 'then', 'else', 'and', 'or', 'not', 'in', 'by', 'where', 'yes', 'no'],
  ...['check ', 'solve ', 'input ', 'use ', 'allow ', 'f(a, b) = '],
  ...['0', '5', '1,000', '1_000', '2,5', '.5', '1e3', '12', '1/0', '1e999', '0.1', '99999999999999999999'],
  ...[
    ' V',
    ' Ω/kft',
    ' %',
    ' °C',
    ' mm²',
    ' AWG',
    ' AWG Cu',
    ' kcmil Al',
    ' in',
    ' volts',
    '#12 Cu',
    ' XHHW-2',
    'NM-B',
  ],
  ...[
    '=',
    '==',
    '!=',
    '<=',
    '>',
    '+',
    '-',
    '*',
    '/',
    '^',
    '²',
    '±',
    '+-',
    '·',
    '×',
    '−',
    '..',
    '.',
    ',',
    ':',
    '|',
    '#',
    '@',
    '%',
    '°',
  ],
  ...['(', ')', '[', ']', '"', '"label"', '“label”', '// remark', '//'],
  ...['\n', '\n', '\n  ', '\n    ', '\r\n', '\r', '\t', ' ', ' ', '\u00a0', '\u0000', '😀', '\ud800'],
  ...[
    '\n  load: 5 A',
    '\nk = circuit\n  load: 5 A\n',
    '\np = schedule\n  | a | b |\n  | - | - |\n  | 1 | 2 |\n  c = a\n',
  ],
  ...['\nsolve a\n  a == 5\n', ' = ', '\nx = 5 V\n'],
];

export const roughCell: fc.Arbitrary<string> = fc.oneof(
  { weight: 4, arbitrary: fc.array(fc.constantFrom(...fragments), { maxLength: 40 }).map((parts) => parts.join('')) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
);

/** A good cell with some of its text cut out, doubled or replaced. */
export const mutatedCell = (good: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...good),
      fc.array(fc.tuple(fc.nat(), fc.nat({ max: 8 }), fc.constantFrom('', ...fragments)), { maxLength: 4 }),
    )
    .map(([text, changes]) =>
      changes.reduce((now, [at, length, insert]) => {
        const from = at % (now.length + 1);
        return now.slice(0, from) + insert + now.slice(from + length);
      }, text),
    );
