import { defineFormula, defineFunction } from '../../language';
import * as shared from '../parameters';
import { faultFact } from '../rules/fault-fact';
import { notPhases } from '../rules/whole-number';

const units = { S: 'VA', U: 'V', z: '%' } as const;
const threePhase = defineFormula({ symbol: 'I_sc', text: 'S / (sqrt(3) * U * z)', units, result: 'A' });
const singlePhase = defineFormula({ symbol: 'I_sc', text: 'S / (U * z)', units, result: 'A' });

export const fault_current = defineFunction({
  name: 'fault_current',
  summary: 'Bolted fault current at a transformer’s secondary terminals.',
  parameters: {
    power: { unit: 'VA', symbol: 'S', above: 0, meaning: 'rated apparent power of the transformer' },
    voltage: { unit: 'V', symbol: 'U', above: 0, meaning: 'secondary voltage, line to line' },
    impedance: { unit: '%', symbol: 'z', above: 0, atMost: 25, meaning: 'nameplate impedance' },
    phases: { ...shared.phases, default: 3 },
    interrupting_rating: shared.interruptingRating,
  },
  result: { unit: 'A', meaning: 'symmetrical bolted fault current' },
  formula: 'I_sc = S / (sqrt(3) * U * z)',
  assumptions: [
    'unlimited source: high for an interrupting rating, not safe for arc flash or for the least fault',
    'impedance as given; an actual unit may lie 10 % lower',
    'no motor contribution',
  ],
  sources: ['circuit theory'],
  examples: [
    { text: 'fault_current(500 kVA, 480 V, 5.75 %)', gives: '10,459 A' },
    { text: 'fault_current(50 kVA, 240 V, 2 %, phases: 1)', gives: '10,417 A' },
  ],
  evaluate: ({ power, voltage, impedance, phases, interrupting_rating }, call) => {
    const wrong = notPhases(phases);
    if (wrong) {
      return wrong;
    }
    call.assume('unlimited source ahead of the transformer');
    const current = (phases === 3 ? threePhase : singlePhase)(call, { S: power, U: voltage, z: impedance });
    faultFact(call, current, interrupting_rating);
    return current;
  },
});
