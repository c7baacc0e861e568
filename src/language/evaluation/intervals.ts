import type { Interval } from '../library';
import { uncertaintyOf } from './coverage';
import type { Machine } from './machine';

/** The 95 % interval of each item of the list in a slot, in the coherent SI unit; undefined where all are certain. */
export function intervalsOf(machine: Machine, slot: number): readonly Interval[] | undefined {
  const gradients = machine.uncertain.items(slot);
  const list = machine.objects[slot];
  if (!gradients || !(list instanceof Float64Array)) {
    return undefined;
  }
  return Array.from(list, (value, i) => {
    const gradient = gradients[i];
    const { low, high } = gradient ? uncertaintyOf(value, gradient) : { low: value, high: value };
    return { value, stated: value, low, high };
  });
}
