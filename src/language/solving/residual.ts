import type { Machine } from '../evaluation/machine';

/** Instructions that work out the two sides of an equation from the slot of its unknown. */
export interface SidesCode {
  readonly unknown: number;
  readonly left: number;
  readonly right: number;
  readonly start: number;
  readonly end: number;
}

/** Left side minus right side where the unknown has this value. */
export function residual(machine: Machine, { unknown, left, right, start, end }: SidesCode, value: number): number {
  machine.numbers[unknown] = value;
  machine.run(start, end);
  return machine.numbers[left] - machine.numbers[right];
}

/** Equal but for rounding. */
const rounding = 1e-12;
/** How far beside a value the equation is looked at, and how small it must be at the value against there. */
const beside = 1e-3;
const smallness = 1e-5;

/** True when the sides are equal at the value: exactly so, or far nearer to it than a little beside it. */
export function satisfies(machine: Machine, code: SidesCode, value: number): boolean {
  const at = Math.abs(residual(machine, code, value));
  const { numbers } = machine;
  if (at <= rounding * Math.max(Math.abs(numbers[code.left]), Math.abs(numbers[code.right]))) {
    return true;
  }
  const distance = value === 0 ? beside : beside * Math.abs(value);
  const near = [value - distance, value + distance]
    .map((x) => Math.abs(residual(machine, code, x)))
    .filter(Number.isFinite);
  return Number.isFinite(at) && near.length > 0 && at <= smallness * Math.max(...near);
}
