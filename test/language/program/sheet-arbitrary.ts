import fc from 'fast-check';

/** Names with and without a meaning elsewhere in JavaScript. */
const names = ['a', 'b', 'c', 'd', 'f', '__proto__', 'constructor', 'toString', 'hasOwnProperty', 'pi'] as const;
const name = fc.constantFrom(...names);

const leaf = fc.oneof(
  name,
  fc.constantFrom(
    '3 V',
    '2 A',
    '5 Ω',
    '20 °C',
    '3 %',
    '2',
    '0',
    '1 kW',
    '2 kVA',
    'yes',
    '10 AWG red',
    '10 AWG',
    '5 Kw',
    '"x"',
  ),
);

const expression: fc.Arbitrary<string> = fc.letrec<{ any: string }>((tie) => ({
  any: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    leaf,
    fc
      .tuple(tie('any'), fc.constantFrom('+', '-', '*', '/', '^', '<', '==', 'and'), tie('any'))
      .map((parts) => parts.join(' ')),
    tie('any').map((inner) => `(${inner})`),
    tie('any').map((inner) => `sqrt(${inner})`),
    tie('any').map((inner) => `f(${inner})`),
    tie('any').map((inner) => `drop(${inner})`),
    tie('any').map((inner) => `drop(${inner}, long: yes).volts`),
    tie('any').map((inner) => `${inner} in V`),
    fc.tuple(tie('any'), fc.constantFrom('volts', 'limit', '__proto__', 'x')).map((parts) => parts.join('.')),
    fc.tuple(tie('any'), tie('any'), tie('any')).map(([a, b, c]) => `if ${a} then ${b} else ${c}`),
    fc.array(tie('any'), { maxLength: 3 }).map((items) => `max([${items.join(', ')}])`),
  ),
})).any;

const plainStatement = fc.oneof(
  { weight: 6, arbitrary: fc.tuple(name, expression).map(([defined, value]) => `${defined} = ${value}`) },
  { weight: 1, arbitrary: expression },
  { weight: 1, arbitrary: expression.map((value) => `check ${value} "label"`) },
  { weight: 1, arbitrary: fc.tuple(name, expression).map(([defined, value]) => `${defined}(x) = x * ${value}`) },
  {
    weight: 1,
    arbitrary: fc.tuple(name, expression).map(([defined, value]) => `${defined} = drop\n  current: ${value}`),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(name, expression).map(([defined, value]) => `input ${defined} = ${value} from 1 V to 4 V "x"`),
  },
);

/** One or two unknowns, with bounds or without, and about as many equations. */
const solve = fc
  .tuple(
    fc.array(fc.tuple(name, fc.constantFrom('', ' in 0 .. 9', ' in 1 V .. 9 V')), { minLength: 1, maxLength: 2 }),
    fc.array(fc.tuple(expression, expression), { minLength: 1, maxLength: 3 }),
  )
  .map(([unknowns, equations]) =>
    [
      `solve ${unknowns.map((one) => one.join('')).join(', ')}`,
      ...equations.map((sides) => `  ${sides.join(' == ')}`),
    ].join('\n'),
  );

const statement = fc.oneof({ weight: 10, arbitrary: plainStatement }, { weight: 2, arbitrary: solve });

/** A cell of a few statements, right and wrong ones mixed. */
export const cellText: fc.Arbitrary<string> = fc.array(statement, { maxLength: 4 }).map((lines) => lines.join('\n'));
