import type { Type } from '../checking/type';
import { uncertaintyOf } from './coverage';
import { type Gradient, standardOf } from './gradient';
import { combine } from './gradient-sum';
import type { Machine } from './machine';
import { isMissing } from './sites';

/** One number that goes in, with its doubt. */
interface Input {
  readonly gradient: Gradient;
  readonly value: number;
  set(value: number): void;
}

/** What lies in a slot, to compare with what lies there later. */
interface Output {
  readonly number: number;
  readonly object: unknown;
}

/** What is run again and again with other numbers going in. */
interface Probe {
  readonly inputs: readonly number[];
  readonly target: number;
  /** What comes out, slot by slot. */
  readonly types: readonly Type[];
  run(): void;
}

/** Step in standard uncertainties: wide enough for rounding, narrow enough for curvature. */
const step = 1e-3;

/**
 * Gradients of results that no slope is known for, by central differences (JCGM 100, 5.1.3). True when a result steps
 * to another one within the 95 % interval of what goes in: a size, a rating. Such a step is no slope and adds nothing.
 */
export function propagateByDifferences(machine: Machine, probe: Probe): boolean {
  const { uncertain } = machine;
  const inputs = probe.inputs.flatMap((slot) => inputsOf(machine, slot));
  const gradients: (Gradient | undefined)[] = probe.types.map(() => undefined);
  const items = new Map<number, (Gradient | undefined)[]>();
  let turns = false;
  if (inputs.length > 0) {
    const kept = probe.inputs.map((slot) => ({ slot, number: machine.numbers[slot], object: machine.objects[slot] }));
    // What comes out may lie where something came in.
    const restore = () => {
      for (const { slot, number, object } of kept) {
        machine.numbers[slot] = number;
        machine.objects[slot] = object;
      }
    };
    const nominal = outputs(machine, probe);
    for (const input of inputs) {
      const at = (value: number) => {
        restore();
        input.set(value);
        const result = outputs(machine, probe);
        input.set(input.value);
        return result;
      };
      const distance = step * standardOf(input.gradient);
      const above = input.value + distance;
      const below = input.value - distance;
      const near = [at(below), at(above)];
      const { low, high } = uncertaintyOf(input.value, input.gradient);
      const far = [at(low), at(high)];
      for (const [i, { number, object }] of nominal.entries()) {
        const type = probe.types[i];
        if (type.kind !== 'quantity' && type.kind !== 'boolean') {
          turns ||= far.some((end) => !isSame(type, end[i].object, object));
          const lists = [near[0][i].object, object, near[1][i].object];
          if (
            lists.every((list) => list instanceof Float64Array) &&
            new Set(lists.map((list) => list.length)).size === 1
          ) {
            const before = items.get(i) ?? [];
            const slopes = Array.from(lists[1], (middle, k) =>
              slopeOf([lists[0][k], middle, lists[2][k]], [below, input.value, above]),
            );
            items.set(
              i,
              slopes.map((slope, k) => (slope === 0 ? before[k] : combine(before[k], 1, input.gradient, slope))),
            );
          }
          continue;
        }
        if (!Number.isFinite(number)) {
          turns ||= far.some((end) => Number.isFinite(end[i].number));
          continue;
        }
        const beside = near.map((side, k) =>
          isJump(side[i].number - number, far[k][i].number - number, number) ? Number.NaN : side[i].number,
        );
        turns ||= beside.some((value, k) => Number.isNaN(value) && Number.isFinite(near[k][i].number));
        const slope = slopeOf([beside[0], number, beside[1]], [below, input.value, above]);
        turns ||= far.some((end) => !Number.isFinite(end[i].number) || (slope === 0 && end[i].number !== number));
        gradients[i] = combine(gradients[i], 1, input.gradient, slope);
      }
    }
    restore();
  }
  for (const [i, gradient] of gradients.entries()) {
    uncertain.clear(probe.target + i, 1);
    uncertain.setGradient(probe.target + i, gradient);
    const ofItems = items.get(i);
    if (ofItems) {
      uncertain.setItems(probe.target + i, ofItems);
    }
  }
  return turns;
}

/**
 * True where a result has stepped to another one right beside the value: a thousandth of the way to the end of the
 * interval makes much of the change that the whole way does. Through such a step there is no slope.
 */
const isJump = (near: number, far: number, value: number): boolean =>
  Math.abs(near) > 1e-9 * Math.abs(value) && Math.abs(near) * 10 > Math.abs(far);

/** Through both neighbours, or through the one that has a value: an argument may lie at its bound. */
function slopeOf(y: readonly [number, number, number], x: readonly [number, number, number]): number {
  const from = Number.isFinite(y[0]) ? 0 : 1;
  const to = Number.isFinite(y[2]) ? 2 : 1;
  return from === to ? 0 : (y[to] - y[from]) / (x[to] - x[from]);
}

function outputs(machine: Machine, { run, target, types }: Probe): Output[] {
  run();
  return types.map((_, i) => ({
    number: machine.numbers[target + i],
    object: machine.objects[target + i],
  }));
}

/** True when two results that are no numbers say the same. Numbers in a list vary smoothly and count as the same. */
function isSame(type: Type, a: unknown, b: unknown): boolean {
  if (isMissing(a) || isMissing(b)) {
    return isMissing(a) && isMissing(b);
  }
  switch (type.kind) {
    case 'object':
      return type.object.text(a) === type.object.text(b);
    case 'list': {
      const [x, y] = [a, b].map((list) => Array.from(list as ArrayLike<unknown>));
      const isNumbers = type.element.kind === 'quantity';
      return x.length === y.length && (isNumbers || x.every((item, i) => isSame(type.element, item, y[i])));
    }
    default:
      return a === b;
  }
}

/** The uncertain numbers in a slot: its own, or those of the list that it holds. */
function inputsOf(machine: Machine, slot: number): Input[] {
  const { numbers, objects, uncertain } = machine;
  const gradient = uncertain.gradient(slot);
  if (gradient) {
    const set = (value: number) => {
      numbers[slot] = value;
    };
    return [{ gradient, value: numbers[slot], set }];
  }
  const list = objects[slot];
  return (uncertain.items(slot) ?? []).flatMap((item, i) => {
    if (!item || !(list instanceof Float64Array)) {
      return [];
    }
    const set = (value: number) => {
      list[i] = value;
    };
    return [{ gradient: item, value: list[i], set }];
  });
}
