import type { Maths, Verdict } from '../language';
import { parseUnit, toBase, type Unit } from '../units';
import { numberText, type RoundedNumber, usualDigits, valueOf } from './number';
import { shownQuantity } from './quantity';

/** Doubles hold no more. */
const mostDigits = 17;

/**
 * The sides of a check with so many digits that the rounded numbers say the same as the verdict: 3.0004 % against a
 * limit of 3 % is never shown as `3 % ≤ 3 %`, failed. Uncertain sides keep their limits.
 */
export function roundForCheck(maths: Maths, verdict: Verdict): Maths {
  if (maths.kind !== 'binary') {
    return maths;
  }
  for (let digits = usualDigits; ; digits++) {
    const left = sideOf(maths.left, digits);
    const right = sideOf(maths.right, digits);
    const known = verdict !== 'cannot tell' && left.base !== undefined && right.base !== undefined;
    if (!known || digits === mostDigits || holds(left.base, maths.operator, right.base) === (verdict === 'yes')) {
      return { ...maths, left: left.maths, right: right.maths };
    }
  }
}

interface Side {
  readonly maths: Maths;
  /** What a reader takes the rounded number for, in the coherent SI unit. */
  readonly base?: number;
}

function sideOf(maths: Maths, digits: number): Side {
  if (maths.kind === 'literal') {
    const unit = parseUnit(maths.unit ?? '');
    const value = Number(maths.number);
    return { maths, ...(!('problem' in unit) && Number.isFinite(value) && { base: toBase(value, unit) }) };
  }
  if (maths.kind !== 'value' || maths.value.kind !== 'quantity') {
    return { maths };
  }
  const shown = shownQuantity(maths.value, digits);
  switch (shown.form) {
    case 'plain':
      return { maths: literal(shown.value, shown.unit), base: toBase(valueOf(shown.value), shown.unit) };
    case 'plus-minus':
      return {
        maths: {
          kind: 'plus-minus',
          value: literal(shown.value, shown.unit),
          limits: literal(shown.limits, shown.unit),
        },
      };
    default:
      return { maths };
  }
}

const literal = (number: RoundedNumber, unit: Unit): Maths => ({
  kind: 'literal',
  number: numberText(number),
  unit: unit.symbol,
});

function holds(a: number, operator: string, b: number): boolean {
  switch (operator) {
    case '<':
      return a < b;
    case '<=':
      return a <= b;
    case '>':
      return a > b;
    case '>=':
      return a >= b;
    case '!=':
      return a !== b;
    default:
      return a === b;
  }
}
