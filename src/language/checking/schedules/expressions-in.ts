import { children, Node, textOf } from '../../syntax/tree';
import type { Meaning } from '../meaning';
import { InlineGrid, wordColumns } from './grid';

/** An expression of a schedule, with the columns whose names stand for values of the row in it. */
export interface ScheduleExpression {
  readonly expression: number;
  readonly columns: ReadonlySet<string>;
}

const none: ReadonlySet<string> = new Set();

/**
 * The expressions in which names of the sheet may stand: cells of columns that hold values, since words in the others
 * are no names, and formulas, where the names of columns go before those of the sheet.
 */
export function* expressionsIn(meaning: Meaning, schedule: number): Generator<ScheduleExpression> {
  const { tree } = meaning;
  const grid = new InlineGrid(meaning, schedule);
  const isWords = wordColumns(grid);
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < isWords.length; column++) {
      const expression = isWords[column] ? -1 : grid.node(row, column);
      if (expression >= 0) {
        yield { expression, columns: none };
      }
    }
  }
  const formulas = [...children(tree, schedule)].filter((child) => tree.kinds[child] === Node.Column);
  const columns = new Set([
    ...grid.columns.map(({ name }) => name),
    ...formulas.map((column) => textOf(tree, tree.firstChildren[column])),
  ]);
  for (const column of formulas) {
    const expression = tree.nextSiblings[tree.firstChildren[column]];
    if (expression >= 0) {
      yield { expression, columns };
    }
  }
}
