import type { Diagnostic } from '../../text';
import { readUnit } from '../../units';
import { Arithmetic } from '../checking/arithmetic';
import { Cell, type Name, NameTable, type Statement } from '../checking/binding';
import type { CheckingContext } from '../checking/checker';
import type { Type } from '../checking/type';
import { replay } from '../evaluation/replay';
import { Runner } from '../evaluation/runner';
import type { Value } from '../evaluation/value';
import type { FunctionDefinition, Library } from '../library';
import { mathematics } from '../mathematics';
import { measurement } from '../measurement';
import type { NameInfo, Program, StatementResult } from '../program';
import { parse } from '../syntax/parser';
import type { SyntaxTree } from '../syntax/tree';
import { orderByDependency } from './dependency-order';
import { namesOf } from './name-info';
import { Settler } from './settler';

export const createProgram = (library: Library): Program => new SheetProgram(library);

const units = { readUnit };

/** The cells of a sheet, kept from update to update so that only what an edit touches is done again. */
export class SheetProgram implements Program {
  private cells = new Map<string, Cell>();
  private readonly nameTable: NameTable;
  private readonly runner: Runner;
  private readonly settler: Settler;
  private namesMade: ReadonlyMap<string, NameInfo> | undefined;

  constructor(readonly library: Library) {
    const functions = new Map<string, FunctionDefinition>(
      [...mathematics, ...measurement].map((one) => [one.name, one]),
    );
    for (const [name, definition] of library.functions) {
      functions.set(name, definition);
    }
    this.nameTable = new NameTable(functions);
    this.runner = new Runner(library);
    const context: CheckingContext = {
      library,
      functions,
      arithmetic: new Arithmetic(library.system),
      names: this.nameTable,
    };
    this.settler = new Settler(context, this.runner);
  }

  update(cells: readonly { readonly id: string; readonly text: string }[]): ReadonlySet<string> {
    this.namesMade = undefined;
    const changed = new Set<string>();
    const before = this.cells;
    const after = new Map<string, Cell>();
    const added: Cell[] = [];
    for (const { id, text } of cells) {
      const old = before.get(id);
      if (old && old.tree.text === text) {
        after.set(id, old);
      } else {
        const cell = new Cell(id, parse(text, this.library.vocabulary, units));
        added.push(cell);
        after.set(id, cell);
      }
    }
    const namesTouched = new Set<Name>();
    for (const [id, cell] of before) {
      if (after.get(id) !== cell) {
        this.remove(cell, namesTouched);
        changed.add(id);
      }
    }
    this.cells = after;
    const touched = this.enter(added, namesTouched);
    for (const cell of added) {
      changed.add(cell.id);
    }
    for (const statement of this.settler.settle(touched)) {
      changed.add(statement.cell.id);
    }
    if (this.runner.isWasteful) {
      this.runner.compileAll(this.statements());
    }
    return changed;
  }

  private remove(cell: Cell, namesTouched: Set<Name>): void {
    for (const statement of cell.statements) {
      for (const name of statement.defines) {
        namesTouched.add(name);
      }
      this.settler.drop(statement);
    }
    this.nameTable.unbind(cell);
  }

  /** Binds new cells; returns the statements that are new or whose names came, went or moved. */
  private enter(added: readonly Cell[], namesTouched: Set<Name>): Set<Statement> {
    const touched = new Set<Statement>();
    for (const cell of added) {
      this.nameTable.bind(cell);
      for (const statement of cell.statements) {
        touched.add(statement);
        for (const name of statement.defines) {
          namesTouched.add(name);
        }
      }
    }
    for (const name of namesTouched) {
      for (const statement of [...name.users, ...name.definitions]) {
        touched.add(statement);
      }
    }
    if (namesTouched.size > 0) {
      for (const statement of this.settler.unresolved) {
        touched.add(statement);
      }
    }
    return touched;
  }

  private *statements(): Generator<Statement> {
    for (const cell of this.cells.values()) {
      yield* cell.statements;
    }
  }

  /** Runs everything again, as after a change of every number at once. */
  evaluate(): void {
    this.runner.runAll(() => orderByDependency([...this.statements()]).ordered);
  }

  tree(cell: string): SyntaxTree | undefined {
    return this.cells.get(cell)?.tree;
  }

  results(cell: string): readonly StatementResult[] {
    return (this.cells.get(cell)?.statements ?? []).flatMap(({ result }) => result ?? []);
  }

  diagnostics(cell: string): readonly Diagnostic[] {
    const found = this.cells.get(cell);
    if (!found) {
      return [];
    }
    const all = [...found.tree.diagnostics];
    for (const statement of found.statements) {
      all.push(...statement.checkDiagnostics, ...statement.runDiagnostics);
    }
    return all.sort((a, b) => a.span.start - b.span.start);
  }

  names(): ReadonlyMap<string, NameInfo> {
    this.namesMade ??= namesOf(this.nameTable, this.cells.values());
    return this.namesMade;
  }

  typeAt(cell: string, node: number): Type | undefined {
    const meaning = this.cells.get(cell)?.meaning;
    return meaning?.types[node] ?? meaning?.names[node]?.type;
  }

  valueAt(cell: string, node: number): Value | undefined {
    const found = this.cells.get(cell);
    const name = found?.meaning.names[node];
    if (name?.definition) {
      return name.definition.result?.value;
    }
    const statement = found?.statements.find(({ node: own }) => {
      const { starts, ends } = found.tree;
      return starts[own] <= starts[node] && ends[node] <= ends[own];
    });
    return statement?.compiled && statement.succeeded
      ? replay(this.runner, statement, (run) => run.value(node))
      : undefined;
  }
}
