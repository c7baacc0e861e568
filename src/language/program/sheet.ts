import { readUnit } from '../../units';
import { Arithmetic } from '../checking/arithmetic';
import { Cell, type Statement } from '../checking/binding';
import type { CheckingContext } from '../checking/checker';
import { NameTable } from '../checking/name-table';
import type { FunctionDefinition, Library } from '../library';
import { mathematics } from '../mathematics';
import { measurement } from '../measurement';
import type { CellText, GivenSheet, OtherSheets } from '../program';
import { parse } from '../syntax/parser';

const units = { readUnit };

/** Cells that came and went with an update, whichever sheet they belong to. */
export interface Edited {
  readonly added: Cell[];
  readonly gone: Cell[];
}

/** The cells of one sheet and the names that hold in it: the sheet worked on, or one that it takes names from. */
export class Sheet {
  readonly context: CheckingContext;
  readonly names: NameTable;
  cells: ReadonlyMap<string, Cell> = new Map();
  /** What its cells were taken from, for a sheet that names are taken from. */
  private given?: GivenSheet;

  constructor(
    readonly library: Library,
    others: OtherSheets,
    /** The sheet's own path. */
    path: string,
  ) {
    const functions = new Map<string, FunctionDefinition>(
      [...mathematics, ...measurement].map((one) => [one.name, one]),
    );
    for (const [name, definition] of library.functions) {
      functions.set(name, definition);
    }
    this.names = new NameTable(functions);
    this.context = {
      library,
      functions,
      arithmetic: new Arithmetic(library.system),
      names: this.names,
      rows: (file) => others.rows(file, path),
      place: (cell, span) => this.given?.place(cell, span),
    };
  }

  /** Takes the cells as they are now; those whose text is the same stay as they are. */
  take(cells: readonly CellText[], edited: Edited): void {
    const before = this.cells;
    const after = new Map<string, Cell>();
    for (const { id, text, aside } of cells) {
      const old = before.get(id);
      if (old && old.written.text === text) {
        after.set(id, old);
      } else {
        const cell = new Cell(id, parse(text, this.library.vocabulary, units), this.context, aside === true);
        edited.added.push(cell);
        after.set(id, cell);
      }
    }
    for (const [id, cell] of before) {
      if (after.get(id) !== cell) {
        edited.gone.push(cell);
      }
    }
    this.cells = after;
  }

  /** Takes another sheet's cells, unless it is the same as before. */
  takeGiven(given: GivenSheet, edited: Edited): void {
    if (given !== this.given) {
      this.given = given;
      this.take(given.cells, edited);
    }
  }

  *statements(): Generator<Statement> {
    for (const cell of this.cells.values()) {
      yield* cell.statements;
    }
  }
}
