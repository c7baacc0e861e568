import type { EditedSheet, Place } from './contract';
import { namedPlacesAt } from './named-places';

/** Where the name at an offset is defined; empty for anything that the sheet does not define. */
export function definitionAt(sheet: EditedSheet, cell: string, offset: number): readonly Place[] {
  const found = namedPlacesAt(sheet, cell, offset);
  return found ? [found.definition] : [];
}

/** Every place that the name at an offset stands at, its definition first. */
export function referencesAt(sheet: EditedSheet, cell: string, offset: number): readonly Place[] {
  const found = namedPlacesAt(sheet, cell, offset);
  return found ? [found.definition, ...found.references] : [];
}
