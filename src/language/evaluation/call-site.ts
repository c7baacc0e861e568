import { dimensionless, fromBase, toBase, type Unit } from '../../units';
import type { BoundArgument, LibraryCall, Meaning } from '../checking/meaning';
import type { Type } from '../checking/type';
import { ownUnit } from '../checking/types';
import { Absent, type Call, Failure, type Interval, type ParameterType, type ResultType } from '../library';
import { textOf } from '../syntax/tree';
import { propagateByDifferences } from './differences';
import { intervalsOf } from './intervals';
import { sizeOf, slotTypes } from './layout';
import { missingItem } from './lists/holes';
import { type Machine, NoValue, noValue, type Site } from './machine';
import { isMissing } from './sites';

/** Someone who watches calls: for shown working and for lints. */
export interface Watcher {
  begin(site: CallSite, machine: Machine): Call;
  end(site: CallSite, machine: Machine): void;
}

/** One call of a library function: gathers the arguments in the parameters' units, calls, and spreads the result. */
export class CallSite implements Site {
  private readonly silent: Call;
  /** Of lists whose items are handed over with their intervals, by slot: those of the readings as they stand. */
  private readonly intervals = new Map<number, readonly Interval[]>();

  constructor(
    readonly call: LibraryCall,
    /** Of the tree that the call stands in. */
    readonly meaning: Meaning,
    /** Slots of each argument's values, in the order of the call's arguments. */
    readonly slots: readonly (readonly number[])[],
    readonly target: number,
    private readonly watcher?: Watcher,
  ) {
    const nothing = () => undefined;
    this.silent = {
      watched: false,
      shown: false,
      settings: meaning.settings,
      step: nothing,
      assume: nothing,
      choose: nothing,
      table: nothing,
      fact: nothing,
      given: (parameter) => isGiven(call, parameter),
    };
  }

  run(machine: Machine): void {
    this.perform(machine, this.watcher);
  }

  runWithDoubt(machine: Machine): void {
    const { call, target } = this;
    this.noteIntervals(machine);
    const turns = propagateByDifferences(machine, {
      inputs: this.slots.flat(),
      target,
      types: slotTypes(call.result),
      run: () => this.perform(machine, undefined),
    });
    if (turns) {
      machine.uncertain.turning.set(call, this.meaning);
    }
    this.run(machine);
    this.intervals.clear();
  }

  private noteIntervals(machine: Machine): void {
    for (const [i, { spec }] of this.call.arguments.entries()) {
      const found = wantsIntervals(spec) ? intervalsOf(machine, this.slots[i][0]) : undefined;
      if (found) {
        this.intervals.set(this.slots[i][0], found);
      }
    }
  }

  private perform(machine: Machine, watcher: Watcher | undefined): void {
    // Its keys are parameters of functions of the library, never words of a sheet.
    const args: Record<string, unknown> = {};
    for (const [i, argument] of this.call.arguments.entries()) {
      const value = this.gather(machine, argument, this.slots[i]);
      if (value instanceof NoValue) {
        this.fail(machine, value);
        return;
      }
      args[argument.parameter] = value;
    }
    const call = watcher?.begin(this, machine) ?? this.silent;
    const result = this.evaluate(args, call);
    if (result instanceof Failure) {
      const at = this.call.arguments.find(({ parameter }) => parameter === result.parameter);
      this.fail(machine, new NoValue(result.code, result.message, at?.nodes[0] ?? this.call.nameNode));
    } else {
      this.spread(machine, result);
    }
    watcher?.end(this, machine);
  }

  private evaluate(args: Record<string, unknown>, call: Call): unknown {
    const { definition } = this.call;
    try {
      return definition.evaluate(args as never, call);
    } catch {
      return new Failure(
        `\`${definition.name}\` broke down on these arguments. This is a fault of the program, not of the sheet.`,
        undefined,
        'function-fault',
      );
    }
  }

  private gather(machine: Machine, argument: BoundArgument, slots: readonly number[]): unknown {
    const { spec, nodes } = argument;
    if (nodes.length === 0) {
      return 'units' in spec && typeof spec.default === 'number'
        ? { value: spec.default, unit: spec.units[0] }
        : spec.default;
    }
    if (argument.word !== undefined) {
      return argument.word;
    }
    if (!spec.repeated) {
      return this.take(machine, argument, spec, slots[0], nodes[0]);
    }
    const values: unknown[] = [];
    for (const [i, slot] of slots.entries()) {
      const value = this.take(machine, argument, spec, slot, nodes[i]);
      if (value instanceof NoValue) {
        return value;
      }
      values.push(value);
    }
    return values;
  }

  private take(machine: Machine, argument: BoundArgument, spec: ParameterType, slot: number, node: number): unknown {
    const number = machine.numbers[slot];
    const object = machine.objects[slot];
    if ('unit' in spec || 'units' in spec) {
      return number - number === 0 ? this.quantity(argument, number, node) : noValue;
    }
    if ('yesNo' in spec) {
      if (number === 0.5) {
        const message = `\`${argument.parameter}\` must be yes or no, and the readings cannot tell which.`;
        return new NoValue('cannot-tell', message, node);
      }
      return number - number === 0 ? number === 1 : noValue;
    }
    if (isMissing(object)) {
      return noValue;
    }
    if ('choice' in spec && !spec.choice.includes(object as string)) {
      const message = `\`${argument.parameter}\` is one of ${spec.choice.join(', ')}; this is ${String(object)}.`;
      return new NoValue('unknown-choice', message, node);
    }
    if ('listOf' in spec) {
      const { unit } = argument;
      if (Array.from(object as ArrayLike<unknown>).some((item) => Number.isNaN(item) || isMissing(item))) {
        const written = textOf(this.meaning.tree, node).replace(/\s+/g, ' ');
        return missingItem(`\`${argument.parameter}: ${written}\``, machine.holes.get(object as object), node);
      }
      const inUnit = (item: unknown) => (unit ? fromBase(item as number, unit) : item);
      const items = Array.from(object as ArrayLike<unknown>, inUnit);
      if (wantsIntervals(spec)) {
        const known = this.intervals.get(slot);
        return items.map((value, at) => ({
          value,
          stated: known ? inUnit(known[at].stated) : value,
          low: known ? inUnit(known[at].low) : value,
          high: known ? inUnit(known[at].high) : value,
        }));
      }
      return 'units' in spec.listOf ? items.map((value) => ({ value, unit: wordOf(spec.listOf, unit) })) : items;
    }
    return object;
  }

  private quantity(argument: BoundArgument, base: number, node: number): unknown {
    const { spec, unit } = argument;
    if (!unit) {
      return base;
    }
    const value = fromBase(base, unit);
    const problem = outOfBounds(argument, value, unit);
    if (problem) {
      return new NoValue('out-of-bounds', problem, node);
    }
    return 'units' in spec ? { value, unit: wordOf(spec, unit) } : value;
  }

  /** Writes the result into its slots. */
  private spread(machine: Machine, result: unknown): void {
    const { result: type, definition } = this.call;
    const declared = definition.result;
    if (type.kind !== 'record' || !('record' in declared)) {
      this.write(machine, type, declared as ResultType, this.target, result);
      return;
    }
    let slot = this.target;
    for (const [name, field] of type.fields) {
      this.write(machine, field, declared.record[name], slot, (result as Record<string, unknown>)[name]);
      slot += sizeOf(field);
    }
    if (machine.objects[this.target] instanceof NoValue) {
      const message = `\`${definition.name}\` gave no usable result. This is a fault of the program, not of the sheet.`;
      this.fail(machine, new NoValue('function-fault', message, this.call.nameNode));
    }
  }

  private write(machine: Machine, type: Type, declared: ResultType, slot: number, result: unknown): void {
    if (result instanceof Absent) {
      machine.numbers[slot] = Number.NaN;
      machine.objects[slot] = result;
      return;
    }
    machine.objects[slot] = undefined;
    if (type.kind === 'quantity') {
      // A function with `infer` works in the coherent SI unit already.
      machine.numbers[slot] = this.call.definition.infer ? (result as number) : inBase(result as number, declared);
      if (!Number.isFinite(machine.numbers[slot])) {
        machine.objects[slot] = new NoValue(
          'no-result',
          `\`${this.call.definition.name}\` has no finite result for these values.`,
          this.call.nameNode,
        );
      }
    } else if (type.kind === 'boolean') {
      machine.numbers[slot] = result === true ? 1 : result === false ? 0 : Number.NaN;
    } else if (type.kind === 'list' && type.element.kind === 'quantity') {
      const item = 'listOf' in declared ? declared.listOf : declared;
      machine.objects[slot] = Float64Array.from(result as readonly number[], (value) => inBase(value, item));
    } else {
      machine.objects[slot] = result === undefined ? noValue : result;
    }
  }

  private fail(machine: Machine, because: NoValue): void {
    for (let slot = this.target; slot < this.target + sizeOf(this.call.result); slot++) {
      machine.numbers[slot] = Number.NaN;
      machine.objects[slot] = because;
    }
  }
}

const wantsIntervals = (spec: ParameterType): boolean =>
  'listOf' in spec && 'unit' in spec.listOf && spec.listOf.interval === true;

/** The unit in which a value is handed over, as its parameter names it. */
const wordOf = (spec: ParameterType, unit: Unit | undefined): string | undefined =>
  'units' in spec ? spec.units.find((text) => ownUnit(text) === unit) : undefined;

/** The function's number is in its declared unit, whichever unit the result is shown in. */
const inBase = (value: number, declared: ResultType): number =>
  'unit' in declared ? toBase(value, ownUnit(declared.unit)) : value;

export const isGiven = (call: LibraryCall, parameter: string): boolean =>
  call.arguments.some((argument) => argument.parameter === parameter && argument.nodes.length > 0);

function outOfBounds({ parameter, spec }: BoundArgument, value: number, unit: Unit): string | undefined {
  const symbol = unit.symbol === '' ? '' : ` ${unit.symbol}`;
  const must = (words: string, bound: number) =>
    `\`${parameter}\` must be ${words} ${bound}${symbol}: ${spec.meaning}.`;
  if (spec.above !== undefined && !(value > spec.above)) {
    return must('above', spec.above);
  }
  if (spec.atLeast !== undefined && value < spec.atLeast) {
    return must('at least', spec.atLeast);
  }
  if (spec.atMost === undefined || value <= spec.atMost) {
    return undefined;
  }
  // A share that is written without its sign comes out a hundred times too large.
  const share = unit.type.dimension === dimensionless ? toBase(value, unit) : Number.POSITIVE_INFINITY;
  const meant = share <= 100 ? ` Write \`${share} %\` if that was meant.` : '';
  return `${must('at most', spec.atMost)}${meant}`;
}
