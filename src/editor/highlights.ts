import type { Span } from '../text';
import type { EditedSheet } from './contract';
import { namedPlacesAt } from './named-places';

/** A place of a name in the cell that is looked at. */
export interface Highlight {
  readonly span: Span;
  /** True where the name gets its value. */
  readonly defines: boolean;
}

/** Every place in its own cell of the name at an offset. */
export function highlightsAt(sheet: EditedSheet, cell: string, offset: number): Highlight[] {
  const found = namedPlacesAt(sheet, cell, offset);
  return found
    ? [found.definition, ...found.references]
        .filter((place) => place.cell === cell)
        .map((place) => ({ span: place.span, defines: place === found.definition }))
    : [];
}
