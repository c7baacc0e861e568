import { defineFormula, defineFunction } from '../../language';
import * as shared from '../parameters';
import { notPhases } from '../rules/whole-number';

const units = { S: 'VA', U: 'V' } as const;
const threePhase = defineFormula({ symbol: 'I', text: 'S / (sqrt(3) * U)', units, result: 'A' });
const singlePhase = defineFormula({ symbol: 'I', text: 'S / U', units, result: 'A' });

export const transformer_current = defineFunction({
  name: 'transformer_current',
  summary: 'Rated current of a transformer winding.',
  parameters: {
    power: { unit: 'VA', symbol: 'S', above: 0, meaning: 'rated apparent power of the transformer' },
    voltage: { unit: 'V', symbol: 'U', above: 0, meaning: 'voltage of that side, line to line' },
    phases: { ...shared.phases, default: 3 },
  },
  result: { unit: 'A', meaning: 'rated line current on that side' },
  formula: 'I = S / (sqrt(3) * U)',
  assumptions: ['exciting current left out'],
  sources: ['circuit theory'],
  examples: [
    { text: 'transformer_current(30 kVA, 480 V)', gives: '36.08 A' },
    { text: 'transformer_current(25 kVA, 480 V, phases: 1)', gives: '52.08 A' },
  ],
  evaluate: ({ power, voltage, phases }, call) =>
    notPhases(phases) ?? (phases === 3 ? threePhase : singlePhase)(call, { S: power, U: voltage }),
});
