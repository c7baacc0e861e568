import type { Type } from '../../checking/type';
import { Columns, isArithmetic } from '../columns';
import type { Gradient } from '../gradient';
import { type Machine, NoValue, noValue, type Site } from '../machine';
import { runWithDoubt } from '../propagation';
import { isMissing } from '../sites';
import type { Doubt } from '../value';
import type { Hole, Holes } from './holes';

/** A list that goes in, and the slot where the code for one item finds that item. */
export interface ItemInput {
  readonly list: number;
  readonly item: number;
}

/** Instructions for one item: where they lie, and where their result is. */
export interface ItemCode {
  readonly start: number;
  readonly end: number;
  readonly result: number;
}

/** Numbers that are run item by item or column by column, and what else a list is made from. */
export interface MapPlan {
  readonly inputs: readonly ItemInput[];
  readonly code: ItemCode;
  /** Type of the result for one item. */
  readonly element: Type;
  readonly target: number;
  /** Node of the expression, for messages. */
  readonly node: number;
  /** How many items there are, where no list goes in. */
  readonly length?: number;
  /** Names the place at an index where nothing comes out, and says why. */
  hole(machine: Machine, index: number): Hole;
}

/** The items of a list: numbers, or objects. */
type Column = Float64Array | unknown[];

const isNumbers = (list: unknown): boolean => list instanceof Float64Array;

/** Items that are worked on together: enough to make light of each instruction, few enough to stay in the cache. */
const itemsAtOnce = 1024;

/** Runs code for each item of lists of one length: an operator over lists, a computed column. */
export class MapSite implements Site {
  constructor(readonly plan: MapPlan) {}

  run(machine: Machine): void {
    const { inputs, code } = this.plan;
    const lists = inputs.map(({ list }) => machine.objects[list]);
    if (lists.length > 0 && lists.every(isNumbers) && isArithmetic(machine, code.start, code.end)) {
      this.fill(machine, (columns, result) =>
        this.byColumns(machine, columns as Float64Array[], result as Float64Array),
      );
    } else {
      this.fill(machine, (columns, result) =>
        this.byItems(machine, columns, result, () => machine.run(code.start, code.end)),
      );
    }
  }

  runWithDoubt(machine: Machine): void {
    const { inputs, code, target } = this.plan;
    const { uncertain } = machine;
    const gradients: (Gradient | undefined)[] = [];
    const doubts: (Doubt | undefined)[] = [];
    const of = inputs.map(({ list }) => ({ gradients: uncertain.items(list), doubts: uncertain.itemDoubts(list) }));
    const mark = uncertain.mark();
    const runOne = (index: number) => {
      for (const [i, { item }] of inputs.entries()) {
        uncertain.clear(item, 1);
        uncertain.setGradient(item, of[i].gradients?.[index]);
        uncertain.setDoubt(item, of[i].doubts?.[index]);
      }
      runWithDoubt(machine, code.start, code.end);
      gradients.push(uncertain.gradient(code.result));
      doubts.push(uncertain.doubt(code.result));
      uncertain.rewind(mark);
    };
    this.fill(machine, (columns, result) => this.byItems(machine, columns, result, runOne));
    for (const { item } of inputs) {
      uncertain.clear(item, 1);
    }
    uncertain.clear(code.result, 1);
    uncertain.clear(target, 1);
    uncertain.setItems(target, gradients);
    uncertain.setItemDoubts(target, doubts);
  }

  /** Makes the list, which `work` fills from those that go in. */
  private fill(machine: Machine, work: (columns: readonly Column[], result: Column) => void): void {
    const { inputs, element, target, node } = this.plan;
    const lists = inputs.map(({ list }) => machine.objects[list]);
    const missing = lists.find(isMissing);
    if (missing) {
      machine.objects[target] = missing instanceof NoValue ? missing : noValue;
      return;
    }
    const columns = lists as Column[];
    const length = this.plan.length ?? columns[0].length;
    if (columns.some((column) => column.length !== length)) {
      machine.objects[target] = new NoValue('unlike-lengths', unlikeLengths(columns), node);
      return;
    }
    const isNumber = element.kind === 'quantity' || element.kind === 'boolean';
    const result: Column = isNumber ? new Float64Array(length) : new Array(length);
    const holes = new Map<number, Hole>();
    work(columns, result);
    for (let index = 0; index < length; index++) {
      const value = result[index];
      if (isNumber ? !Number.isFinite(value) : value === undefined || isMissing(value)) {
        holes.set(index, this.holeBefore(machine, columns, index) ?? this.plan.hole(machine, index));
        result[index] = isNumber ? Number.NaN : noValue;
      }
    }
    machine.objects[target] = result;
    if (holes.size > 0) {
      machine.holes.set(result, holes);
    }
  }

  /** An instruction at a time, done for many items in a row. */
  private byColumns(machine: Machine, lists: readonly Float64Array[], result: Float64Array): void {
    const { inputs, code } = this.plan;
    const columns = new Columns(machine, Math.min(itemsAtOnce, result.length));
    for (let from = 0; from < result.length; from += itemsAtOnce) {
      const count = Math.min(itemsAtOnce, result.length - from);
      for (const [i, { item }] of inputs.entries()) {
        columns.column(item).set(lists[i].subarray(from, from + count));
      }
      columns.run(code.start, code.end, count);
      result.set(columns.column(code.result).subarray(0, count), from);
    }
  }

  /** All instructions for one item, then for the next. */
  private byItems(machine: Machine, columns: readonly Column[], result: Column, runOne: (index: number) => void): void {
    const { inputs, code } = this.plan;
    const isNumber = result instanceof Float64Array;
    const outer = machine.row;
    for (let index = 0; index < result.length; index++) {
      machine.row = index;
      for (let i = 0; i < inputs.length; i++) {
        const column = columns[i];
        const { item } = inputs[i];
        if (column instanceof Float64Array) {
          machine.numbers[item] = column[index];
        } else {
          machine.objects[item] = column[index];
        }
      }
      runOne(index);
      result[index] = isNumber ? machine.numbers[code.result] : machine.objects[code.result];
    }
    machine.row = outer;
  }

  /** What is missing already in what goes in. */
  private holeBefore(machine: Machine, columns: readonly Column[], index: number): Hole | undefined {
    for (const column of columns) {
      const hole = machine.holes.get(column)?.get(index);
      if (hole) {
        return hole;
      }
    }
    return undefined;
  }
}

const unlikeLengths = (lists: readonly ArrayLike<unknown>[]): string =>
  `Lists are worked on item by item, and these have ${[...new Set(lists.map((list) => list.length))].join(' and ')} items. Use columns of one schedule, or lists of one length.`;

/** The holes of a list, moved to where its items went. */
export function movedHoles(holes: Holes | undefined, kept: readonly number[]): Holes | undefined {
  const moved = new Map<number, Hole>();
  for (const [to, from] of holes ? kept.entries() : []) {
    const hole = holes!.get(from);
    if (hole) {
      moved.set(to, hole);
    }
  }
  return moved.size > 0 ? moved : undefined;
}
