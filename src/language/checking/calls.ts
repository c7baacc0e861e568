import type { FunctionDefinition, Parameter } from '../library';
import { Node } from '../syntax/tree';
import { checkArgument } from './argument-types';
import { argumentNodes } from './arguments';
import { type Checker, replacing } from './checker';
import { either } from './describe';
import { check, namesKnown } from './expressions';
import type { BoundArgument } from './meaning';
import { nearest } from './nearest';
import { resultTypeOf } from './result-types';
import { checkSheetCall } from './sheet-functions';
import type { Type } from './type';
import { unknownType } from './types';

type Item = ReturnType<typeof argumentNodes>['items'][number];

/** A call, or the same call laid out as a block: every argument finds its parameter, or a report says why not. */
export function checkCall(c: Checker, node: number): Type {
  const { callee, items } = argumentNodes(c.tree, node);
  const text = c.text(callee);
  const definition = c.context.functions.get(text);
  if (definition) {
    return checkLibraryCall(c, node, callee, definition, items);
  }
  const name = c.meaning.nameAt(callee);
  if (name?.isDefined) {
    return checkSheetCall(c, node, callee, name, items);
  }
  for (const { expression } of items) {
    check(c, expression);
  }
  if (c.tree.kinds[callee] === Node.Name) {
    reportUnknownFunction(c, callee, text);
  }
  return unknownType;
}

function reportUnknownFunction(c: Checker, callee: number, text: string): void {
  c.namesMissing = true;
  const meant = nearest(text, [...c.context.functions.keys(), ...namesKnown(c)]);
  const message = `\`${text}\` is not a function.`;
  c.report(
    'unknown-function',
    callee,
    meant
      ? `${message} Did you mean \`${meant}\`?`
      : `${message} Define it in the sheet, \`${text}(x) = …\`, or use one of the library.`,
    { fixes: meant ? [replacing(`Replace ${text} by ${meant}`, c.span(callee), meant)] : undefined },
  );
}

function checkLibraryCall(
  c: Checker,
  node: number,
  callee: number,
  definition: FunctionDefinition,
  items: readonly Item[],
): Type {
  const before = c.diagnostics.length;
  const placed = place(c, definition, items);
  const bound: BoundArgument[] = [];
  for (const [parameter, spec] of Object.entries(definition.parameters)) {
    const nodes = placed.get(parameter) ?? [];
    if (nodes.length === 0 && spec.default === undefined && !spec.optional) {
      c.report('missing-argument', callee, missingMessage(definition, parameter, spec));
    }
    bound.push(checkArgument(c, definition, parameter, spec, nodes));
  }
  const failed = c.diagnostics.length > before || bound.some((b) => b.nodes.length > 0 && b.type.kind === 'unknown');
  const result = resultTypeOf(definition, c.context.library.system);
  if (failed) {
    return definition.infer ? unknownType : result; // What it would give is known even so: fields can be checked.
  }
  const inferred = definition.infer ? inferResult(c, definition, bound) : result;
  c.meaning.calls.set(node, {
    kind: 'library',
    node,
    nameNode: callee,
    definition,
    arguments: bound,
    result: inferred,
  });
  return inferred;
}

function inferResult(c: Checker, definition: FunctionDefinition, bound: readonly BoundArgument[]): Type {
  const nodes = bound.flatMap((argument) => argument.nodes);
  const inferred = definition.infer!(nodes.map((argument) => c.meaning.types[argument]));
  if ('problem' in inferred) {
    c.report('wrong-argument', nodes[inferred.argument ?? 0], `\`${definition.name}\`: ${inferred.problem}`);
    return unknownType;
  }
  return inferred;
}

/** Which argument goes to which parameter. An argument that has no place is checked all the same. */
function place(c: Checker, definition: FunctionDefinition, items: readonly Item[]): Map<string, number[]> {
  const { parameters } = definition;
  const positional = Object.keys(parameters).filter((name) => !parameters[name].named);
  const placed = new Map<string, number[]>();
  let position = 0;
  for (const { item, name, expression } of items) {
    const parameter = name >= 0 ? c.text(name) : positional[Math.min(position, positional.length - 1)];
    if (name >= 0 && !Object.hasOwn(parameters, parameter)) {
      reportUnknownParameter(c, definition, name);
    } else if (
      name < 0 &&
      position >= positional.length &&
      !(parameter !== undefined && parameters[parameter].repeated)
    ) {
      reportTooMany(c, definition, item, positional, position);
    } else if (placed.has(parameter) && !parameters[parameter].repeated) {
      c.report(
        'argument-twice',
        item,
        `\`${parameter}\` of \`${definition.name}\` is given twice: keep one of the two.`,
      );
    } else {
      placed.set(parameter, [...(placed.get(parameter) ?? []), expression]);
      position += name < 0 ? 1 : 0;
      continue;
    }
    position += name < 0 ? 1 : 0;
    check(c, expression);
  }
  return placed;
}

function reportUnknownParameter(c: Checker, definition: FunctionDefinition, name: number): void {
  const text = c.text(name);
  const all = Object.keys(definition.parameters);
  const meant = nearest(text, all);
  c.report(
    'unknown-parameter',
    name,
    `\`${definition.name}\` has no parameter \`${text}\`. ${meant ? `Did you mean \`${meant}\`?` : `It takes ${either(all.map((one) => `\`${one}\``))}.`}`,
    { fixes: meant ? [replacing(`Replace ${text} by ${meant}`, c.span(name), meant)] : undefined },
  );
}

function reportTooMany(
  c: Checker,
  definition: FunctionDefinition,
  item: number,
  positional: readonly string[],
  position: number,
): void {
  const named = Object.keys(definition.parameters).filter((name) => definition.parameters[name].named);
  const first = named[position - positional.length] ?? named[0];
  const takes =
    positional.length === 0
      ? 'takes no argument without its name'
      : `takes ${positional.length} without their names (${positional.join(', ')})`;
  c.report(
    first === undefined ? 'too-many-arguments' : 'unnamed-argument',
    item,
    first === undefined
      ? `\`${definition.name}\` ${takes}: remove this one.`
      : `\`${definition.name}\` ${takes}. Name this one, such as \`${first}: ${c.text(item)}\`.`,
  );
}

const missingMessage = (definition: FunctionDefinition, parameter: string, spec: Parameter): string =>
  `\`${definition.name}\` needs \`${parameter}\`: ${spec.meaning}.`;
