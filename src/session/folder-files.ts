import type { TableFile } from '../tables';

/**
 * The folder tree that a sheet lies in, as its host hands it in. Paths count from the tree's root with `/` between their
 * parts; none leads out of the tree.
 */
export interface FolderFiles {
  /** The sheet's own path. */
  readonly path: string;
  /** A file's bytes, the same array until the file changes, or why they are not to be had (`is not there`). */
  read(path: string): Uint8Array | { readonly problem: string };
  /** The tables that hold for the sheets in a folder, `''` being the root; the same array until they change. */
  tableFiles(folder: string): readonly TableFile[];
}

/** The folder part of a path in the tree. */
export const folderOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf('/')));

/** How a sheet at `from` writes the path of another file: the way from its own folder. The inverse of `pathInTree`. */
export function wayInTree(path: string, from: string): string {
  const to = path.split('/').filter(Boolean);
  const here = folderOf(from).split('/').filter(Boolean);
  let shared = 0;
  while (shared < here.length && shared < to.length - 1 && here[shared] === to[shared]) {
    shared++;
  }
  return [...here.slice(shared).map(() => '..'), ...to.slice(shared)].join('/');
}

/** The path in the tree of what the file at `from` calls `written`; or why it is no such path. */
export function pathInTree(written: string, from: string): { readonly path: string } | { readonly problem: string } {
  const name = written.trim();
  if (name === '') {
    return { problem: 'The file has no name. Write it between the quotation marks.' };
  }
  if (/^([a-z]:|[/\\]|[a-z][a-z0-9+.-]*:)/i.test(name)) {
    return {
      problem: `"${name}" is an absolute address. Write the way from this sheet's folder, such as "meters.kft.md".`,
    };
  }
  if (name.includes('\\')) {
    return { problem: `Write / between folder and file: "${name.replaceAll('\\', '/')}".` };
  }
  const parts = folderOf(from).split('/').filter(Boolean);
  for (const part of name.split('/')) {
    if (part === '..') {
      if (parts.pop() === undefined) {
        return {
          problem: `"${name}" leads out of the folder tree that this sheet is opened in, and nothing outside is read. Move the file into it, or open the folder above.`,
        };
      }
    } else if (part !== '' && part !== '.') {
      parts.push(part);
    }
  }
  return { path: parts.join('/') };
}
