import { inUnit, near } from '../functions/sheet';

interface Load {
  readonly V: number;
  readonly I: number;
  readonly R: number;
  readonly P: number;
}

const units: Readonly<Record<keyof Load, string>> = { V: 'V', I: 'A', R: 'Ω', P: 'W' };
const names = ['V', 'I', 'R', 'P'] as const;

/** A cell that is given two of the four and solves for the others. */
function sheet(load: Load, given: readonly (keyof Load)[], wanted: keyof Load): string {
  const unknowns = names.filter((name) => !given.includes(name));
  return [
    ...given.map((name) => `${name} = ${load[name]} ${units[name]}`),
    `solve ${unknowns.join(', ')}`,
    '  V == I * R',
    '  P == V * I',
    wanted,
  ].join('\n');
}

/** The twelve formulas of the power wheel: common practice, no source. */
const formulas: readonly (readonly [given: readonly (keyof Load)[], wanted: keyof Load, (load: Load) => number])[] = [
  [['I', 'R'], 'V', ({ I, R }) => I * R],
  [['P', 'I'], 'V', ({ P, I }) => P / I],
  [['P', 'R'], 'V', ({ P, R }) => Math.sqrt(P * R)],
  [['V', 'R'], 'I', ({ V, R }) => V / R],
  [['P', 'V'], 'I', ({ P, V }) => P / V],
  [['P', 'R'], 'I', ({ P, R }) => Math.sqrt(P / R)],
  [['V', 'I'], 'R', ({ V, I }) => V / I],
  [['P', 'V'], 'R', ({ P, V }) => V ** 2 / P],
  [['P', 'I'], 'R', ({ P, I }) => P / I ** 2],
  [['V', 'I'], 'P', ({ V, I }) => V * I],
  [['V', 'R'], 'P', ({ V, R }) => V ** 2 / R],
  [['I', 'R'], 'P', ({ I, R }) => I ** 2 * R],
];

/**
 * Loads with all four figures in print: Lessons in Electric Circuits (open textbook), vol. I, chapter on Ohm's law: a
 * lamp of 3 Ω on 18 V takes 6 A and 108 W, on 36 V 12 A and 432 W.
 */
const lamps: readonly Load[] = [
  { V: 18, I: 6, R: 3, P: 108 },
  { V: 36, I: 12, R: 3, P: 432 },
];

describe('the power wheel, any way round', () => {
  for (const [given, wanted, formula] of formulas) {
    it(`${wanted} from ${given.join(' and ')}`, () => {
      for (const load of lamps) {
        near(inUnit(sheet(load, given, wanted), units[wanted]), load[wanted], 1e-12, wanted);
      }
      const odd: Load = { V: 207.6, I: 15.7154, R: 13.21, P: 3262.5 };
      near(inUnit(sheet(odd, given, wanted), units[wanted]), formula(odd), 1e-12, wanted);
    });
  }

  it('bounds choose the other one of two opposite values', () => {
    const text = sheet({ V: 0, I: 0, R: 3, P: 108 }, ['P', 'R'], 'I');
    near(inUnit(text.replace('solve V, I', 'solve V, I in -100 A .. 0 A'), 'A'), -6, 1e-12);
    near(inUnit(text.replace(/\nI$/, '\nV').replace('solve V, I', 'solve V, I in -100 A .. 0 A'), 'V'), -18, 1e-12);
  });
});
