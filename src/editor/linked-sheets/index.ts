import type { Span } from '../../text';
import type { EditedSheet, Place } from '../contract';
import { type NamedPlaces, namedPlacesAt } from '../named-places';
import { liveNames } from './live-names';
import { filesTakenFrom } from './taken-files';

/** A sheet that may share names with others, open or not. */
export interface LinkedSheet extends EditedSheet {
  /** Its path from the root that all sheets share. */
  readonly file: string;
  /** The path of the sheet that this one's `use` calls by a name; undefined for none that could be reached. */
  readonly fileOf: (written: string) => string | undefined;
  readonly cells: readonly { readonly id: string; readonly kind: 'prose' | 'calculation'; readonly text: string }[];
}

/** Where in a sheet something is pointed at. */
export interface SheetOffset {
  readonly file: string;
  readonly cell: string;
  readonly offset: number;
}

/** Where a name stands in one cell of one sheet. */
export interface CellPlaces {
  readonly file: string;
  readonly cell: string;
  readonly spans: readonly Span[];
}

/**
 * Every place that the name at an offset stands at: in its sheet with the live values of the prose, in the sheet that it
 * was taken from and in those that take it. The sheet pointed at comes first, each in order of place.
 */
export function referencesAcross(sheets: readonly LinkedSheet[], at: SheetOffset): CellPlaces[] {
  const sheet = sheets.find(({ file }) => file === at.file);
  const found = sheet && namedPlacesAt(sheet, at.cell, at.offset);
  return found ? sheetsSharing(sheets, sheet, found).flatMap((one) => placesIn(one, found, one === sheet)) : [];
}

/** The sheet that something named belongs to, and all that share the name; a parameter or a column is shared by none. */
export const sheetsSharing = (
  sheets: readonly LinkedSheet[],
  sheet: LinkedSheet,
  found: NamedPlaces,
): readonly LinkedSheet[] => (found.info ? sheetsTaking(sheets, sheet, found.name) : [sheet]);

/** A sheet and all that a name passes to or from, directly or by way of others. */
export function sheetsTaking(sheets: readonly LinkedSheet[], from: LinkedSheet, name: string): LinkedSheet[] {
  const takes = new Map(sheets.map((sheet) => [sheet, new Set(filesTakenFrom(sheet, name))]));
  const reached = new Set([from]);
  for (const sheet of reached) {
    const neighbours = sheets.filter((other) => takes.get(sheet)!.has(other.file) || takes.get(other)!.has(sheet.file));
    for (const other of neighbours.filter((one) => one.program.name(name) !== undefined)) {
      reached.add(other);
    }
  }
  return [...reached];
}

/** Where something named stands in one of the sheets that share it; `isOwn` in the one where it was found. */
export function placesIn(sheet: LinkedSheet, found: NamedPlaces, isOwn: boolean): CellPlaces[] {
  const { name, info, schedule } = found;
  const places = isOwn ? [found.definition, ...found.references] : namedIn(sheet, name);
  return sheet.cells.flatMap(({ id, kind, text }) => {
    const spans =
      kind === 'calculation'
        ? places.filter((place) => place.cell === id).map(({ span }) => span)
        : info || schedule !== undefined
          ? liveNames(text, name, sheet.program.library, schedule)
          : []; // No prose sees a function's parameter.
    return spans.length === 0 ? [] : [{ file: sheet.file, cell: id, spans: spans.sort((a, b) => a.start - b.start) }];
  });
}

function namedIn({ program }: LinkedSheet, name: string): Place[] {
  const info = program.name(name);
  return info ? [{ cell: info.cell, span: info.definition }, ...info.references] : [];
}
