import type { GivenRows, GivenSheet, OtherSheets, SheetProblem } from '../language';
import { noOtherSheets } from '../language';
import { FilePositions, readFrontMatter, readSheet, type SheetFile } from '../notebook';
import type { TableFile } from '../tables';
import type { ProblemCode } from '../text';
import { type FolderFiles, folderOf, pathInTree } from './folder-files';
import { libraryFor } from './library-for';
import { readRows } from './read-rows';

interface Opened {
  readonly bytes: Uint8Array;
  readonly tableFiles: readonly TableFile[];
  readonly sheet: GivenSheet | SheetProblem;
}

/** The sheets of a folder tree, read as sheets take names from one another; each is read again only when it changed. */
export class FolderSheets implements OtherSheets {
  files?: FolderFiles;
  private readonly opened = new Map<string, Opened>();
  private readonly read = new Map<string, { readonly bytes: Uint8Array; readonly rows: GivenRows | SheetProblem }>();

  get path(): string {
    return this.files?.path ?? noOtherSheets.path;
  }

  find(file: string, from: string): { readonly path: string } | SheetProblem {
    if (!this.files) {
      return noOtherSheets.find(file, from);
    }
    const way = pathInTree(file, from);
    if ('problem' in way) {
      return refused('file-out-of-reach', way.problem);
    }
    return /\.kft(\.md)?$/.test(way.path)
      ? way
      : refused('no-sheet', `"${file}" is no sheet: sheets are called *.kft.md or *.kft.`);
  }

  rows(file: string, from: string): GivenRows | SheetProblem {
    if (!this.files) {
      return noOtherSheets.rows(file, from);
    }
    const way = pathInTree(file, from);
    if ('problem' in way) {
      return refused('file-out-of-reach', way.problem);
    }
    const bytes = this.files.read(way.path);
    if (!(bytes instanceof Uint8Array)) {
      return refused('missing-file', `"${file}" ${bytes.problem}`);
    }
    const known = this.read.get(way.path);
    if (known?.bytes === bytes) {
      return known.rows;
    }
    const rows = readRows(file, bytes);
    this.read.set(way.path, { bytes, rows });
    return rows;
  }

  open(path: string): GivenSheet | SheetProblem {
    const bytes = this.files?.read(path) ?? { problem: 'is not there.' };
    if (!(bytes instanceof Uint8Array)) {
      return refused('missing-file', `"${path}" ${bytes.problem}`);
    }
    const tableFiles = this.files?.tableFiles(folderOf(path)) ?? [];
    const known = this.opened.get(path);
    if (known?.bytes === bytes && known.tableFiles === tableFiles) {
      return known.sheet;
    }
    const sheet = read(path, bytes, tableFiles);
    this.opened.set(path, { bytes, tableFiles, sheet });
    return sheet;
  }
}

const refused = (code: ProblemCode, message: string): SheetProblem => ({ problem: { code, message } });

function read(path: string, bytes: Uint8Array, tableFiles: readonly TableFile[]): GivenSheet | SheetProblem {
  const file = readSheet(bytes);
  if (!file.editable) {
    return refused('broken-file', `"${path}" cannot be read as a sheet. ${file.notices[0]?.message ?? ''}`.trim());
  }
  const library = libraryFor(frontMatterOf(file), tableFiles);
  if ('problem' in library) {
    return refused('unknown-edition', `"${path}" cannot be evaluated. ${library.problem}`);
  }
  const idOf = (index: number) => `${path}#${index}`;
  const indexOf = new Map(file.cells.map((_, index) => [idOf(index), index]));
  let positions: FilePositions | undefined;
  return {
    path,
    library,
    cells: file.cells.flatMap(({ kind, text }, index) => (kind === 'calculation' ? [{ id: idOf(index), text }] : [])),
    place(cell, span) {
      positions ??= new FilePositions(file);
      return { path, line: positions.at(positions.offset(indexOf.get(cell) ?? 0, span.start)).line };
    },
  };
}

const frontMatterOf = ({ cells: [first] }: SheetFile) =>
  first?.kind === 'prose' ? readFrontMatter(first.text).frontMatter : {};
