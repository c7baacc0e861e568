import { readFileSync, realpathSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import type { FolderFiles, TableFile } from '../core';
import type { Console } from './console';
import { reasonFor } from './files';
import { tablesBeside } from './workspace-tables';

/**
 * The folder tree that a sheet lies in: the folder the command runs in and all below, or, for a sheet elsewhere, the
 * sheet's own folder and all below. Files are read when they are asked for, once; nothing outside is read, whichever
 * link leads there.
 */
export class FolderTree implements FolderFiles {
  readonly path: string;
  /** What is wrong with table files of the tree. */
  readonly problems: string[] = [];
  private readonly root: string;
  private readonly known = new Map<string, Uint8Array | { readonly problem: string }>();
  private readonly tables = new Map<string, readonly TableFile[]>();
  private readonly wanted = new Set<string>();

  constructor(
    sheet: string,
    private readonly console: Console,
  ) {
    const file = resolve(sheet);
    this.root = isBelow(process.cwd(), file) ? process.cwd() : dirname(file);
    this.path = relative(this.root, file).split(sep).join('/');
  }

  read(path: string): Uint8Array | { readonly problem: string } {
    let found = this.known.get(path);
    if (!found) {
      found = readBelow(this.root, join(this.root, ...path.split('/')));
      this.known.set(path, found);
    }
    return found;
  }

  tableFiles(folder: string): readonly TableFile[] {
    const known = this.tables.get(folder);
    if (!known) {
      this.wanted.add(folder);
    }
    return known ?? none;
  }

  /** True while folders were asked about whose tables are not read yet. */
  get wantsTables(): boolean {
    return this.wanted.size > 0;
  }

  /** Reads the table files of the folders that were asked about. */
  async readTables(): Promise<void> {
    const folders = [...this.wanted];
    this.wanted.clear();
    for (const folder of folders) {
      const { files, problems } = await tablesBeside(join(this.root, folder, 'any'), this.console);
      this.tables.set(folder, files);
      this.problems.push(...problems);
    }
  }
}

const none: readonly TableFile[] = [];

function isBelow(folder: string, file: string): boolean {
  const way = relative(folder, file);
  return !isAbsolute(way) && way !== '..' && !way.startsWith(`..${sep}`);
}

function readBelow(root: string, file: string): Uint8Array | { readonly problem: string } {
  try {
    return isBelow(realpathSync(root), realpathSync(file))
      ? new Uint8Array(readFileSync(file))
      : { problem: 'is a link that leads out of the folder tree, and nothing outside is read.' };
  } catch (error) {
    return { problem: reasonFor(error) };
  }
}
