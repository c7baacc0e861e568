import type { LookedAtCell } from './look-at-cell';
import type { Asked, QuestionKey, SheetView } from './sheet-view';

/** An answer that findings hang on, and the cells that they stand in. */
interface Answer extends Asked {
  readonly cells: Set<string>;
}

/**
 * What the findings of each cell hang on beside the cell itself: the texts of other cells, and answers about the sheet.
 * Every answer is held once, as it was when it was last asked.
 */
export class Dependence {
  /** By cell, the cells whose findings hang on its text. */
  private readonly onText = new Map<string, Set<string>>();
  private readonly answers = new Map<QuestionKey, Answer>();
  /** The same answers: those about the uses of a name, by name, and all others. */
  private readonly ofNames = new Map<string, Set<Answer>>();
  private readonly ofSheet = new Set<Answer>();

  enter(cell: string, { consulted, asked }: LookedAtCell): void {
    for (const other of consulted) {
      if (other !== cell) {
        entry(this.onText, other).add(cell);
      }
    }
    for (const question of asked) {
      let answer = this.answers.get(question.key);
      if (!answer) {
        answer = { ...question, cells: new Set() };
        this.answers.set(question.key, answer);
        (question.name === undefined ? this.ofSheet : entry(this.ofNames, question.name)).add(answer);
      }
      answer.cells.add(cell);
    }
  }

  leave(cell: string, { consulted, asked }: LookedAtCell): void {
    for (const other of consulted) {
      removeEntry(this.onText, other, cell);
    }
    for (const { key, name } of asked) {
      const answer = this.answers.get(key);
      if (answer?.cells.delete(cell) && answer.cells.size === 0) {
        this.answers.delete(key);
        if (name === undefined) {
          this.ofSheet.delete(answer);
        } else {
          removeEntry(this.ofNames, name, answer);
        }
      }
    }
  }

  /** The cells whose findings hang on the text of another one. */
  onTextOf(cell: string): Iterable<string> {
    return this.onText.get(cell) ?? [];
  }

  /** The cells that were told something else than is so now. `touched` are the names that are used otherwise. */
  misled(sheet: SheetView, touched: ReadonlySet<string>): string[] {
    const cells: string[] = [];
    const look = (answer: Answer) => {
      if (answer.again(sheet) !== answer.answer) {
        cells.push(...answer.cells);
      }
    };
    this.ofSheet.forEach(look);
    for (const name of touched) {
      this.ofNames.get(name)?.forEach(look);
    }
    return cells;
  }
}

function entry<T>(sets: Map<string, Set<T>>, key: string): Set<T> {
  let set = sets.get(key);
  if (!set) {
    set = new Set();
    sets.set(key, set);
  }
  return set;
}

function removeEntry<T>(sets: Map<string, Set<T>>, key: string, value: T): void {
  const set = sets.get(key);
  if (set?.delete(value) && set.size === 0) {
    sets.delete(key);
  }
}
