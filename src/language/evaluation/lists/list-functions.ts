import { plainNumberType } from '../../checking/types';
import type { Operation as MathematicsOperation } from '../../mathematics/operation';
import { propagateByDifferences } from '../differences';
import { GradientSum } from '../gradient-sum';
import { type Machine, noValue, type Site } from '../machine';
import { isMissing } from '../sites';

type Many = Extract<MathematicsOperation, { kind: 'many' }>;

/** A function over any number of values. */
export class ManySite implements Site {
  constructor(
    private readonly operation: Many,
    /** Slots of the values, or the one slot of a list. */
    private readonly slots: readonly number[],
    private readonly isList: boolean,
    private readonly target: number,
  ) {}

  run(machine: Machine): void {
    const values = this.values(machine);
    machine.numbers[this.target] = values ? this.operation.compute(values) : Number.NaN;
  }

  runWithDoubt(machine: Machine): void {
    const { uncertain } = machine;
    const { slopes, isAnswer } = this.operation;
    const values = slopes || isAnswer ? this.values(machine) : undefined;
    if (!values) {
      const { slots: inputs, target } = this;
      propagateByDifferences(machine, { inputs, target, types: [plainNumberType()], run: () => this.run(machine) });
      this.run(machine);
      return;
    }
    // In one pass, because a long list of readings has as many sources as items.
    const sum = new GradientSum();
    const weights = slopes?.(values);
    const gradients = this.isList ? uncertain.items(this.slots[0]) : this.slots.map((slot) => uncertain.gradient(slot));
    for (let i = 0; weights && gradients && i < values.length; i++) {
      const gradient = gradients[i];
      if (gradient) {
        sum.add(gradient, weights[i]);
      }
    }
    const doubts = this.isList ? uncertain.itemDoubts(this.slots[0]) : this.slots.map((slot) => uncertain.doubt(slot));
    const doubt = doubts?.find((_, i) => values[i] === 0.5);
    this.run(machine);
    uncertain.clear(this.target, 1);
    uncertain.setGradient(this.target, sum.take());
    uncertain.setDoubt(this.target, isAnswer && machine.numbers[this.target] === 0.5 ? doubt : undefined);
  }

  private values(machine: Machine): ArrayLike<number> | undefined {
    if (this.isList) {
      const list = machine.objects[this.slots[0]];
      return isMissing(list) ? undefined : (list as ArrayLike<number>);
    }
    const values = this.slots.map((slot) => machine.numbers[slot]);
    // A no settles whether all are yes, even where another has no value.
    return this.operation.isAnswer || values.every(Number.isFinite) ? values : undefined;
  }
}

/**
 * `known(list)`: whether each item has a value. A place that something is wrong with is not a place left open: it has no
 * answer, so that no total passes it over.
 */
export class KnownSite implements Site {
  constructor(
    private readonly list: number,
    private readonly target: number,
  ) {}

  run(machine: Machine): void {
    const list = machine.objects[this.list];
    if (isMissing(list)) {
      machine.objects[this.target] = noValue;
      return;
    }
    const faults = new Map([...(machine.holes.get(list as object) ?? [])].filter(([, { isEmpty }]) => !isEmpty));
    const answers = Float64Array.from(list as ArrayLike<unknown>, (item, index) =>
      faults.has(index) ? Number.NaN : (typeof item === 'number' ? Number.isFinite(item) : !isMissing(item)) ? 1 : 0,
    );
    machine.objects[this.target] = answers;
    if (faults.size > 0) {
      machine.holes.set(answers, faults);
    }
  }
}
