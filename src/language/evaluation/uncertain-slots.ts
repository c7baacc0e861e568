import type { LibraryCall, Meaning } from '../checking/meaning';
import type { Gradient } from './gradient';
import type { Doubt } from './value';

/** What is not certain about the slots of a machine. Empty for a sheet without readings, which then pays nothing. */
export class UncertainSlots {
  private readonly gradients = new Map<number, Gradient>();
  private readonly lists = new Map<number, readonly (Gradient | undefined)[]>();
  private readonly doubts = new Map<number, Doubt>();
  private readonly listDoubts = new Map<number, readonly (Doubt | undefined)[]>();
  /** Calls whose result is another one within the doubt of what goes in, with the meaning they stand in, since this was emptied. */
  readonly turning = new Map<LibraryCall, Meaning>();

  get isEmpty(): boolean {
    return this.gradients.size === 0 && this.lists.size === 0 && this.doubts.size === 0 && this.listDoubts.size === 0;
  }

  gradient(slot: number): Gradient | undefined {
    return this.gradients.get(slot);
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
    put(this.gradients, slot, gradient);
  }

  setItems(slot: number, items: readonly (Gradient | undefined)[]): void {
    put(this.lists, slot, items.some((item) => item) ? items : undefined);
  }

  setDoubt(slot: number, doubt: Doubt | undefined): void {
    put(this.doubts, slot, doubt);
  }

  copy(target: number, from: number): void {
    put(this.gradients, target, this.gradients.get(from));
    put(this.lists, target, this.lists.get(from));
    put(this.doubts, target, this.doubts.get(from));
    put(this.listDoubts, target, this.listDoubts.get(from));
  }

  /** Makes `size` slots from the first one on certain. */
  clear(first: number, size: number): void {
    for (let slot = first; slot < first + size; slot++) {
      this.gradients.delete(slot);
      this.lists.delete(slot);
      this.doubts.delete(slot);
      this.listDoubts.delete(slot);
    }
  }

  /** Makes all slots from the first one on certain. */
  clearFrom(first: number): void {
    for (const map of [this.gradients, this.lists, this.doubts, this.listDoubts]) {
      for (const slot of map.keys()) {
        if (slot >= first) {
          map.delete(slot);
        }
      }
    }
  }
}

function put<T>(map: Map<number, T>, slot: number, value: T | undefined): void {
  if (value === undefined) {
    map.delete(slot);
  } else {
    map.set(slot, value);
  }
}
