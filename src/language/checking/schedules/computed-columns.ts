import type { Diagnostic } from '../../../text';
import { nodesBelow } from '../../syntax/navigation';
import { children, Node, type SyntaxTree } from '../../syntax/tree';
import { argumentNodes } from '../arguments';
import { Checker } from '../checker';
import { describe } from '../describe';
import { check } from '../expressions';
import type { Type } from '../type';
import { unknownType } from '../types';
import type { ComputedColumn } from './schedule-meaning';

interface Around {
  /** The columns before it, with their types. */
  readonly known: ReadonlyMap<string, Type>;
  /** Names of the computed columns from this one on. */
  readonly further: readonly string[];
  readonly schedule: string;
  readonly problems: Diagnostic[];
}

/** Checks a formula of a schedule for one row, where the name of a column stands for that row's value. */
export function checkComputedColumn(c: Checker, column: number, around: Around): ComputedColumn | undefined {
  const { tree } = c;
  const nameNode = tree.firstChildren[column];
  const expression = tree.nextSiblings[nameNode];
  const name = c.text(nameNode);
  const { known, problems } = around;
  const row = new Checker(c.context, c.meaning, known, c.within);
  if (known.has(name)) {
    row.report(
      'duplicate-column',
      nameNode,
      `There is a column \`${name}\` already: choose another name for this one.`,
    );
    problems.push(...row.diagnostics);
    return undefined;
  }
  const reads = new Set<string>();
  for (const node of namesUsed(tree, expression)) {
    reportOrder(row, node, around);
    if (known.has(row.text(node))) {
      reads.add(row.text(node));
    }
  }
  for (const node of nodesBelow(tree, expression)) {
    reportTotalInRow(row, node, around);
  }
  let type = row.diagnostics.length > 0 ? unknownType : check(row, expression);
  if (row.diagnostics.length === 0 && !isCell(type)) {
    if (type.kind !== 'unknown') {
      reportNoCell(row, expression, type);
    } else {
      reportEmptyColumns(
        row,
        expression,
        [...reads].filter((one) => known.get(one)?.kind === 'unknown'),
      );
    }
  }
  if (row.diagnostics.length > 0) {
    type = unknownType;
  }
  problems.push(...row.diagnostics);
  c.namesMissing ||= row.namesMissing;
  return { name, nameNode, type, expression, reads: [...reads] };
}

/** The names that an expression reads: not those of functions, parameters and fields. */
function* namesUsed(tree: SyntaxTree, node: number): Generator<number> {
  switch (tree.kinds[node] as Node) {
    case Node.Name:
      yield node;
      break;
    case Node.Member:
      yield* namesUsed(tree, tree.firstChildren[node]);
      break;
    case Node.Call:
      for (const { expression } of argumentNodes(tree, node).items) {
        yield* namesUsed(tree, expression);
      }
      break;
    default:
      for (const child of children(tree, node)) {
        yield* namesUsed(tree, child);
      }
  }
}

const isCell = (type: Type): boolean =>
  !['unknown', 'record', 'schedule', 'meter'].includes(type.kind) &&
  !(type.kind === 'list' && type.element.kind !== 'object');

function reportOrder(row: Checker, node: number, { known, further, schedule }: Around): void {
  const text = row.text(node);
  if (further.includes(text) && !known.has(text)) {
    row.report(
      'column-further-down',
      node,
      text === further[0]
        ? `\`${text}\` cannot be worked out from itself. Name the columns that it follows from.`
        : `\`${text}\` is worked out further down in \`${schedule}\`. Move its line above this one.`,
    );
  }
}

/** A total over a column's one value in this row is that value itself, and surely not what is meant. */
function reportTotalInRow(row: Checker, node: number, { known, schedule }: Around): void {
  const { tree } = row;
  if (tree.kinds[node] !== Node.Call) {
    return;
  }
  const callee = tree.firstChildren[node];
  const argument = tree.nextSiblings[callee];
  const definition = row.context.functions.get(row.text(callee));
  const isTotal =
    definition !== undefined &&
    'operation' in definition &&
    (definition.operation as { readonly kind: string }).kind === 'many';
  const value = argument < 0 ? -1 : tree.firstChildren[argument];
  if (isTotal && tree.nextSiblings[argument] < 0 && value >= 0 && known.get(row.text(value))) {
    const name = row.text(value);
    row.report(
      'total-in-row',
      node,
      `Within a row, \`${name}\` is that row's value alone. Work a total out below the schedule, on a line of its own: \`${row.text(callee)}(${schedule}.${name})\`.`,
    );
  }
}

function reportNoCell(row: Checker, node: number, type: Type): void {
  const field = type.kind === 'record' ? type.fields.keys().next().value : undefined;
  const advice = field === undefined ? '' : ` Take one of its fields, such as \`.${field}\`.`;
  row.report('not-a-cell', node, `${row.quote(node)} is ${describe(type)}: a row needs one value.${advice}`);
}

function reportEmptyColumns(row: Checker, node: number, [empty]: readonly string[]): void {
  if (empty !== undefined) {
    row.report(
      'empty-column',
      node,
      `No row has a value in \`${empty}\` that can be used, so there is nothing to work \`${row.text(node)}\` out from.`,
    );
  }
}
