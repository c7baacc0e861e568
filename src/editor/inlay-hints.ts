import { showValue } from '../display';
import { children, Node, type StatementResult, type SyntaxTree } from '../language';
import type { EditedSheet } from './contract';

/** A result to show behind the end of its statement's first line. */
export interface InlayHint {
  readonly offset: number;
  readonly text: string;
}

/** Longer values are left to the cell's output. */
const longest = 60;

const verdicts = { yes: '✓ yes', no: '✗ no', 'cannot tell': '? cannot tell' } as const;

/** What each statement of a cell comes to; nothing for one that is only a value written down. */
export function inlayHints({ program }: EditedSheet, cell: string): InlayHint[] {
  const tree = program.tree(cell);
  return tree ? program.results(cell).flatMap((result) => hintOf(tree, result)) : [];
}

function hintOf(tree: SyntaxTree, result: StatementResult): InlayHint[] {
  const text = textOf(tree, result);
  if (text === undefined || [...text].length > longest) {
    return [];
  }
  const lineEnd = tree.text.indexOf('\n', result.span.start);
  const end = Math.min(result.span.end, lineEnd < 0 ? tree.text.length : lineEnd);
  return [{ offset: end, text }];
}

function textOf(tree: SyntaxTree, { index, kind, verdict, value }: StatementResult): string | undefined {
  if (kind === 'check') {
    return verdict && verdicts[verdict];
  }
  const statement = tree.statements[index];
  if (tree.kinds[statement] === Node.Use) {
    return undefined;
  }
  const expression = [...children(tree, statement)].at(-1);
  const isWritten = tree.kinds[statement] === Node.Input || (expression !== undefined && isLiteral(tree, expression));
  return !value || isWritten || value.kind === 'record' || value.kind === 'list' ? undefined : `= ${showValue(value)}`;
}

const literals = new Set([Node.Number, Node.Quantity, Node.Designation, Node.Text, Node.Yes, Node.No]);

const isLiteral = (tree: SyntaxTree, expression: number): boolean => literals.has(tree.kinds[expression]);
