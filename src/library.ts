import {
  alwaysSizeUnits,
  designationReader,
  designationWords,
  insulationWords,
  sizeUnits,
  type TradeSettings,
  tradeFunctions,
} from './functions';
import type { Library } from './language';
import { createTables, type Tables } from './tables';

const vocabulary: Library['vocabulary'] = {
  sizeUnits: new Set(sizeUnits),
  alwaysSizeUnits: new Set(alwaysSizeUnits),
  designationWords: new Set(designationWords),
  hyphenatedWords: new Set(insulationWords.filter((word) => word.includes('-'))),
};

/** A table of circuits: what each feeds, and the conductor or device that is to be judged. */
const rowShapes: Library['rowShapes'] = [
  {
    function: 'circuit',
    columns: [
      ['load', 'mca'],
      ['conductor', 'ocpd'],
    ],
  },
];

const functions = new Map(tradeFunctions.map((definition) => [definition.name, definition]));

/**
 * Everything that a cell can use, for a code edition (`NEC 2023`) and a unit system. `tables`, when handed in, hold the
 * workspace's own editions and go before `edition`. An edition without tables is told as a problem.
 */
export function createLibrary(
  options: { readonly edition?: string; readonly system?: 'US' | 'SI'; readonly tables?: Tables } = {},
): Library | { readonly problem: string } {
  const { system = 'US' } = options;
  const tables = options.tables ?? createTables({ edition: options.edition });
  if ('problem' in tables) {
    return tables;
  }
  const settings: TradeSettings = { tables, system };
  return { vocabulary, functions, designation: designationReader(tables), rowShapes, system, settings };
}
