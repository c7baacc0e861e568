import type { Type } from '../../checking/type';
import type { Hole, Holes } from '../lists/holes';
import { type Machine, noValue, type Site } from '../machine';
import { isMissing } from '../sites';

/** A cell that is more than a number or a word: what its expression comes to lies in a slot. */
export interface MovingCell {
  readonly row: number;
  readonly slot: number;
}

/** What the cells of a written column hold. */
export interface WrittenValues {
  /** Cells that never change, in place; the others are filled in. */
  readonly fixed: Float64Array | unknown[];
  readonly moving: readonly MovingCell[];
  readonly holes: Holes;
  readonly element: Type;
  readonly target: number;
  /** Says that the expression of a moving cell came to nothing. */
  hole(row: number): Hole;
}

/** Makes the list of a written column. */
export class WrittenColumnSite implements Site {
  constructor(private readonly values: WrittenValues) {}

  run(machine: Machine): void {
    const { fixed, moving, holes, element, target } = this.values;
    if (moving.length === 0) {
      this.set(machine, fixed, holes);
      return;
    }
    const list: Float64Array | unknown[] = fixed.slice();
    let found: Map<number, Hole> | undefined;
    const isNumber = element.kind === 'quantity' || element.kind === 'boolean';
    for (const { row, slot } of moving) {
      const value = isNumber ? machine.numbers[slot] : machine.objects[slot];
      const isHole = isNumber ? !Number.isFinite(value) : value === undefined || isMissing(value);
      list[row] = isHole && !isNumber ? noValue : value;
      if (isHole) {
        found ??= new Map(holes);
        found.set(row, this.values.hole(row));
      }
    }
    this.set(machine, list, found ?? holes);
    machine.objects[target] = list;
  }

  runWithDoubt(machine: Machine): void {
    this.run(machine);
    const { moving, fixed, target } = this.values;
    const { uncertain } = machine;
    uncertain.clear(target, 1);
    if (moving.some(({ slot }) => uncertain.gradient(slot))) {
      const gradients = new Array(fixed.length);
      for (const { row, slot } of moving) {
        gradients[row] = uncertain.gradient(slot);
      }
      uncertain.setItems(target, gradients);
    }
    if (moving.some(({ slot }) => uncertain.doubt(slot))) {
      const doubts = new Array(fixed.length);
      for (const { row, slot } of moving) {
        doubts[row] = uncertain.doubt(slot);
      }
      uncertain.setItemDoubts(target, doubts);
    }
  }

  private set(machine: Machine, list: Float64Array | unknown[], holes: Holes): void {
    machine.objects[this.values.target] = list;
    if (holes.size > 0) {
      machine.holes.set(list, holes);
    }
  }
}
