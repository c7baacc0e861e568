import { children, Node, type SyntaxTree } from '../tree';
import { Piece, type PieceOfText } from './pieces';

const blockIndent = 2;

/** Where a line stood and where it will stand. */
interface Indent {
  readonly was: number;
  readonly is: number;
}

/**
 * The indentation of each line: statements at the left edge, what is laid out below them by two more, and lines that
 * run on as far from the line they belong to as they were.
 */
export function indentsOf(tree: SyntaxTree, lines: readonly (readonly PieceOfText[])[]): number[] {
  const starts = blockStarts(tree);
  const hasErrors = tree.diagnostics.some(({ severity }) => severity === 'error');
  const indents: number[] = [];
  /** For each line, the statement or block line that it belongs to, or that stands before it. */
  const owners: Indent[] = [];
  let owner: Indent = { was: 0, is: 0 };
  let base = 0;
  lines.forEach(([{ piece, start }], index) => {
    const was = widthBefore(tree.text, start);
    if (starts.get(start) === 'statement') {
      // Beside a statement that stays as it is, the others must stay where they are.
      base = hasErrors ? was : 0;
      owner = { was, is: base };
    } else if (piece === Piece.Bar || starts.get(start) === 'block') {
      owner = { was, is: base + blockIndent };
    }
    owners[index] = owner;
    indents[index] = Math.max(0, owner.is + was - owner.was);
  });
  let next = 0;
  for (let index = lines.length - 1; index >= 0; index--) {
    const [{ piece, start }] = lines[index];
    if (piece === Piece.Comment) {
      // It stands like the next line; behind a block's last line it stays in the block.
      const before = owners[index];
      const stays = before.is > next && widthBefore(tree.text, start) >= before.was;
      indents[index] = stays ? before.is : next;
    }
    next = indents[index];
  }
  return indents;
}

/** Where statements and the lines of blocks begin. Table rows are told by their bar, since the rule below the heading is no node. */
function blockStarts(tree: SyntaxTree): Map<number, 'statement' | 'block'> {
  const kinds = new Map<number, 'statement' | 'block'>();
  for (const statement of tree.statements) {
    kinds.set(tree.starts[statement], 'statement');
    for (const child of children(tree, statement)) {
      const kind: Node = tree.kinds[child];
      if (kind === Node.Field || kind === Node.Equation || kind === Node.Column) {
        kinds.set(tree.starts[child], 'block');
      }
    }
  }
  return kinds;
}

/** The indentation before `at`, tabs counted to the next multiple of four as the scanner does. */
function widthBefore(text: string, at: number): number {
  let start = at;
  while (start > 0 && text.charCodeAt(start - 1) !== 10 && text.charCodeAt(start - 1) !== 13) {
    start--;
  }
  let width = 0;
  for (let offset = start; offset < at; offset++) {
    width += text.charCodeAt(offset) === 9 ? 4 - (width % 4) : 1;
  }
  return width;
}
