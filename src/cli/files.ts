import { randomBytes } from 'node:crypto';
import { readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import type { Console } from './console';

/** A file as it was read, or why it could not be. `-` is standard input. */
export type Source =
  | { readonly name: string; readonly bytes: Uint8Array }
  | { readonly name: string; readonly problem: string };

/** Reads a file of any kind. */
export async function readSource(name: string, console: Console): Promise<Source> {
  if (name === '-') {
    return { name, bytes: await console.readStandardInput() };
  }
  try {
    return { name, bytes: new Uint8Array(await readFile(name)) };
  } catch (error) {
    return { name, problem: `${name} ${reasonFor(error)}` };
  }
}

/** Writes a file whole or not at all: beside it under another name first, then in its place. Returns what is wrong. */
export async function writeWhole(name: string, content: string | Uint8Array): Promise<string | undefined> {
  const beside = `${name}.${randomBytes(6).toString('hex')}.part`;
  try {
    const mode = await stat(name).then(
      (found) => found.mode,
      () => undefined,
    );
    await writeFile(beside, content, { mode });
    await rename(beside, name);
    return undefined;
  } catch (error) {
    await rm(beside, { force: true });
    return `${name} cannot be written: it ${reasonFor(error)}`;
  }
}

/** Why a file cannot be used, in words that follow its name. */
export function reasonFor(error: unknown): string {
  switch ((error as NodeJS.ErrnoException).code) {
    case 'ENOENT':
      return 'is not there. Check the name and the folder.';
    case 'EISDIR':
      return 'is a folder; a file is expected. Name the sheets in it, such as its *.kft.md.';
    case 'EACCES':
    case 'EPERM':
      return 'may not be used by this account. Check its permissions.';
    case 'ENOTDIR':
      return 'lies below a file as if that were a folder. Check the name.';
    default:
      return `cannot be used: ${(error as Error).message}`;
  }
}
