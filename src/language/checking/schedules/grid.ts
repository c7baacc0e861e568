import type { Diagnostic, Span } from '../../../text';
import { textContent } from '../../syntax/navigation';
import { children, Node, type SyntaxTree, spanOf, textOf } from '../../syntax/tree';
import type { Meaning } from '../meaning';

/** What a cell holds where it is no expression. */
export const emptyCell = -1;
export const unreadableCell = -2;

/** The cells of a schedule, wherever they were read from. */
export interface Grid {
  /** Of the tree that the cells stand in. */
  readonly meaning: Meaning;
  readonly columns: readonly GridColumn[];
  readonly rows: number;
  /** The expression in a cell, or that it is empty or was found unreadable before. */
  node(row: number, column: number): number;
  /** What a cell says as a word: a bare name, a quoted text; in a file, whatever stands there. */
  word(row: number, column: number): string | undefined;
  /** True where a cell can hardly be meant as a value. */
  looksLikeWord(row: number, column: number): boolean;
  /** Says of a cell among values that it is none; undefined where that was said when it was read. */
  unreadable(row: number, column: number, name: string): Diagnostic | undefined;
  /** What is wrong with a row as a whole, where that was not said when it was read. */
  rowProblem(row: number): Diagnostic | undefined;
  /** More rows with problems than these are counted; absent where each problem stands at its own place. */
  readonly mostTold?: number;
  /** Rows of which something was said when they were read. */
  readonly reportedRows: ReadonlySet<number>;
  /** True where a bare word can only be text. */
  readonly hasNoNames: boolean;
  rowSpan(row: number): Span;
  placed(problem: Diagnostic, row: number): Diagnostic;
}

export interface GridColumn {
  readonly name: string;
  /** The heading, in the tree of the sheet; -1 where the heading could not be read. */
  readonly nameNode: number;
}

/** The table below `name = schedule`. */
export class InlineGrid implements Grid {
  readonly columns: readonly GridColumn[];
  readonly hasNoNames = false;
  private readonly rowNodes: number[] = [];
  private readonly cells: number[][] = [];

  constructor(
    readonly meaning: Meaning,
    schedule: number,
  ) {
    const { tree } = meaning;
    let columns: GridColumn[] = [];
    for (const child of children(tree, schedule)) {
      const kind = tree.kinds[child] as Node;
      if (kind === Node.HeaderRow) {
        columns = [...children(tree, child)].map((cell) => ({
          name: tree.kinds[cell] === Node.Name ? textOf(tree, cell) : '',
          nameNode: tree.kinds[cell] === Node.Name ? cell : -1,
        }));
      } else if (kind === Node.Row) {
        this.rowNodes.push(child);
        this.cells.push([...children(tree, child)]);
      }
    }
    this.columns = columns;
  }

  get rows(): number {
    return this.rowNodes.length;
  }

  node(row: number, column: number): number {
    const cell = this.cells[row][column];
    const kind: Node = cell === undefined ? Node.Empty : this.meaning.tree.kinds[cell];
    return kind === Node.Empty ? emptyCell : kind === Node.Error ? unreadableCell : cell;
  }

  word(row: number, column: number): string | undefined {
    return wordAt(this.meaning.tree, this.cells[row][column] ?? -1);
  }

  looksLikeWord(row: number, column: number): boolean {
    return this.word(row, column) !== undefined;
  }

  unreadable(): undefined {
    return undefined;
  }

  rowProblem(): undefined {
    return undefined;
  }

  get reportedRows(): ReadonlySet<number> {
    const { diagnostics, starts, ends } = this.meaning.tree;
    const errors = diagnostics.filter(({ severity }) => severity === 'error');
    const isIn = (node: number) => errors.some(({ span }) => span.start <= ends[node] && span.end >= starts[node]);
    return new Set(errors.length === 0 ? [] : this.rowNodes.flatMap((node, row) => (isIn(node) ? [row] : [])));
  }

  rowSpan(row: number): Span {
    return spanOf(this.meaning.tree, this.rowNodes[row]);
  }

  placed(problem: Diagnostic): Diagnostic {
    return problem;
  }
}

const hyphened = /^\p{L}[\p{L}\p{N}_]*(?:-[\p{L}\p{N}_]+)+$/u;

/** A cell that is one bare name or one quoted text, as what it says. */
export function wordAt(tree: SyntaxTree, node: number): string | undefined {
  switch (node < 0 ? Node.Empty : (tree.kinds[node] as Node)) {
    case Node.Name:
      return textOf(tree, node);
    case Node.Text:
      return textContent(tree, node);
    case Node.Binary: {
      // Tags have hyphens: `LP-6`. In a column of values the same is a difference.
      const text = textOf(tree, node);
      return hyphened.test(text) ? text : undefined;
    }
    default:
      return undefined;
  }
}

/**
 * The columns whose cells are words: where most of those that are filled are bare names or quoted texts. Told by the
 * writing alone, so that a tag that happens to be the name of something in the sheet stays a tag.
 */
export function wordColumns(grid: Grid): boolean[] {
  return grid.columns.map((_, column) => {
    let filled = 0;
    let words = 0;
    for (let row = 0; row < grid.rows; row++) {
      filled += grid.node(row, column) === emptyCell ? 0 : 1;
      words += grid.looksLikeWord(row, column) ? 1 : 0;
    }
    return words * 2 > filled;
  });
}
