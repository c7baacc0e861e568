import { Failure } from '../../language';

/** Counts (phases, sets, conductors) come as plain numbers; a fraction of one is refused, not rounded. */
export function notWhole(value: number, parameter: string, counted: string): Failure | undefined {
  return Number.isInteger(value)
    ? undefined
    : new Failure(`${value} is not a number of ${counted}: write a whole number.`, parameter, 'not-a-count');
}

export function notPhases(value: number): Failure | undefined {
  return value === 1 || value === 3
    ? undefined
    : new Failure(
        `${value} phases are not possible here: write 1 for a two-wire or single-phase circuit, 3 for three-phase.`,
        'phases',
        'not-a-count',
      );
}
