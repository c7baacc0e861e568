import { type CallRecord, children, Node, type SyntaxTree, spanOf, textOf } from '../language';
import type { Edit, Span } from '../text';
import type { LintedStatement } from './contract';

/** True when the call stands in the statement itself, and not in the body of a function that the statement calls. */
export const standsHere = (statement: LintedStatement, call: CallRecord): boolean =>
  call.cell === statement.cell &&
  call.span.start >= statement.result.span.start &&
  call.span.end <= statement.result.span.end;

/** Where a finding about the call belongs: the function's name, or the statement when the call stands elsewhere. */
export const callSpan = (statement: LintedStatement, call: CallRecord): Span =>
  standsHere(statement, call) ? call.nameSpan : statement.result.span;

/** Where a finding about the first written one of these arguments belongs; the call when none of them is written. */
export function argumentSpan(statement: LintedStatement, call: CallRecord, ...parameters: readonly string[]): Span {
  const written = parameters.find((parameter) => call.arguments.get(parameter)?.given);
  if (written === undefined || !standsHere(statement, call)) {
    return callSpan(statement, call);
  }
  const node = argumentNode(statement, call, written);
  return node === undefined ? call.arguments.get(written)!.span : spanOf(statement.tree, node);
}

/** The expression written for a parameter, whether by name or by position; absent when there is none here. */
export function argumentNode(statement: LintedStatement, call: CallRecord, parameter: string): number | undefined {
  const record = call.arguments.get(parameter);
  if (!record?.given || !standsHere(statement, call)) {
    return undefined;
  }
  if (call.argumentNodes) {
    return call.argumentNodes.get(parameter);
  }
  const { tree } = statement;
  for (const argument of children(tree, call.node)) {
    const kind = tree.kinds[argument];
    if (kind === Node.Field || kind === Node.Argument) {
      const expression = lastChild(tree, argument);
      if (tree.starts[argument] <= record.span.start && record.span.end <= tree.ends[argument] && expression >= 0) {
        return expression;
      }
    }
  }
  return undefined;
}

/** The edit that adds `parameter: text` to a call: as a line of its block, or as the last argument. */
export function argumentInsertion(
  statement: LintedStatement,
  call: CallRecord,
  parameter: string,
  text: string,
): Edit | undefined {
  if (!standsHere(statement, call) || call.argumentNodes) {
    return undefined; // A schedule has a column for it or none.
  }
  const { tree } = statement;
  const written = [...children(tree, call.node)].filter(
    (child) => tree.kinds[child] === Node.Field || tree.kinds[child] === Node.Argument,
  );
  const last = written.at(-1);
  if (last === undefined) {
    return undefined;
  }
  if (tree.kinds[last] === Node.Argument) {
    return { span: { start: tree.ends[last], end: tree.ends[last] }, newText: `, ${parameter}: ${text}` };
  }
  // Before the last field and not after it, so that a comment at the end of that line stays with its own field.
  const at = tree.starts[last];
  return { span: { start: at, end: at }, newText: `${parameter}: ${text}${lineBreakBefore(tree.text, at)}` };
}

/** The line break before an offset and the indentation that follows it. */
function lineBreakBefore(text: string, offset: number): string {
  const lineStart = text.lastIndexOf('\n', offset - 1) + 1;
  return (text[lineStart - 2] === '\r' ? '\r\n' : '\n') + text.slice(lineStart, offset);
}

function lastChild(tree: SyntaxTree, node: number): number {
  let last = -1;
  for (const child of children(tree, node)) {
    last = child;
  }
  return last;
}

/** The expression without the parentheses around it. */
export function ungrouped(tree: SyntaxTree, node: number): number {
  let inner = node;
  while (tree.kinds[inner] === Node.Group && tree.firstChildren[inner] >= 0) {
    inner = tree.firstChildren[inner];
  }
  return inner;
}

/** The name of the function that a Call or BlockCall node calls. */
export function calledName(tree: SyntaxTree, call: number): string {
  let isOwnName = tree.kinds[call] === Node.BlockCall;
  for (let child = tree.firstChildren[call]; child >= 0; child = tree.nextSiblings[child]) {
    if (tree.kinds[child] === Node.Name) {
      if (!isOwnName) {
        return textOf(tree, child);
      }
      isOwnName = false;
    }
  }
  return '';
}
