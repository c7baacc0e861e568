import { Node, type Program, parse, textOf } from '../../language';
import { readUnit } from '../../units';
import { functionNamed } from '../known-functions';

/** Why a text cannot be a name; undefined when it can. */
export function nameProblem(name: string, program: Program): string | undefined {
  const tree = parse(`${name} = 1`, program.library.vocabulary, { readUnit });
  const [statement, another] = tree.statements;
  const first = statement === undefined ? -1 : tree.firstChildren[statement];
  const isName =
    another === undefined &&
    tree.diagnostics.length === 0 &&
    first >= 0 &&
    tree.kinds[statement] === Node.Definition &&
    textOf(tree, first) === name;
  if (!isName) {
    return `\`${name}\` cannot be a name: a name is one word of letters, digits and _, begins with a letter, and is no word of the language.`;
  }
  return functionNamed(program, name)
    ? `\`${name}\` is a function, and a value of the same name would hide it. Choose another name.`
    : undefined;
}
