import { valuesOf } from '../editor';
import { readSheet } from '../notebook';
import { SheetSession } from './sheet-session';

/** The names that a sheet's file defines, each with its value on one line; none where it cannot be read as a sheet. */
export function namedValuesIn(bytes: Uint8Array): { readonly name: string; readonly text: string }[] {
  const { cells, editable } = readSheet(bytes);
  if (!editable) {
    return [];
  }
  const session = new SheetSession();
  session.update(cells.map(({ kind, text }, index) => ({ id: String(index), kind, text })));
  return session
    .calculations()
    .flatMap((cell) => valuesOf(session, cell))
    .map(({ name, text, fields }) => ({
      name,
      text: text || fields.map((field) => `${field.name} ${field.text}`).join(', '),
    }));
}
