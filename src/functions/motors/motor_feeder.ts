import { Absent, type Call, defineFormula, defineFunction, Failure } from '../../language';
import { figure } from '../number-text';
import { lastBits } from '../rules/last-bits';
import { feederPercent } from '../rules/motor-circuit';
import { sumOfParts } from '../rules/sum-of-parts';
import { tablesOf } from '../settings';
import { amperes } from '../step-values';

const required = defineFormula({
  symbol: 'I_required',
  text: 'k * I_largest + I_others',
  units: { k: '%', I_largest: 'A', I_others: 'A' },
  result: 'A',
});
const limit = defineFormula({
  symbol: 'I_limit',
  text: 'I_branch + I_others',
  units: { I_branch: 'A', I_others: 'A' },
  result: 'A',
});
const sum = sumOfParts('I_others', 'A');

/** The sum of all but one; nothing is shown where one motor stands alone. */
const others = (call: Call, currents: readonly number[], but: number, which: string): number => {
  const rest = currents.filter((_, i) => i !== but);
  return rest.length === 0 ? 0 : sum(call, rest, which);
};

const largest = (values: readonly number[]): number => values.indexOf(Math.max(...values));

export const motor_feeder = defineFunction({
  name: 'motor_feeder',
  summary: 'What several motors ask of their feeder.',
  parameters: {
    currents: { listOf: { unit: 'A' }, meaning: 'table full-load current of each motor' },
    devices: {
      listOf: { unit: 'A' },
      named: true,
      optional: true,
      meaning: 'branch-circuit device of each motor, in the same order',
    },
  },
  result: {
    record: {
      conductor_ampacity: { unit: 'A', meaning: 'least ampacity of the feeder' },
      ocpd: { unit: 'A', meaning: 'largest standard rating of its device' },
    },
  },
  formula: 'I_required = 1.25 * I_largest + sum(I_others)',
  assumptions: ['all motors may run together', 'no other loads: they are added apart'],
  sources: ['NEC 430.24', 'NEC 430.62(A)', 'NEC 240.6(A)'],
  examples: [
    {
      text: 'line = motor_feeder([34 A, 40 A, 40 A], devices: [110 A, 60 A, 60 A])\nline.conductor_ampacity',
      gives: '124 A',
    },
    { text: 'line = motor_feeder([34 A, 40 A, 40 A], devices: [110 A, 60 A, 60 A])\nline.ocpd', gives: '175 A' },
  ],
  evaluate: ({ currents, devices }, call) => {
    if (currents.length === 0 || currents.some((current) => current <= 0)) {
      return new Failure('List the table current of each motor, all above 0 A.', 'currents', 'too-few-givens');
    }
    if (devices !== undefined && devices.length !== currents.length) {
      return new Failure(
        `There are ${currents.length} currents and ${devices.length} devices: list one device for each motor, in the same order.`,
        'devices',
        'too-few-givens',
      );
    }
    const k = feederPercent(call);
    if (k instanceof Failure) {
      return k;
    }
    const first = largest(currents);
    const conductor_ampacity = required(call, {
      k,
      I_largest: currents[first],
      I_others: others(call, currents, first, 'the other motors'),
    });
    if (devices === undefined) {
      const because = 'the branch-circuit devices are not given, and the feeder’s goes by the largest of them';
      return { conductor_ampacity, ocpd: new Absent(because) };
    }
    const at = largest(devices);
    const most = limit(call, {
      I_branch: devices[at],
      I_others: others(call, currents, at, 'the motors without the largest device'),
    });
    const found = tablesOf(call).standardRatingAtMost(most * (1 + lastBits));
    if (!found) {
      return new Failure(`No standard rating is as small as ${figure(most)} A.`, 'devices', 'no-standard-size');
    }
    call.choose({
      symbol: { base: 'I', subscript: 'n' },
      result: amperes(found.row.rating),
      because: `largest standard rating within ${figure(most)} A: a feeder’s device is not rounded up`,
      rule: '430.62(A)',
    });
    return { conductor_ampacity, ocpd: found.row.rating };
  },
});
