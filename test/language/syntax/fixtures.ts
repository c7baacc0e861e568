import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** The fixtures of a folder beside this file, by name. */
export const fixturesIn = (folder: string): string[] =>
  readdirSync(join(__dirname, folder))
    .filter((name) => name.endsWith('.txt'))
    .sort();

export const readFixture = (folder: string, name: string): string =>
  readFileSync(join(__dirname, folder, name), 'utf8');

/** With `UPDATE_FIXTURES=1` the stored text is rewritten, to be looked over before it is committed. */
export function expectedText(folder: string, name: string, actual: string): string {
  if (process.env.UPDATE_FIXTURES === '1') {
    writeFileSync(join(__dirname, folder, name), actual);
  }
  return readFixture(folder, name);
}
