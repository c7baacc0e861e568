import { figure } from '../../text';
import { fromBase } from '../../units';
import type { QuantityOf } from '../checking/types';
import { NoValue } from '../evaluation/machine';
import type { Search } from './search';

/** What is said where numbers show that an unknown has no value, or more than one. */
export class Outcomes {
  constructor(
    private readonly name: string,
    /** The equation as written, short enough for a message. */
    private readonly equation: string,
    private readonly type: QuantityOf,
    /** Nodes as written: the equation, the name behind `solve` with its bounds, and both bounds. */
    private readonly nodes: { readonly equation: number; readonly unknown: number },
    private readonly bounds?: { readonly low: string; readonly high: string },
  ) {}

  /** None of the formulas has a value that satisfies the equation. */
  none(values: readonly number[]): NoValue {
    const { name, equation } = this;
    return values.length === 0
      ? new NoValue('no-solution', undefined, this.nodes.equation)
      : new NoValue(
          'no-solution',
          `No value of \`${name}\` satisfies ${equation}: turned round, it gives ${this.list(values, 'and')}, which does not satisfy it. Check its terms.`,
          this.nodes.equation,
        );
  }

  several(values: readonly number[]): NoValue {
    const { name } = this;
    const [low, high] = [...values].sort((a, b) => a - b).map((value) => this.text(value));
    const bounds = this.bounds ? 'Narrower bounds choose one' : 'Bounds choose one';
    return new NoValue(
      'several-solutions',
      `\`${name}\` may be ${this.list(values, 'or')}: each satisfies the equations. ${bounds}: write \`${name} in low .. high\` behind \`solve\`, with ${low} or ${high} alone between them.`,
      this.nodes.unknown,
    );
  }

  outside(values: readonly number[], low: number, high: number): NoValue {
    const not =
      values.length > 2 ? 'none of which lies' : values.length > 1 ? 'neither of which lies' : 'which does not lie';
    return new NoValue(
      'no-solution',
      `The equations make \`${this.name}\` ${this.list(values, 'or')}, ${not} between ${this.text(low)} and ${this.text(high)}. Widen the bounds, or check the equations.`,
      this.nodes.unknown,
    );
  }

  emptyBounds(): NoValue {
    return new NoValue(
      'empty-bounds',
      `Nothing lies ${this.between}: the lower bound comes first. Swap the two, or move them apart.`,
      this.nodes.unknown,
    );
  }

  /** Both sides meet without crossing: the least change of a reading makes two solutions of it, or none. */
  touching(): NoValue {
    return new NoValue(
      'cannot-tell',
      `The sides of ${this.equation} only touch at the value of \`${this.name}\`: within the doubt of the readings there may be two solutions or none. Give what is uncertain a value without doubt, or check the equation.`,
      this.nodes.unknown,
    );
  }

  private get between(): string {
    const { low, high } = this.bounds ?? { low: '', high: '' };
    return `between \`${low}\` and \`${high}\``;
  }

  ofSearch({ roots, jumps, values }: Search, ends: readonly { left: number; right: number }[]): NoValue {
    const { name, equation } = this;
    if (roots.length > 1) {
      return this.several(roots);
    }
    const { between } = this;
    if (values === 'none') {
      const message = `${equation} has no value anywhere ${between}: what it calls refuses every value of \`${name}\` there. Move the bounds to where it has one.`;
      return new NoValue('no-solution', message, this.nodes.unknown);
    }
    const [jump] = jumps;
    if (jump !== undefined) {
      const message = `The sides of ${equation} change places at \`${name}\` = ${this.text(jump)} without being equal there: one of them jumps. Nothing ${between} makes them equal.`;
      return new NoValue('no-solution', message, this.nodes.unknown);
    }
    const signs = ends.map(({ left, right }) => Math.sign(left - right));
    const side =
      signs[0] === signs[1] && signs[0] !== 0 && !Number.isNaN(signs[0])
        ? `: the left side is ${signs[0] > 0 ? 'greater' : 'less'} than the right at both ends`
        : '';
    const gap = values === 'some' ? ' In part of that range it has no value.' : '';
    const message = `No value of \`${name}\` ${between} satisfies ${equation}${side}.${gap} Widen the bounds, or check the equation.`;
    return new NoValue('no-solution', message, this.nodes.unknown);
  }

  ofTogether(problem: 'repeats' | 'contradicts' | 'no value'): NoValue {
    const message = {
      repeats:
        'With these values, one of the equations says what the others say already, so any number of solutions satisfies them. Put an independent equation in its place.',
      contradicts:
        'With these values, the equations contradict each other, so nothing satisfies them all. Check the signs and terms.',
      'no value': undefined,
    }[problem];
    return new NoValue(problem === 'repeats' ? 'too-few-equations' : 'no-solution', message, this.nodes.equation);
  }

  private list(values: readonly number[], word: 'and' | 'or'): string {
    const sorted = [...new Set([...values].sort((a, b) => a - b).map((value) => this.text(value)))];
    const told = sorted.length > toldValues ? [...sorted.slice(0, toldValues), 'others'] : sorted;
    return told.length < 2 ? told.join('') : `${told.slice(0, -1).join(', ')} ${word} ${told.at(-1)}`;
  }

  private text(base: number): string {
    const { unit } = this.type;
    return `${figure(fromBase(base, unit))} ${unit.symbol}`.trim();
  }
}

/** More values than this are not listed one by one. */
const toldValues = 4;
