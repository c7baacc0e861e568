import { readdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { readTableFile, type TableFile, tableFileEnding } from '../core';
import { LineIndex } from '../text';
import type { Console } from './console';
import { readSource } from './files';

/** The workspace's own tables for a sheet, and what is wrong with those that could not be taken. */
export interface WorkspaceTables {
  readonly files: readonly TableFile[];
  readonly problems: readonly string[];
}

/** Reads the table files in a sheet's own folder, in order of name; for standard input, in the folder one is in. */
export async function tablesBeside(sheet: string, console: Console): Promise<WorkspaceTables> {
  const folder = sheet === '-' ? '.' : dirname(sheet);
  const names = await readdir(folder).catch((): string[] => []); // A folder that is not there is told of with its sheet.
  const files: TableFile[] = [];
  const problems: string[] = [];
  for (const name of names.filter((found) => found.endsWith(tableFileEnding)).sort()) {
    const source = await readSource(join(folder, name), console);
    if ('problem' in source) {
      problems.push(source.problem);
      continue;
    }
    const text = new TextDecoder().decode(source.bytes);
    const read = await readTableFile(text, source.name);
    if ('file' in read) {
      files.push(read.file);
    } else {
      const lines = new LineIndex(text);
      problems.push(
        ...read.diagnostics.map(({ span, message }) => {
          const { line, column } = lines.at(span.start);
          return `${source.name}:${line}:${column} ${message} The table was not taken.`;
        }),
      );
    }
  }
  return { files, problems };
}
