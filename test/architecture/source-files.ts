import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

export const root = join(__dirname, '..', '..');

/** Every file below a folder of the project, with forward slashes, relative to the project. */
export function filesBelow(folder: string, ending = ''): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

export const textOf = (file: string): string => readFileSync(join(root, file), 'utf8');
