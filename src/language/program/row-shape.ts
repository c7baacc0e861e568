import { fitting } from '../checking/argument-types';
import type { Statement } from '../checking/binding';
import type { BoundArgument, LibraryCall } from '../checking/meaning';
import { resultTypeOf } from '../checking/result-types';
import type { ScheduleMeaning } from '../checking/schedules/schedule-meaning';
import type { Type } from '../checking/type';
import { unknownType } from '../checking/types';
import { CallSite } from '../evaluation/call-site';
import { sizeOf } from '../evaluation/layout';
import { NoValue } from '../evaluation/machine';
import type { Runner } from '../evaluation/runner';
import { columnSlots, scheduleOf, takeItem } from '../evaluation/schedules/row-replay';
import { isMissing } from '../evaluation/sites';
import { Listener } from '../evaluation/watch';
import type { FunctionDefinition, Parameter } from '../library';
import type { ArgumentRecord, CallRecord } from '../program';
import { spanOf } from '../syntax/tree';
import { callRecord } from './call-record';
import type { RowPlace } from './schedule-rows';

interface ShapedColumn {
  readonly name: string;
  readonly spec: Parameter;
  readonly type: Type;
  readonly slot: number;
  readonly unit?: BoundArgument['unit'];
  /** The cells, where they are written. */
  readonly nodes?: Int32Array;
  readonly words?: readonly (string | undefined)[];
}

/** What the function told of a row's arguments, or why it came to no result. */
interface Told {
  readonly records: readonly CallRecord[];
  readonly failure?: string;
}

/** A schedule whose columns are called as the parameters of a function of the library are: each row is such a call. */
export class RowShape {
  /** The function's arguments, in order, where no column gives one; and the place of each by its parameter. */
  private readonly defaults: readonly BoundArgument[];
  private readonly places: ReadonlyMap<string, number>;
  private readonly byName: ReadonlyMap<string, ShapedColumn>;
  private readonly result: Type;
  /** What was told of rows already, by their arguments: in a long list of circuits many are alike. */
  private readonly known = new Map<string, Told>();

  private constructor(
    private readonly runner: Runner,
    private readonly statement: Statement,
    private readonly definition: FunctionDefinition,
    private readonly columns: readonly ShapedColumn[],
    /** Groups of columns of which a row must have one each to be such a call. */
    private readonly wanted: readonly (readonly string[])[],
  ) {
    this.defaults = Object.entries(definition.parameters).map(([parameter, spec]) => {
      return { parameter, spec, nodes: [], type: unknownType };
    });
    this.places = new Map(this.defaults.map(({ parameter }, place) => [parameter, place]));
    this.byName = new Map(columns.map((column) => [column.name, column]));
    this.result = resultTypeOf(definition, statement.cell.context.library.system);
  }

  /** The shape of a schedule; undefined for one that has none, or whose formulas call that function themselves. */
  static of(runner: Runner, statement: Statement, called: ReadonlySet<string>): RowShape | undefined {
    const schedule = scheduleOf(statement)!;
    const { library, functions } = statement.cell.context;
    for (const { function: name, columns: wanted } of library.rowShapes ?? []) {
      const definition = functions.get(name);
      const columns = definition && !called.has(name) ? columnsFor(definition, schedule, statement.slot) : [];
      if (wanted.every((names) => columns.some((column) => names.includes(column.name)))) {
        return columns.length > 0 ? new RowShape(runner, statement, definition!, columns, wanted) : undefined;
      }
    }
    return undefined;
  }

  /** What the function tells of one row; where it comes to no result, why, if `tellsFailure` and the row is such a call. */
  callIn(row: number, place: RowPlace, tellsFailure: boolean): CallRecord[] {
    const given = this.columns.filter((column) => this.hasValue(column, row));
    const { records, failure } = this.told(given, row, place);
    const isMeant = this.wanted.every((names) => given.some(({ name }) => names.includes(name)));
    return tellsFailure && isMeant && failure
      ? [this.unjudged(failure, place)]
      : records.map((record) => this.record(record, row, place));
  }

  /** What the function told of a row with the same arguments; the row's own where there was none. */
  private told(given: readonly ShapedColumn[], row: number, place: RowPlace): Told {
    const key = this.keyOf(given, row);
    const known = key === undefined ? undefined : this.known.get(key);
    const told = known ?? this.run(given, row, place);
    if (key !== undefined) {
      this.known.set(key, told);
    }
    return told;
  }

  /** The arguments as one text, the same for rows that come to the same; undefined where doubt tells rows apart. */
  private keyOf(given: readonly ShapedColumn[], row: number): string | undefined {
    if (this.statement.isUncertain) {
      return undefined;
    }
    const { objects } = this.runner.machine;
    let key = '';
    for (const { name, spec, slot, words } of given) {
      const list = objects[slot] as ArrayLike<unknown>;
      const item = 'choice' in spec ? words?.[row] : list[row];
      if (isMissing(item) || (typeof item === 'object' && !('object' in spec))) {
        return undefined;
      }
      // The text of an object reads back as the same one.
      const text = typeof item === 'object' && 'object' in spec ? spec.object.text(item as never) : String(item);
      key += `${name} ${Object.is(item, -0) ? '-0' : text}\n`;
    }
    return key;
  }

  private run(given: readonly ShapedColumn[], row: number, place: RowPlace): Told {
    const { machine } = this.runner;
    const { cells } = scheduleOf(this.statement)!;
    const mark = machine.mark();
    try {
      const slots = new Map(given.map((column) => [column.name, machine.extend(1)]));
      for (const { name, slot } of given) {
        takeItem(machine, slot, row, slots.get(name)!);
      }
      const call = this.call(given, row, place);
      const target = machine.extend(sizeOf(call.result));
      const listener = new Listener('facts');
      const inputs = call.arguments.map(({ parameter }) => (slots.has(parameter) ? [slots.get(parameter)!] : []));
      new CallSite(call, cells, inputs, target, listener).run(machine);
      const records = listener.calls.filter(({ result }) => result).map(callRecord);
      const failure = machine.objects[target];
      return { records, failure: failure instanceof NoValue ? failure.message : undefined };
    } finally {
      machine.forget(mark);
    }
  }

  private hasValue({ slot, spec, words }: ShapedColumn, row: number): boolean {
    const { machine } = this.runner;
    const list = machine.objects[slot];
    const isThere = typeof list === 'object' && list !== null && !machine.holes.get(list)?.has(row);
    // A word that means nothing to the function is the sheet's own affair.
    return isThere && (!('choice' in spec) || spec.choice.includes(words?.[row] ?? ''));
  }

  /** The call that the columns with a value are laid out for; the others take their defaults. */
  private call(given: readonly ShapedColumn[], row: number, { node }: RowPlace): LibraryCall {
    const { definition, result } = this;
    const nodes = [node];
    const bound = [...this.defaults];
    for (const { name, spec, type, unit, words } of given) {
      const word = 'choice' in spec ? words?.[row] : undefined;
      const argument = { parameter: name, spec, nodes, type, unit };
      bound[this.places.get(name)!] = word === undefined ? argument : { ...argument, word };
    }
    return { kind: 'library', node, nameNode: node, definition, arguments: bound, result };
  }

  private unjudged(why: string, { span, node }: RowPlace): CallRecord {
    const { definition, statement } = this;
    return {
      function: definition.name,
      cell: statement.cell.id,
      span,
      nameSpan: span,
      arguments: new Map(),
      facts: [],
      node,
      isImplied: true,
      unjudged: why,
    };
  }

  private record(record: CallRecord, row: number, { span, node }: RowPlace): CallRecord {
    const { cells } = scheduleOf(this.statement)!;
    const given = new Map<string, ArgumentRecord>();
    const argumentNodes = new Map<string, number>();
    for (const [name, argument] of record.arguments) {
      const cell = argument.given ? (this.byName.get(name)?.nodes?.[row] ?? -1) : -1;
      if (cell >= 0) {
        argumentNodes.set(name, cell);
      }
      given.set(name, { ...argument, span: cell >= 0 ? spanOf(cells.tree, cell) : span });
    }
    return {
      ...record,
      cell: this.statement.cell.id,
      span,
      nameSpan: span,
      arguments: given,
      node,
      argumentNodes,
      isImplied: true,
    };
  }
}

/** The columns that the function can take as arguments. */
function columnsFor(definition: FunctionDefinition, schedule: ScheduleMeaning, first: number): ShapedColumn[] {
  const slots = columnSlots(schedule, first);
  const columns = [...schedule.written, ...schedule.computed];
  return columns.flatMap((column): ShapedColumn[] => {
    const { type } = column;
    // A heading of a spreadsheet begins with a capital as often as not.
    const small = column.name.toLowerCase();
    const name = columns.some((other) => other.name === small) ? column.name : small;
    const spec = Object.hasOwn(definition.parameters, name) ? definition.parameters[name] : undefined;
    if (!spec || spec.repeated || type.kind === 'unknown') {
      return [];
    }
    const shaped = { ...('nodes' in column && column), name, spec, type, slot: slots.get(column.name)! };
    if ('choice' in spec) {
      return type.kind === 'text' && 'words' in column ? [shaped] : [];
    }
    const fit = fitting(spec, type);
    return fit ? [{ ...shaped, unit: fit.unit }] : [];
  });
}
