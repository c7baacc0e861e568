/**
 * Records what GNU units says of each of our units in `test/reference/gnu-units.json`, so that the comparison also runs
 * where the program is missing: `npx tsx src/dev/freeze-gnu-units.ts`.
 */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bases, type Dimension, type NamedUnit, type UnitWord, unitWords } from '../units';

export interface FrozenUnits {
  readonly version: string;
  /** `factor`: of one unit, in the coherent SI unit, by our symbol. */
  readonly factors: Readonly<Record<string, number>>;
  /** Points of the temperature scales, in kelvins. */
  readonly temperatures: Readonly<Record<'°C' | '°F', Readonly<Record<string, number>>>>;
}

export const frozenPath = join(__dirname, '..', '..', 'test', 'reference', 'gnu-units.json');

/** What GNU units calls a unit, where it is not our symbol. Its `hp` is mechanical and its `rpm` an angular velocity. */
const expressions: Readonly<Record<string, string>> = {
  Ω: 'ohm',
  VA: 'V A',
  var: 'V A',
  Wh: 'W hour',
  VAh: 'V A hour',
  varh: 'V A hour',
  Ah: 'A hour',
  h: 'hour',
  d: 'day',
  L: 'liter',
  '°': 'degree',
  '%': 'percent',
  rad: 'radian',
  rpm: '1/minute',
  'Δ°C': 'degC',
  'Δ°F': 'degF',
  in: 'inch',
  mi: 'mile',
  kft: '1000 ft',
  cmil: 'circularmil',
  kcmil: '1000 circularmil',
  gal: 'gallon',
  cfm: 'ft^3/minute',
  gpm: 'gallon/minute',
  fc: 'footcandle',
  hp: 'electrichorsepower',
  Btu: 'btu',
  MBH: '1000 btu/hour',
  ton_r: 'tonrefrigeration',
};

const prefixes: Readonly<Record<string, string>> = {
  12: 'tera',
  9: 'giga',
  6: 'mega',
  3: 'kilo',
  '-1': 'deci',
  '-2': 'centi',
  '-3': 'milli',
  '-6': 'micro',
  '-9': 'nano',
  '-12': 'pico',
};

const siBases = ['m', 'kg', 's', 'A', 'K', 'cd'];

const coherent = (dimension: Dimension): string =>
  siBases.map((symbol, i) => (dimension.exponents[i] === 0 ? '' : `${symbol}^${dimension.exponents[i]} `)).join('') ||
  '1';

/** Currencies and temperature scales have no factor to compare. */
export const isComparable = ({ dimension, kind }: NamedUnit): boolean =>
  kind !== 'absolute' && bases.every((_, i) => i < siBases.length || dimension.exponents[i] === 0);

/** All questions go to one run of the program, which answers each on a line. */
function ask(questions: readonly (readonly [from: string, to: string])[]): number[] {
  const input = questions.map((question) => `${question.join('\n')}\n`).join('');
  const answers = execFileSync('units', ['-q', '-o', '%.17g', '-t'], { encoding: 'utf8', input }).trim().split('\n');
  if (answers.length !== questions.length) {
    throw new Error(`GNU units could not answer all questions: ${answers.filter((answer) => !Number(answer))}`);
  }
  return answers.map(Number);
}

/** Asks the installed program; throws when there is none. */
export function askGnuUnits(): FrozenUnits {
  const version = execFileSync('units', ['--version'], { encoding: 'utf8' }).split('\n')[0].trim();
  const words = new Map<string, UnitWord>();
  for (const word of unitWords.values()) {
    if (isComparable(word.unit)) {
      words.set(word.symbol, word);
    }
  }
  const factors = ask(
    [...words.values()].map(({ unit, powerOfTen }) => {
      const expression = expressions[unit.symbol] ?? unit.symbol;
      return [powerOfTen === 0 ? expression : `${prefixes[powerOfTen]} (${expression})`, coherent(unit.dimension)];
    }),
  );
  const points = ['-40', '0', '30', '75', '212'];
  const scale = (name: string): Record<string, number> => {
    const kelvins = ask(points.map((degrees) => [`${name}(${degrees})`, 'K']));
    return Object.fromEntries(points.map((degrees, i) => [degrees, kelvins[i]]));
  };
  return {
    version,
    factors: Object.fromEntries([...words.keys()].map((symbol, i) => [symbol, factors[i]])),
    temperatures: { '°C': scale('tempC'), '°F': scale('tempF') },
  };
}

if (require.main === module) {
  const answers = askGnuUnits();
  writeFileSync(frozenPath, `${JSON.stringify(answers, null, 2)}\n`);
  process.stdout.write(`Recorded ${Object.keys(answers.factors).length} units from ${answers.version}.\n`);
}
