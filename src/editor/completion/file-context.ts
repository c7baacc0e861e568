import type { Span } from '../../text';

/** What a `use` or a `schedule` asks for that stands in another file. */
export type FileWanted =
  | { readonly kind: 'file'; readonly what: 'sheet' | 'table' }
  /** A name that the sheet in `file` defines; `said` are those that the `use` takes already. */
  | { readonly kind: 'name of sheet'; readonly file: string; readonly said: readonly string[] };

const sheetName = /^\s*use\s[^"]*\sfrom\s+"([^"]*)$/u;
const tableName = /=\s*schedule\s+"([^"]*)$/u;
const taken = /^\s*use\s+((?:[\p{L}_][\p{L}\p{N}_]*\s*,\s*)*)([\p{L}_]?[\p{L}\p{N}_]*)$/u;
const behindTaken = /^[\s\p{L}\p{N}_,]*?\bfrom\s+"([^"\n]*)"/u;

/** Undefined where the cursor stands in neither a file's name nor the names taken from one. */
export function fileContextAt(
  text: string,
  offset: number,
): { readonly wanted: FileWanted; readonly replaces: Span } | undefined {
  const before = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
  const lineEnd = text.indexOf('\n', offset);
  const behind = text.slice(offset, lineEnd < 0 ? text.length : lineEnd);
  for (const [pattern, what] of [
    [sheetName, 'sheet'],
    [tableName, 'table'],
  ] as const) {
    const typed = pattern.exec(before)?.[1];
    if (typed !== undefined) {
      const rest = behind.indexOf('"'); // The whole name is replaced where its closing mark stands already.
      return {
        wanted: { kind: 'file', what },
        replaces: { start: offset - typed.length, end: offset + Math.max(0, rest) },
      };
    }
  }
  const [, said, word] = taken.exec(before) ?? [];
  const file = behindTaken.exec(behind)?.[1];
  return said === undefined || file === undefined
    ? undefined
    : {
        wanted: {
          kind: 'name of sheet',
          file,
          said: said
            .split(',')
            .map((name) => name.trim())
            .filter(Boolean),
        },
        replaces: { start: offset - word.length, end: offset },
      };
}
