import { formatSheet } from '../../core';
import type { Console } from '../console';
import { readSource, writeWhole } from '../files';

/**
 * Lays out the calculation cells of each file in place; standard input goes to standard output. With `check`, files
 * that would change are named and left alone, and the exit code is then 1.
 */
export async function formatFiles(names: readonly string[], check: boolean, console: Console): Promise<number> {
  let code = 0;
  const complain = (problem: string) => {
    console.err(`kilofoot: ${problem}\n`);
    code = 1;
  };
  for (const name of names) {
    const source = await readSource(name, console);
    if ('problem' in source) {
      complain(source.problem);
      continue;
    }
    const formatted = formatSheet(source.bytes);
    if ('problem' in formatted) {
      complain(`${name}: ${formatted.problem.message}`);
      continue;
    }
    const same = Buffer.compare(source.bytes, formatted.bytes) === 0;
    if (check) {
      if (!same) {
        console.out(`${name} would change\n`);
        code = 1;
      }
    } else if (name === '-') {
      console.out(new TextDecoder('utf-8', { ignoreBOM: true }).decode(formatted.bytes));
    } else if (!same) {
      const problem = await writeWhole(name, formatted.bytes);
      if (problem) {
        complain(problem);
      }
    }
  }
  return code;
}
