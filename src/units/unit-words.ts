import { type Codes, WordTable } from '../text';
import { type NamedUnit, namedUnits } from './unit-table';

/** A word that names a unit, its prefix included: `mA`, `kohm`, `kcmil`. */
export interface UnitWord {
  /** As shown: `kΩ` for `kohm`. */
  readonly symbol: string;
  readonly unit: NamedUnit;
  /** The prefix as a power of ten. */
  readonly powerOfTen: number;
}

/** SI prefixes in use, with the spellings that are read; SI Brochure, table 7. */
const prefixes: readonly { readonly symbol: string; readonly spellings: readonly string[]; readonly power: number }[] =
  [
    { symbol: 'T', spellings: ['T'], power: 12 },
    { symbol: 'G', spellings: ['G'], power: 9 },
    { symbol: 'M', spellings: ['M'], power: 6 },
    { symbol: 'k', spellings: ['k'], power: 3 },
    { symbol: 'd', spellings: ['d'], power: -1 },
    { symbol: 'c', spellings: ['c'], power: -2 },
    { symbol: 'm', spellings: ['m'], power: -3 },
    { symbol: 'µ', spellings: ['µ', 'μ', 'u'], power: -6 }, // Micro sign, Greek mu, ASCII.
    { symbol: 'n', spellings: ['n'], power: -9 },
    { symbol: 'p', spellings: ['p'], power: -12 },
  ];

function* words(): Generator<[string, UnitWord]> {
  for (const unit of namedUnits) {
    for (const spelling of [unit.symbol, ...(unit.also ?? [])]) {
      yield [spelling, { symbol: unit.symbol, unit, powerOfTen: 0 }];
      for (const prefix of prefixes) {
        if (unit.prefixes?.includes(prefix.symbol)) {
          const word = { symbol: prefix.symbol + unit.symbol, unit, powerOfTen: prefix.power };
          yield* prefix.spellings.map((start): [string, UnitWord] => [start + spelling, word]);
        }
      }
    }
  }
}

/** Every word that is read as a unit. */
export const unitWords: ReadonlyMap<string, UnitWord> = new Map(words());

const table = WordTable.of(unitWords.keys());
const inTable = [...unitWords.values()];

/** The unit that the word at `start` … `end` of a text names; undefined when it names none. */
export function unitWordAt(codes: Codes, start: number, end: number): UnitWord | undefined {
  const found = end - start > longestUnitWord ? -1 : table.find(codes, start, end);
  return found < 0 ? undefined : inTable[found];
}

/** No unit word is longer, so that a longer one needs no look-up. */
const longestUnitWord = Math.max(...[...unitWords.keys()].map((word) => word.length));
