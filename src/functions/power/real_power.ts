import { defineFormula, defineFunction } from '../../language';
import * as shared from '../parameters';

const realPower = defineFormula({
  symbol: 'P',
  text: 'S * cos_phi',
  units: { S: 'VA', cos_phi: '' },
  result: 'W',
  turnsPowerKind: true,
});

export const real_power = defineFunction({
  name: 'real_power',
  summary: 'Real power of an apparent power at a power factor.',
  parameters: {
    power: { unit: 'VA', symbol: 'S', meaning: 'apparent power' },
    power_factor: shared.powerFactor,
  },
  result: { unit: 'W', meaning: 'real power' },
  formula: 'P = S * cos_phi',
  assumptions: ['sinusoidal voltage and current'],
  sources: ['circuit theory'],
  examples: [{ text: 'real_power(5 kVA, 0.8) in kW', gives: '4 kW' }],
  evaluate: ({ power, power_factor }, call) => realPower(call, { S: power, cos_phi: power_factor }),
});
