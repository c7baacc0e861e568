import type { LibraryCall, Meaning } from '../checking/meaning';
import type { Gradient } from './gradient';
import { Tape } from './tape';
import type { Doubt } from './value';

/** In place of a step: the slot's number is certain, or nothing was computed into the slot since the statement began. */
const certain = -1;
const untouched = -2;

interface TapeMark {
  readonly steps: number;
  readonly touched: number;
}

/**
 * What is not certain about the slots of a machine. Empty for a sheet without readings, which then pays nothing. What a
 * statement computes on its way lies on a tape until the next one begins; `keep` makes its outcome stay.
 */
export class UncertainSlots {
  private readonly gradients: (Gradient | undefined)[] = [];
  private readonly lists = new Map<number, readonly (Gradient | undefined)[]>();
  private readonly doubts = new Map<number, Doubt>();
  private readonly listDoubts = new Map<number, readonly (Doubt | undefined)[]>();
  private readonly tape = new Tape();
  /** Steps on the tape by slot; where one is untouched, `gradients` holds. */
  private steps = new Int32Array(256).fill(untouched);
  private readonly touched: number[] = [];
  private touchedCount = 0;
  /** Calls whose result is another one within the doubt of what goes in, with the meaning they stand in, since this was emptied. */
  readonly turning = new Map<LibraryCall, Meaning>();

  get isEmpty(): boolean {
    const { gradients, lists, doubts, listDoubts, touchedCount } = this;
    return gradients.length + lists.size + doubts.size + listDoubts.size + touchedCount === 0;
  }

  /** Before a statement runs: what was computed on the way to the last one's outcome is forgotten. */
  begin(): void {
    for (let i = 0; i < this.touchedCount; i++) {
      this.steps[this.touched[i]] = untouched;
    }
    this.touchedCount = 0;
    this.tape.truncate(0);
    if (this.turning.size > 0) {
      this.turning.clear();
    }
  }

  /** What a later `rewind` returns to. */
  mark(): TapeMark {
    return { steps: this.tape.length, touched: this.touchedCount };
  }

  /** Forgets what was computed since: a long list is worked on item by item, and each item needs the tape but once. */
  rewind(mark: TapeMark): void {
    for (let i = mark.touched; i < this.touchedCount; i++) {
      this.steps[this.touched[i]] = untouched;
    }
    this.touchedCount = mark.touched;
    for (let i = 0; i < mark.touched; i++) {
      if (this.steps[this.touched[i]] >= mark.steps) {
        this.steps[this.touched[i]] = certain;
      }
    }
    this.tape.truncate(mark.steps);
  }

  /** Keeps what `size` slots from the first one on came to. */
  keep(first: number, size: number): void {
    for (let slot = first; slot < first + size; slot++) {
      const step = this.step(slot);
      if (step !== untouched) {
        this.store(slot, step === certain ? undefined : this.tape.gradient(step));
      }
    }
  }

  /** Forgets what was kept of `size` slots from the first one on. */
  drop(first: number, size: number): void {
    for (let slot = first; slot < first + size; slot++) {
      if (this.step(slot) !== untouched) {
        this.steps[slot] = untouched;
      }
      this.store(slot, undefined);
      this.settle(slot);
    }
  }

  gradient(slot: number): Gradient | undefined {
    const step = this.step(slot);
    return step === untouched ? this.gradients[slot] : step === certain ? undefined : this.tape.gradient(step);
  }

  /** The step that stands for a slot's number; -1 where that is certain. */
  stepOf(slot: number): number {
    const step = this.step(slot);
    if (step !== untouched) {
      return step;
    }
    const gradient = this.gradients[slot];
    if (!gradient) {
      return certain;
    }
    const leaf = this.tape.leaf(gradient);
    this.touch(slot, leaf);
    return leaf;
  }

  /** The slot's number has these slopes by the numbers of two steps; -1 stands for one that is certain. */
  setStep(slot: number, left: number, byLeft: number, right: number, byRight: number): void {
    this.touch(slot, left < 0 && right < 0 ? certain : this.tape.step(left, byLeft, right, byRight));
    this.settle(slot);
  }

  /** Of each item of the list in a slot. */
  items(slot: number): readonly (Gradient | undefined)[] | undefined {
    return this.lists.get(slot);
  }

  doubt(slot: number): Doubt | undefined {
    return this.doubts.get(slot);
  }

  /** Of each answer of the list in a slot. */
  itemDoubts(slot: number): readonly (Doubt | undefined)[] | undefined {
    return this.listDoubts.get(slot);
  }

  setItemDoubts(slot: number, doubts: readonly (Doubt | undefined)[]): void {
    put(this.listDoubts, slot, doubts.some((doubt) => doubt) ? doubts : undefined);
  }

  setGradient(slot: number, gradient: Gradient | undefined): void {
    this.touch(slot, gradient ? this.tape.leaf(gradient) : certain);
  }

  setItems(slot: number, items: readonly (Gradient | undefined)[]): void {
    put(this.lists, slot, items.some((item) => item) ? items : undefined);
  }

  setDoubt(slot: number, doubt: Doubt | undefined): void {
    put(this.doubts, slot, doubt);
  }

  copy(target: number, from: number): void {
    this.touch(target, this.stepOf(from));
    put(this.lists, target, this.lists.get(from));
    put(this.doubts, target, this.doubts.get(from));
    put(this.listDoubts, target, this.listDoubts.get(from));
  }

  /** Makes `size` slots from the first one on certain. */
  clear(first: number, size: number): void {
    for (let slot = first; slot < first + size; slot++) {
      this.touch(slot, certain);
      this.settle(slot);
    }
  }

  /** Forgets all slots from the first one on, and with them what the statement that ran last computed on its way. */
  clearFrom(first: number): void {
    this.begin();
    if (this.gradients.length > first) {
      this.gradients.length = first;
    }
    for (const map of [this.lists, this.doubts, this.listDoubts]) {
      for (const slot of map.keys()) {
        if (slot >= first) {
          map.delete(slot);
        }
      }
    }
  }

  private step(slot: number): number {
    return slot < this.steps.length ? this.steps[slot] : untouched;
  }

  private touch(slot: number, step: number): void {
    if (slot >= this.steps.length) {
      const steps = new Int32Array(slot * 2).fill(untouched);
      steps.set(this.steps);
      this.steps = steps;
    }
    if (this.steps[slot] === untouched) {
      this.touched[this.touchedCount++] = slot;
    }
    this.steps[slot] = step;
  }

  private store(slot: number, gradient: Gradient | undefined): void {
    if (gradient) {
      while (this.gradients.length < slot) {
        this.gradients.push(undefined);
      }
      this.gradients[slot] = gradient;
    } else if (slot < this.gradients.length) {
      this.gradients[slot] = undefined;
    }
  }

  /** A number's slot holds no list, and no answer that is in doubt. */
  private settle(slot: number): void {
    if (this.lists.size > 0) {
      this.lists.delete(slot);
    }
    if (this.doubts.size > 0) {
      this.doubts.delete(slot);
    }
    if (this.listDoubts.size > 0) {
      this.listDoubts.delete(slot);
    }
  }
}

function put<T>(map: Map<number, T>, slot: number, value: T | undefined): void {
  if (value !== undefined) {
    map.set(slot, value);
  } else if (map.size > 0) {
    map.delete(slot);
  }
}
