import type { StatementResult } from '../language';
import type { EditedSheet, Place } from './contract';
import { namedPlacesAt } from './named-places';

/**
 * Where the name at an offset is defined; for one that is taken from another sheet, there. Empty for anything that no
 * sheet defines.
 */
export function definitionAt(sheet: EditedSheet, cell: string, offset: number): readonly Place[] {
  const found = namedPlacesAt(sheet, cell, offset);
  if (!found) {
    return [];
  }
  const result = sheet.program.results(found.definition.cell).find(({ name, taken }) => taken && name === found.name);
  const there = result && placeThere(result);
  return [there ?? found.definition];
}

/** The place at the end of the way that a name takes from sheet to sheet. */
function placeThere(taker: StatementResult): Place | undefined {
  let result = taker;
  while (result.taken?.result) {
    result = result.taken.result;
  }
  const at = result.cell.lastIndexOf('#');
  return result === taker || !result.nameSpan || at < 0
    ? undefined
    : { file: result.cell.slice(0, at), cell: result.cell.slice(at + 1), span: result.nameSpan };
}

/** The name at an offset, where the sheet defines it. */
export const definedNameAt = (sheet: EditedSheet, cell: string, offset: number): string | undefined =>
  namedPlacesAt(sheet, cell, offset)?.name;
