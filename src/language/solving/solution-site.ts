import { Gradient } from '../evaluation/gradient';
import { combine } from '../evaluation/gradient-sum';
import type { Machine, NoValue, Site } from '../evaluation/machine';
import { nearness } from '../evaluation/operations';
import { runWithDoubt } from '../evaluation/propagation';
import { Source } from '../evaluation/source';
import type { Outcomes } from './outcomes';
import { residual, type SidesCode, satisfies } from './residual';
import { search } from './search';

/** Slots of the two ends between which the unknown lies. */
export interface BoundSlots {
  readonly low: number;
  readonly high: number;
}

interface Given {
  readonly code: SidesCode;
  readonly bounds?: BoundSlots;
  readonly target: number;
  /** What is said where there is no value. */
  readonly outcomes: Outcomes;
}

/** Takes the one formula that satisfies the equation, between the bounds if there are any. */
export class FormulaSite implements Site {
  constructor(
    private readonly given: Given,
    /** Slots of what each formula gives. */
    private readonly formulas: readonly number[],
  ) {}

  run(machine: Machine): void {
    this.choose(machine);
  }

  runWithDoubt(machine: Machine): void {
    const { code, target, outcomes } = this.given;
    const { uncertain } = machine;
    const chosen = this.choose(machine);
    const gradient = chosen === undefined ? undefined : uncertain.gradient(chosen);
    for (const slot of [target, code.unknown]) {
      uncertain.clear(slot, 1);
      uncertain.setGradient(slot, gradient);
    }
    if (gradient && !isFinite(gradient)) {
      uncertain.clear(target, 1);
      write(machine, target, outcomes.touching());
    }
  }

  /** Writes the value, and returns the slot it comes from. */
  private choose(machine: Machine): number | undefined {
    const { code, bounds, outcomes } = this.given;
    const { numbers } = machine;
    const [low, high] = bounds ? [numbers[bounds.low], numbers[bounds.high]] : [-Infinity, Infinity];
    if (!(low < high)) {
      return this.put(machine, outcomes.emptyBounds());
    }
    const finite = this.formulas.filter((slot) => Number.isFinite(numbers[slot]));
    const valid = distinct(finite, numbers).filter((slot) => satisfies(machine, code, numbers[slot]));
    const inside = valid.filter((slot) => isWithin(numbers[slot], low, high));
    if (inside.length === 1 || (inside.length === 2 && isOpposite(inside, numbers) && !bounds)) {
      const slot = inside.find((one) => numbers[one] >= 0) ?? inside[0];
      return this.put(machine, numbers[slot], slot);
    }
    const values = (slots: readonly number[]) => slots.map((slot) => numbers[slot]);
    return this.put(
      machine,
      inside.length > 1
        ? outcomes.several(values(inside))
        : valid.length > 0
          ? outcomes.outside(values(valid), low, high)
          : outcomes.none(values(finite)),
    );
  }

  private put(machine: Machine, value: number | NoValue, slot?: number): number | undefined {
    const { code, target } = this.given;
    write(machine, target, value);
    write(machine, code.unknown, value);
    return slot;
  }
}

/** Searches for the value of the unknown at which both sides are equal. */
export class SearchSite implements Site {
  /** The unknown itself, while the slope by it is taken. */
  private readonly own = new Source('', 'standard');

  constructor(
    private readonly given: Given & { readonly bounds: BoundSlots },
    /** Slot of what a search for the same came to, so that there is none again; -1 for none. */
    private readonly found: number,
  ) {}

  run(machine: Machine): void {
    const { code, target } = this.given;
    const value = this.found < 0 ? this.search(machine) : machine.numbers[this.found];
    write(machine, target, value);
    write(machine, code.unknown, value);
  }

  private search(machine: Machine): number | NoValue {
    const { code, bounds, outcomes } = this.given;
    const [low, high] = [machine.numbers[bounds.low], machine.numbers[bounds.high]];
    if (!Number.isFinite(high - low)) {
      return Number.NaN; // A bound has no value, which is reported there.
    }
    if (!(low < high)) {
      return outcomes.emptyBounds();
    }
    const ends = [low, high].map((x) => {
      residual(machine, code, x);
      return { left: machine.numbers[code.left], right: machine.numbers[code.right] };
    });
    const found = search((x) => residual(machine, code, x), low, high);
    return found.roots.length === 1 ? found.roots[0] : outcomes.ofSearch(found, ends);
  }

  /**
   * Implicit differentiation: where both sides stay equal, the unknown moves by minus the slope of their difference by
   * each source over its slope by the unknown itself.
   */
  runWithDoubt(machine: Machine): void {
    const { code, target, outcomes } = this.given;
    const { uncertain } = machine;
    this.run(machine);
    const value = machine.numbers[target];
    uncertain.clear(target, 1);
    uncertain.clear(code.unknown, 1);
    if (!Number.isFinite(value)) {
      return;
    }
    const scale = slopeStep * (Math.abs(value) || 1);
    uncertain.setGradient(code.unknown, Gradient.of(this.own, scale));
    const turning = new Map(uncertain.turning);
    const difference = differenceOf(machine, code);
    const slope = componentOf(difference, this.own) / scale;
    const others = difference?.without(this.own);
    const gradient = combine(others, -1 / slope, undefined, 0);
    if (others && !isFinite(gradient)) {
      write(machine, target, outcomes.touching());
      return;
    }
    // Once more with the doubt that the unknown really has, for what turns within it.
    uncertain.turning.clear();
    for (const [call, meaning] of turning) {
      uncertain.turning.set(call, meaning);
    }
    uncertain.setGradient(code.unknown, gradient);
    differenceOf(machine, code);
    uncertain.setGradient(target, gradient);
  }
}

const componentOf = (gradient: Gradient | undefined, wanted: Source): number =>
  [...(gradient ?? [])].find(([source]) => source === wanted)?.[1] ?? 0;

const isFinite = (gradient: Gradient | undefined): boolean => gradient?.components.every(Number.isFinite) ?? false;

/** The unknown is moved by this part of itself where a slope is taken by differences. */
const slopeStep = 1e-2;

function differenceOf(machine: Machine, { left, right, start, end }: SidesCode): Gradient | undefined {
  runWithDoubt(machine, start, end);
  return combine(machine.uncertain.gradient(left), 1, machine.uncertain.gradient(right), -1);
}

function write(machine: Machine, slot: number, value: number | NoValue): void {
  machine.numbers[slot] = typeof value === 'number' ? value : Number.NaN;
  machine.objects[slot] = typeof value === 'number' ? undefined : value;
}

export const isWithin = (value: number, low: number, high: number): boolean => {
  const margin = nearness * Math.abs(value);
  return value >= low - margin && value <= high + margin;
};

/** Formulas often come to the same number; only the first of them counts. */
const distinct = (slots: readonly number[], numbers: Float64Array): number[] =>
  slots.filter((slot, i) => slots.findIndex((other) => isSame(numbers[other], numbers[slot])) === i);

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

const isOpposite = ([a, b]: readonly number[], numbers: Float64Array): boolean => isSame(numbers[a], -numbers[b]);
