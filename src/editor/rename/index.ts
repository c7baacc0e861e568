import { createProgram } from '../../language';
import { applyEdits, type Edit, type Span } from '../../text';
import type { EditedSheet } from '../contract';
import { type LinkedSheet, placesIn, type SheetOffset, sheetsSharing, sheetsTaking } from '../linked-sheets';
import { type NamedPlaces, namedPlacesAt } from '../named-places';
import { nameProblem } from './new-name';

/** The edits in one cell of one sheet. */
export interface CellEdits {
  readonly file: string;
  readonly cell: string;
  readonly edits: readonly Edit[];
}

export type Renaming = { readonly edits: readonly CellEdits[] } | { readonly problem: string };

/** The name at an offset that can be renamed, or why there is none. */
export function renamableAt(
  sheet: EditedSheet,
  cell: string,
  offset: number,
): { readonly name: string; readonly span: Span } | { readonly problem: string } {
  const found = namedPlacesAt(sheet, cell, offset);
  if (!found) {
    return {
      problem:
        'Only names that the sheet defines can be renamed: fields, functions and units have theirs from the trade.',
    };
  }
  return isAmbiguous(sheet, found)
    ? { problem: `\`${found.name}\` is defined more than once. Settle which one counts, then rename it.` }
    : { name: found.name, span: found.at };
}

/**
 * Renames what stands at an offset of a sheet wherever it stands: in every cell, in live values of the prose, in the
 * sheet it was taken from and in those that take it. Refuses a name that is none or that would come to mean something
 * else.
 */
export function renameAt(sheets: readonly LinkedSheet[], at: SheetOffset, newName: string): Renaming {
  const sheet = sheets.find(({ file }) => file === at.file);
  const found = sheet && namedPlacesAt(sheet, at.cell, at.offset);
  const refused = sheet && renamableAt(sheet, at.cell, at.offset);
  if (!sheet || !found || !refused || 'problem' in refused) {
    return refused && 'problem' in refused ? refused : { problem: 'There is no name here.' };
  }
  const problem = nameProblem(newName, sheet.program);
  if (problem !== undefined || newName === found.name) {
    return problem === undefined ? { edits: [] } : { problem };
  }
  if (found.schedule !== undefined) {
    const [other] = sheetsTaking(sheets, sheet, found.schedule).filter((one) => one !== sheet);
    if (other) {
      return {
        problem: `${other.file} takes \`${found.schedule}\` from another sheet and may name its columns. Rename the column by hand in both.`,
      };
    }
  }
  const edits: CellEdits[] = [];
  for (const one of sheetsSharing(sheets, sheet, found)) {
    const made = placesIn(one, found, one === sheet).map(({ file, cell, spans }) => ({
      file,
      cell,
      edits: spans.map((span) => ({ span, newText: newName })),
    }));
    const clash = clashIn(one, made, found, newName);
    if (clash !== undefined) {
      return { problem: one === sheet ? clash : `${one.file}: ${clash}` };
    }
    edits.push(...made);
  }
  return { edits };
}

const isAmbiguous = ({ program }: EditedSheet, { definition, info }: NamedPlaces): boolean =>
  info !== undefined &&
  program
    .diagnostics(definition.cell)
    .some(({ code, span }) => code === 'duplicate-name' && span.start === definition.span.start);

/**
 * Reads the sheet again as it would be. When the new name then stands for anything but the same places, it is taken
 * already, or a parameter, a word of a conductor or the word of a choice would hide it.
 */
function clashIn(
  sheet: LinkedSheet,
  edits: readonly CellEdits[],
  found: NamedPlaces,
  newName: string,
): string | undefined {
  if (found.schedule === undefined && sheet.program.name(newName) !== undefined) {
    return `\`${newName}\` is defined already. Choose another name.`;
  }
  const program = createProgram(sheet.program.library);
  const text = new Map(edits.map(({ cell, edits: own }) => [cell, own]));
  program.update(
    sheet.cells
      .filter(({ kind }) => kind === 'calculation')
      .map((cell) => ({ id: cell.id, text: applyEdits(cell.text, text.get(cell.id) ?? []) })),
  );
  const edited = edits.filter(({ cell }) => sheet.program.tree(cell) !== undefined);
  const expected = edited.reduce((sum, { edits: own }) => sum + own.length, 0);
  const first = edited[0]?.edits.map(({ span }) => span.start).sort((a, b) => a - b)[0];
  const after = first === undefined ? undefined : namedPlacesAt({ program }, edited[0].cell, first);
  const count = after?.name === newName ? after.references.length + 1 : 0;
  return count === expected
    ? undefined
    : `\`${newName}\` would mean something else in a place where \`${found.name}\` stands now. Choose another name.`;
}
