import { nearest, uncertaintyBudget, why } from '../../core';
import type { Console } from '../console';
import { readSource } from '../files';
import { FolderTree } from '../folder-tree';
import { WrongCommandLine } from '../wrong-command-line';
import { evaluateIn } from './evaluate-in';

/** Prints the chain behind a value of a sheet, and with `budget` what its uncertainty is made of. */
export async function explainValue(name: string, file: string, budget: boolean, console: Console): Promise<number> {
  const source = await readSource(file, console);
  if ('problem' in source) {
    console.err(`kilofoot: ${source.problem}\n`);
    return 1;
  }
  const { program } = await evaluateIn(new FolderTree(source.name, console), source.bytes);
  const chain = why(program, name);
  if (chain === undefined) {
    const known = [...program.names().keys()];
    const near = nearest(name.split('.')[0], known);
    throw new WrongCommandLine(
      `${file} defines no \`${name}\`. ${near ? `Did you mean \`${near}\`?` : `It has: ${known.join(', ') || 'no names'}.`}`,
    );
  }
  console.out(`${chain}\n`);
  if (budget) {
    const table = uncertaintyBudget(program, name);
    console.out(
      table === undefined ? `\n${name} has no uncertainty: nothing behind it is a reading.\n` : `\n${table}\n`,
    );
  }
  return 0;
}
