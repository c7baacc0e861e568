import { defineFormula, Failure } from '../../../language';
import type { TableReference } from '../../../text';
import { figure } from '../../number-text';
import { reaches } from '../../rules/last-bits';
import { smallestDeviceFor } from '../../rules/next-standard-size';
import { tablesOf } from '../../settings';
import type { KindOfCircuit } from './kind';

/** Arc welders without a motor generator: multiplier of the rated primary current up to a duty cycle in percent. */
const multipliers: readonly (readonly [duty: number, multiplier: number])[] = [
  [20, 0.45],
  [30, 0.55],
  [40, 0.63],
  [50, 0.71],
  [60, 0.78],
  [70, 0.84],
  [80, 0.89],
  [90, 0.95],
  [100, 1],
];

const multiplierSource = (edition: string): TableReference => ({
  standard: 'NEC (NFPA 70)',
  edition: edition.replace('NEC ', ''),
  table: 'Table 630.11(A)',
  basis: 'memory',
  provenance: 'recalled; the rows for 20 % and 50 % agree with worked answers in trade threads',
});

const weldingCurrent = defineFormula({
  symbol: 'I_required',
  text: 'k * I',
  units: { k: '', I: 'A' },
  result: 'A',
});

/** Largest device, over the welder's rated primary current (NEC 630.12(A)). */
const devicePercent = 200;

const largestFor = (load: number): number => (load * devicePercent) / 100;

/** Arc welder by its rated primary current and duty cycle. */
export const welder: KindOfCircuit = {
  kinds: ['welder'],
  askedIfContinuous: false,
  smallConductorLimits: false,
  demand: (call, { load, duty }) => {
    if (load === undefined || duty === undefined) {
      return new Failure(
        'A welder circuit is sized from its nameplate: give its rated primary current as load, and its duty cycle as duty.',
        undefined,
        'too-few-givens',
      );
    }
    call.assume('arc welder without a motor generator taken; a resistance welder has other multipliers');
    const [listed, k] = multipliers.find(([upTo]) => duty <= upTo) ?? multipliers[multipliers.length - 1];
    call.table({
      symbol: 'k',
      value: k,
      unit: '',
      source: multiplierSource(tablesOf(call).edition),
      row: [
        ['duty cycle up to, %', String(listed)],
        ['multiplier', String(k)],
      ],
    });
    const required = weldingCurrent(call, { k, I: load });
    return { load: required, required, because: `${figure(load)} A at ${figure(duty)} % duty = ${figure(required)} A` };
  },
  device: (call, { load = 0 }) => {
    const found = smallestDeviceFor(tablesOf(call), largestFor(load));
    return found
      ? {
          rating: found.row.rating,
          because: `largest allowed: ${devicePercent} % of ${figure(load)} A, next standard rating (630.12)`,
        }
      : new Failure(`${figure(largestFor(load))} A is above the largest standard rating.`, 'load', 'no-standard-size');
  },
  allows: (call, { load = 0 }, rating) =>
    reaches(smallestDeviceFor(tablesOf(call), largestFor(load))?.row.rating ?? 0, rating),
};
