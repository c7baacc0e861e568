import { changedStretch, withStretch } from '../../text';
import { readUnit } from '../../units';
import { Arithmetic } from '../checking/arithmetic';
import { Cell, type Statement } from '../checking/binding';
import type { CheckingContext } from '../checking/checker';
import { NameTable } from '../checking/name-table';
import { namesFile } from '../checking/schedules/file-rows';
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
  private ordered: readonly Cell[] = [];
  /** What they were made from, each at the place of its cell. */
  private texts: readonly CellText[] = [];
  private readonly byId = new Map<string, Cell>();
  /** The cells that name other files, among which an update has to look without one having been edited. */
  private readonly namingFiles = new Set<Cell>();
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

  /** The cells in order. */
  get cells(): readonly Cell[] {
    return this.ordered;
  }

  /** The cells in order that take names from other sheets, or read rows from files. */
  get cellsNamingFiles(): readonly Cell[] {
    return this.namingFiles.size === 0 ? none : this.ordered.filter((cell) => this.namingFiles.has(cell));
  }

  cell(id: string): Cell | undefined {
    return this.byId.get(id);
  }

  /**
   * Takes the cells as they are now; those whose text is the same stay as they are. Only the stretch is gone through that
   * is another one than before.
   */
  take(cells: readonly CellText[], edited: Edited): void {
    const { start, oldEnd, newEnd } = changedStretch(this.texts, cells, isUnchanged);
    this.texts = cells.slice();
    if (start === oldEnd && start === newEnd) {
      return;
    }
    const before = new Map(this.ordered.slice(start, oldEnd).map((cell) => [cell.id, cell]));
    const now = cells.slice(start, newEnd).map((given) => {
      const old = before.get(given.id);
      if (old?.written.text === given.text) {
        before.delete(given.id);
        return old;
      }
      const { id, text, aside } = given;
      const cell = new Cell(id, parse(text, this.library.vocabulary, units), this.context, aside === true);
      edited.added.push(cell);
      return cell;
    });
    for (const cell of before.values()) {
      edited.gone.push(cell);
      this.byId.delete(cell.id);
      this.namingFiles.delete(cell);
    }
    for (const cell of now) {
      this.byId.set(cell.id, cell);
      if (cell.takers.length > 0 || namesFile(cell)) {
        this.namingFiles.add(cell);
      }
    }
    this.ordered = withStretch(this.ordered, start, oldEnd, now);
  }

  /** Takes another sheet's cells, unless it is the same as before. */
  takeGiven(given: GivenSheet, edited: Edited): void {
    if (given !== this.given) {
      this.given = given;
      this.take(given.cells, edited);
    }
  }

  *statements(): Generator<Statement> {
    for (const cell of this.ordered) {
      yield* cell.statements;
    }
  }
}

const isUnchanged = (a: CellText, b: CellText): boolean => a.id === b.id && a.text === b.text;

const none: readonly Cell[] = [];
