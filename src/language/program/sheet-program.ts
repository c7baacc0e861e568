import type { Diagnostic } from '../../text';
import type { Cell, Statement, Taken } from '../checking/binding';
import { NameTable } from '../checking/name-table';
import { readsOtherRows } from '../checking/schedules/file-rows';
import type { Type } from '../checking/type';
import { replay } from '../evaluation/replay';
import { Runner } from '../evaluation/runner';
import { scheduleOf, valueInCell } from '../evaluation/schedules/row-replay';
import type { Value } from '../evaluation/value';
import type { Library } from '../library';
import type { CellText, NameInfo, OtherSheets, Program, StatementResult } from '../program';
import { valueInEquation } from '../solving/value-in-equation';
import type { SyntaxTree } from '../syntax/tree';
import { orderByDependency } from './dependency-order';
import { nameOf, namesOf } from './name-info';
import { Settler } from './settler';
import { type Edited, Sheet } from './sheet';
import { noOtherSheets, UsedSheets } from './used-sheets';
import { Variation } from './variation';

/** `others` gives the sheets that `use` lines name; without it nothing can be taken from another sheet. */
export const createProgram = (library: Library, others = noOtherSheets): Program => new SheetProgram(library, others);

/** The cells of a sheet, kept from update to update so that only what an edit touches is done again. */
export class SheetProgram implements Program {
  private readonly sheet: Sheet;
  private readonly used: UsedSheets;
  private readonly runner = new Runner();
  private readonly settler = new Settler(this.runner);
  private namesMade: ReadonlyMap<string, NameInfo> | undefined;
  /** The results of a cell as one list, for the round of running in which it was made. */
  private readonly resultsOf = new WeakMap<Cell, { readonly round: number; readonly results: StatementResult[] }>();

  constructor(
    readonly library: Library,
    others: OtherSheets = noOtherSheets,
  ) {
    this.sheet = new Sheet(library, others, others.path);
    this.used = new UsedSheets(this.sheet, others);
  }

  update(cells: readonly CellText[]): ReadonlySet<string> {
    this.namesMade = undefined;
    const edited: Edited = { added: [], gone: [] };
    this.sheet.take(cells, edited);
    const taken = this.used.follow(edited);
    const changed = new Set<string>();
    const note = ({ id, context }: Cell) => {
      if (context === this.sheet.context) {
        changed.add(id);
      }
    };
    this.settler.begin();
    for (const cell of edited.gone) {
      this.remove(cell);
      note(cell);
    }
    for (const cell of edited.added) {
      this.enter(cell);
      note(cell);
    }
    this.touchNames([...edited.added, ...edited.gone]);
    for (const statement of takenAnew(taken)) {
      this.settler.touch(statement);
    }
    for (const statement of this.withOtherRows()) {
      this.settler.touch(statement);
    }
    for (const cell of this.settler.settle()) {
      note(cell);
    }
    if (this.runner.isWasteful) {
      this.runner.compileAll(this.statements());
    }
    return changed;
  }

  /** The schedules whose files give other rows now. */
  private *withOtherRows(): Generator<Statement> {
    for (const sheet of [this.sheet, ...this.used]) {
      for (const cell of sheet.cellsNamingFiles) {
        yield* cell.statements.filter(readsOtherRows);
      }
    }
  }

  private remove(cell: Cell): void {
    for (const statement of cell.statements) {
      this.settler.drop(statement);
    }
    cell.context.names.unbind(cell);
  }

  private enter(cell: Cell): void {
    cell.context.names.bind(cell);
    for (const statement of cell.statements) {
      this.settler.enter(statement);
    }
  }

  /** Has what hangs on names that came, went or moved checked anew. */
  private touchNames(cells: readonly Cell[]): void {
    if (this.settler.isAll) {
      return;
    }
    let isAny = false;
    for (const { statements } of cells) {
      for (const { defines } of statements) {
        if (defines) {
          this.settler.touchName(defines);
          isAny = true;
        }
      }
    }
    if (isAny) {
      this.settler.touchUnresolved();
    }
  }

  private *statements(): Generator<Statement> {
    yield* this.sheet.statements();
    for (const sheet of this.used) {
      yield* sheet.statements();
    }
  }

  /** Runs everything again, as after a change of every number at once. */
  evaluate(): void {
    this.runner.runAll(() => orderByDependency([...this.statements()]).ordered);
  }

  vary(names: readonly string[], casesAtOnce?: number): Variation {
    return new Variation(names, this.sheet, this.runner, this.settler, casesAtOnce);
  }

  tree(cell: string): SyntaxTree | undefined {
    return this.sheet.cell(cell)?.written;
  }

  results(cell: string): readonly StatementResult[] {
    const found = this.sheet.cell(cell);
    if (!found) {
      return [];
    }
    let kept = this.resultsOf.get(found);
    if (kept?.round !== this.settler.rounds) {
      const results: StatementResult[] = [];
      for (const { result } of found.statements) {
        if (result) {
          results.push(result);
        }
      }
      kept = { round: this.settler.rounds, results };
      this.resultsOf.set(found, kept);
    }
    return kept.results;
  }

  diagnostics(cell: string): readonly Diagnostic[] {
    const found = this.sheet.cell(cell);
    if (!found) {
      return [];
    }
    const all = [...found.written.diagnostics];
    for (const statement of found.statements) {
      all.push(...statement.checkDiagnostics, ...statement.partDiagnostics, ...statement.runDiagnostics);
    }
    return all.sort((a, b) => a.span.start - b.span.start);
  }

  names(): ReadonlyMap<string, NameInfo> {
    this.namesMade ??= namesOf(this.sheet);
    return this.namesMade;
  }

  name(text: string): NameInfo | undefined {
    return nameOf(this.sheet, text);
  }

  typeAt(cell: string, node: number): Type | undefined {
    const meaning = this.sheet.cell(cell)?.meaning;
    return meaning?.types[node] ?? meaning?.nameAt(node)?.type;
  }

  valueAt(cell: string, node: number): Value | undefined {
    const found = this.sheet.cell(cell);
    const name = found?.meaning.nameAt(node);
    if (name?.definition) {
      return name.definition.result?.value;
    }
    const statement = found?.statements.find(({ node: own, isUnknown }) => {
      const { starts, ends } = found.tree;
      return !isUnknown && starts[own] <= starts[node] && ends[node] <= ends[own];
    });
    if (statement && statement.unknowns.length > 0) {
      return valueInEquation(this.runner, statement, node);
    }
    if (!statement?.isCompiled || !statement.succeeded) {
      return undefined;
    }
    return scheduleOf(statement)
      ? valueInCell(this.runner, statement, node)
      : replay(this.runner, statement, (run) => run.value(node));
  }
}

/** Enters what statements take from other sheets where that is not what they took before, and returns those. */
function takenAnew(taken: ReadonlyMap<Statement, Taken>): Statement[] {
  return [...taken].flatMap(([statement, now]) => {
    const before = statement.taken;
    if (
      before &&
      before.names === now.names &&
      before.file === now.file &&
      before.problem?.message === now.problem?.message
    ) {
      return [];
    }
    NameTable.take(statement, now);
    return [statement];
  });
}
