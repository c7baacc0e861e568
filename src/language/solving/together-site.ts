import type { Gradient } from '../evaluation/gradient';
import { combine } from '../evaluation/gradient-sum';
import type { Machine, NoValue, Site } from '../evaluation/machine';
import { runWithDoubt } from '../evaluation/propagation';
import { type LinearSolution, solveLinear } from './linear-system';
import type { Outcomes } from './outcomes';
import { type BoundSlots, isWithin } from './solution-site';

interface TogetherCode {
  /** Slots of the unknowns, the one that is wanted first. */
  readonly unknowns: readonly number[];
  /** Slots of both sides of each equation. */
  readonly sides: readonly (readonly [left: number, right: number])[];
  /** Instructions that work them out. */
  readonly start: number;
  readonly end: number;
}

/** Once the slopes are taken at the size of the unknowns, this often is enough for every bit. */
const refinements = 3;

/** Solves linear equations together and takes the first of the unknowns. */
export class TogetherSite implements Site {
  constructor(
    private readonly code: TogetherCode,
    private readonly target: number,
    private readonly outcomes: Outcomes,
    private readonly bounds?: BoundSlots,
  ) {}

  run(machine: Machine): void {
    this.solve(machine);
  }

  /** Where all sides stay equal, the unknowns move by what brings the moves of the differences back to zero. */
  runWithDoubt(machine: Machine): void {
    const { code, target } = this;
    const { uncertain } = machine;
    const slopes = this.solve(machine);
    for (const slot of [target, ...code.unknowns]) {
      uncertain.clear(slot, 1);
    }
    if (!slopes) {
      return;
    }
    runWithDoubt(machine, code.start, code.end);
    const moves = code.sides.map(([left, right]) =>
      combine(uncertain.gradient(left), 1, uncertain.gradient(right), -1),
    );
    // How much the wanted unknown moves for each equation's move: a row of the inverse.
    const shares = code.sides.map((_, i) => {
      const unit = code.sides.map((_, j) => (i === j ? -1 : 0));
      const moved = solveLinear(slopes, unit);
      return typeof moved === 'string' ? 0 : moved[0];
    });
    const gradient = moves.reduce<Gradient | undefined>((sum, move, i) => combine(sum, 1, move, shares[i]), undefined);
    uncertain.setGradient(target, gradient);
  }

  /** Writes the values, and returns the slopes of the differences by the unknowns; undefined where there is no solution. */
  private solve(machine: Machine): number[][] | undefined {
    const { code, target, bounds } = this;
    let values: readonly number[] = code.unknowns.map(() => 0);
    let slopes = this.slopesAt(machine, values);
    let step: LinearSolution = 'no value';
    for (let round = 0; round <= refinements; round++) {
      if (round === 1) {
        slopes = this.slopesAt(machine, values);
      }
      step = solveLinear(
        slopes,
        this.differences(machine, values).map((difference) => -difference),
      );
      if (typeof step === 'string') {
        return this.fail(machine, this.outcomes.ofTogether(step));
      }
      const moved = step;
      values = values.map((value, i) => value + moved[i]);
    }
    const [low, high] = bounds
      ? [machine.numbers[bounds.low], machine.numbers[bounds.high]]
      : [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    if (!(low < high)) {
      return this.fail(machine, this.outcomes.emptyBounds());
    }
    if (!isWithin(values[0], low, high)) {
      return this.fail(machine, this.outcomes.outside([values[0]], low, high));
    }
    this.differences(machine, values);
    machine.numbers[target] = values[0];
    machine.objects[target] = undefined;
    return slopes;
  }

  private fail(machine: Machine, because: NoValue): undefined {
    machine.numbers[this.target] = Number.NaN;
    machine.objects[this.target] = because;
    return undefined;
  }

  private differences(machine: Machine, values: readonly number[]): number[] {
    const { unknowns, sides, start, end } = this.code;
    for (const [i, slot] of unknowns.entries()) {
      machine.numbers[slot] = values[i];
    }
    machine.run(start, end);
    return sides.map(([left, right]) => machine.numbers[left] - machine.numbers[right]);
  }

  /** Row by equation, column by unknown. The equations are linear, so the distance taken matters for rounding alone. */
  private slopesAt(machine: Machine, values: readonly number[]): number[][] {
    const before = this.differences(machine, values);
    const columns = values.map((value, i) => {
      const distance = Math.max(1, Math.abs(value));
      const moved = values.map((other, j) => (i === j ? other + distance : other));
      return this.differences(machine, moved).map((after, k) => (after - before[k]) / distance);
    });
    return before.map((_, k) => columns.map((column) => column[k]));
  }
}
