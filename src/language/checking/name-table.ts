import type { FunctionDefinition } from '../library';
import { textOf } from '../syntax/tree';
import { type Cell, Name, type Statement, type Taken } from './binding';
import { CellBinder } from './cell-binder';

/** All names of a sheet. */
export class NameTable {
  private readonly names = new Map<string, Name>();
  /** Cells whose uses of names are not entered yet: a sheet that is new is settled without anybody asking for them. */
  private readonly toEnter = new Set<Cell>();

  constructor(private readonly functions: ReadonlyMap<string, FunctionDefinition>) {}

  get(text: string): Name {
    let name = this.names.get(text);
    if (!name) {
      name = new Name(text, this);
      this.names.set(text, name);
    }
    return name;
  }

  find(text: string): Name | undefined {
    return this.names.get(text);
  }

  /** Names that have a definition. */
  *defined(): Generator<Name> {
    for (const name of this.names.values()) {
      if (name.isDefined) {
        yield name;
      }
    }
  }

  /** Enters what a cell's statements define and need. */
  bind(cell: Cell): void {
    new CellBinder(this, this.functions, cell).bind();
    this.toEnter.add(cell);
  }

  /** Enters with each name the statements that use it, as far as they are not yet. */
  enterUses(): void {
    if (this.toEnter.size > 0) {
      for (const cell of this.toEnter) {
        cell.enterUses();
      }
      this.toEnter.clear();
    }
  }

  /** Enters what a statement takes from another sheet, in place of what it took before. */
  static take(statement: Statement, taken: Taken): void {
    const { cell, part } = statement;
    if (statement.taken) {
      for (const name of statement.uses) {
        name.removeUser(statement);
      }
    }
    const name = taken.names?.get(textOf(cell.tree, part));
    statement.taken = { ...taken, name };
    statement.usesFrom = cell.uses.length; // What it took before stays in the list, and is looked at no more.
    if (name) {
      cell.uses.push(name);
      name.addUser(statement);
      cell.meaning.setName(part, cell.meaning.addName(name)); // There it has its value; here it is no more than the name.
    }
    statement.usesEnd = cell.uses.length;
  }

  /** Takes a cell's statements out again. */
  unbind(cell: Cell): void {
    this.toEnter.delete(cell);
    const names = new Set<Name>();
    for (const { defines } of cell.statements) {
      if (defines) {
        names.add(defines);
      }
    }
    for (const name of cell.uses) {
      names.add(name);
    }
    for (const name of names) {
      name.forget(cell);
      this.forget(name);
    }
  }

  private forget(name: Name): void {
    // A name of another sheet is that sheet's to forget.
    if (!name.isDefined && name.users.length === 0 && this.names.get(name.text) === name) {
      this.names.delete(name.text);
    }
  }
}
