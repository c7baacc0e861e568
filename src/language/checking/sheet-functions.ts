import { children, Node, textOf } from '../syntax/tree';
import type { argumentNodes } from './arguments';
import type { Name } from './binding';
import { Checker, relatedPlace, tooManyCalls } from './checker';
import { check } from './expressions';
import { Meaning } from './meaning';
import type { Type } from './type';
import { unknownType } from './types';

/**
 * A call of a function that the sheet defines. Its parameters have no types of their own: the body is checked anew for
 * the types of each call's arguments.
 */
export function checkSheetCall(
  c: Checker,
  node: number,
  callee: number,
  name: Name,
  items: ReturnType<typeof argumentNodes>['items'],
): Type {
  const types = items.map(({ expression }) => check(c, expression));
  const definition = name.origin;
  if (!definition || definition.isCyclic || definition.checkDiagnostics.length > 0) {
    return unknownType; // Reported where it is defined.
  }
  const { tree } = definition.cell;
  if (tree.kinds[definition.node] !== Node.FunctionDefinition) {
    c.report('not-a-function', callee, `\`${name.text}\` is a value, not a function: it takes no arguments.`);
    return unknownType;
  }
  const [, list, body] = children(tree, definition.node);
  const parameters = [...children(tree, list)].map((parameter) => textOf(tree, parameter));
  const takes = `\`${name.text}\` takes ${parameters.length === 1 ? 'one argument' : `${parameters.length} arguments`} (${parameters.join(', ')})`;
  const argumentNodes = new Array<number>(parameters.length).fill(-1);
  let position = 0;
  for (const { item, name: written, expression } of items) {
    const index = written >= 0 ? parameters.indexOf(c.text(written)) : position++;
    if (index < 0) {
      c.report('unknown-parameter', written, `${takes}; \`${c.text(written)}\` is none of them.`);
      return unknownType;
    }
    if (index >= parameters.length) {
      c.report('too-many-arguments', item, `${takes}: remove this one.`);
      return unknownType;
    }
    if (argumentNodes[index] >= 0) {
      c.report('argument-twice', item, `\`${parameters[index]}\` is given twice: keep one of the two.`);
      return unknownType;
    }
    argumentNodes[index] = expression;
  }
  const absent = argumentNodes.indexOf(-1);
  if (absent >= 0) {
    c.report('missing-argument', callee, `${takes}: \`${parameters[absent]}\` is missing.`);
    return unknownType;
  }
  if (types.some((type) => type.kind === 'unknown') || c.within.includes(name) || body === undefined) {
    return unknownType; // A function that calls itself is a cycle, which is reported at its definition.
  }
  const within = c.within.into(name);
  if (!within) {
    c.report('nested-too-deep', node, tooManyCalls);
    return unknownType;
  }
  const { context } = definition.cell;
  const meaning = new Meaning(tree, definition.cell.id, context.library, undefined, definition.cell.meaning);
  const locals = new Map(parameters.map((parameter, i) => [parameter, c.meaning.types[argumentNodes[i]]]));
  const inner = new Checker(context, meaning, locals, within);
  const result = check(inner, body);
  const [first] = inner.diagnostics;
  if (first) {
    const said =
      first.message === tooManyCalls ? first.message : `With these arguments, \`${name.text}\` fails: ${first.message}`;
    c.report(first.code, node, said, {
      related: [relatedPlace(definition.cell, first.span, `Here, in \`${name.text}\`.`)],
    });
    return unknownType;
  }
  c.meaning.calls.set(node, { kind: 'sheet', node, name, body, meaning, parameters, argumentNodes });
  return result;
}
