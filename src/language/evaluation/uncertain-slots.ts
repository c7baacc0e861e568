import type { LibraryCall, Meaning } from '../checking/meaning';
import type { Gradient } from './gradient';
import type { SourceList } from './source';
import { Tape } from './tape';
import type { Doubt } from './value';

/** In place of a step: the slot's number is certain, or nothing was computed into the slot since the statement began. */
const certain = -1;
const untouched = -2;

/** Far from what an integer of the steps can hold; a tape is never as long as what is left. */
const lastBase = 2 ** 30;

interface TapeMark {
  readonly steps: number;
  readonly undo: number;
}

/**
 * What is not certain about the slots of a machine. Empty for a sheet without readings, which then pays nothing. What a
 * statement computes on its way lies on a tape until the next one begins; `keep` makes its outcome stay.
 */
export class UncertainSlots {
  private readonly gradients: (Gradient | undefined)[] = [];
  /** The sources that a slot's gradient last had; evaluated again, it mostly has the same. */
  private readonly usual: (SourceList | undefined)[] = [];
  private readonly lists = new Map<number, readonly (Gradient | undefined)[]>();
  private readonly doubts = new Map<number, Doubt>();
  private readonly listDoubts = new Map<number, readonly (Doubt | undefined)[]>();
  private readonly tape = new Tape();
  /**
   * By slot, `base` + 1 + the step that stands for its number, so that one that is certain has `base` itself. What is
   * smaller was written for an earlier statement: the slot is untouched, and `gradients` holds.
   */
  private steps = new Int32Array(256).fill(-1);
  private base = 0;
  /** Slots touched since a mark, each with what `steps` had for it before; kept from a mark to the end of the statement. */
  private readonly undo: number[] = [];
  private isMarked = false;
  /** False while no slot has anything in `lists`, `doubts` and `listDoubts`: mostly there are numbers and nothing else. */
  private holdsMore = false;
  /** Calls whose result is another one within the doubt of what goes in, with the meaning they stand in, since this was emptied. */
  readonly turning = new Map<LibraryCall, Meaning>();

  get isEmpty(): boolean {
    const { gradients, lists, doubts, listDoubts, tape } = this;
    return gradients.length + lists.size + doubts.size + listDoubts.size + tape.length === 0;
  }

  /** Makes room for slots up to `size`. */
  reserve(size: number): void {
    if (size > this.steps.length) {
      const steps = new Int32Array(size * 2).fill(-1);
      steps.set(this.steps);
      this.steps = steps;
    }
  }

  /** Before a statement runs: what was computed on the way to the last one's outcome is forgotten. */
  begin(): void {
    this.holdsMore = this.lists.size + this.doubts.size + this.listDoubts.size > 0;
    this.base += this.tape.length + 1;
    if (this.base > lastBase) {
      this.steps.fill(-1);
      this.base = 0;
    }
    this.tape.truncate(0);
    if (this.isMarked) {
      this.isMarked = false;
      this.undo.length = 0;
    }
    if (this.turning.size > 0) {
      this.turning.clear();
    }
  }

  /** What a later `rewind` returns to. */
  mark(): TapeMark {
    this.isMarked = true;
    return { steps: this.tape.length, undo: this.undo.length };
  }

  /** Forgets what was computed since: a long list is worked on item by item, and each item needs the tape but once. */
  rewind(mark: TapeMark): void {
    const { undo, steps } = this;
    for (let i = undo.length - 2; i >= mark.undo; i -= 2) {
      steps[undo[i]] = undo[i + 1];
    }
    undo.length = mark.undo;
    this.tape.truncate(mark.steps);
  }

  /** Keeps what `size` slots from the first one on came to. */
  keep(first: number, size: number): void {
    for (let slot = first; slot < first + size; slot++) {
      const step = this.step(slot);
      if (step !== untouched) {
        this.store(slot, step === certain ? undefined : this.tape.gradient(step, this.usual[slot]));
      }
    }
  }

  /** Forgets what was kept of `size` slots from the first one on; what the last statement left on the tape, too. */
  drop(first: number, size: number): void {
    this.begin();
    for (let slot = first; slot < first + size; slot++) {
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
    this.put(this.listDoubts, slot, doubts.some((doubt) => doubt) ? doubts : undefined);
  }

  setGradient(slot: number, gradient: Gradient | undefined): void {
    this.touch(slot, gradient ? this.tape.leaf(gradient) : certain);
  }

  setItems(slot: number, items: readonly (Gradient | undefined)[]): void {
    this.put(this.lists, slot, items.some((item) => item) ? items : undefined);
  }

  setDoubt(slot: number, doubt: Doubt | undefined): void {
    this.put(this.doubts, slot, doubt);
  }

  copy(target: number, from: number): void {
    this.touch(target, this.stepOf(from));
    this.put(this.lists, target, this.lists.get(from));
    this.put(this.doubts, target, this.doubts.get(from));
    this.put(this.listDoubts, target, this.listDoubts.get(from));
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
      this.usual.length = first;
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
    const step = this.steps[slot] - this.base;
    return step < 0 ? untouched : step - 1;
  }

  private touch(slot: number, step: number): void {
    if (this.isMarked) {
      this.undo.push(slot, this.steps[slot]);
    }
    this.steps[slot] = this.base + 1 + step;
  }

  private store(slot: number, gradient: Gradient | undefined): void {
    if (gradient) {
      while (this.gradients.length <= slot) {
        this.gradients.push(undefined);
        this.usual.push(undefined);
      }
      this.gradients[slot] = gradient;
      this.usual[slot] = gradient.list;
    } else if (slot < this.gradients.length) {
      this.gradients[slot] = undefined;
    }
  }

  /** A number's slot holds no list, and no answer that is in doubt. */
  private settle(slot: number): void {
    if (this.holdsMore) {
      this.lists.delete(slot);
      this.doubts.delete(slot);
      this.listDoubts.delete(slot);
    }
  }

  private put<T>(map: Map<number, T>, slot: number, value: T | undefined): void {
    if (value !== undefined) {
      map.set(slot, value);
      this.holdsMore = true;
    } else if (this.holdsMore) {
      map.delete(slot);
    }
  }
}
