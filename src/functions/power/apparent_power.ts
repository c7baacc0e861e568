import { defineFormula, defineFunction } from '../../language';
import * as shared from '../parameters';

const apparentPower = defineFormula({
  symbol: 'S',
  text: 'P / cos_phi',
  units: { P: 'W', cos_phi: '' },
  result: 'VA',
  turnsPowerKind: true,
});

export const apparent_power = defineFunction({
  name: 'apparent_power',
  summary: 'Apparent power of a real power at a power factor.',
  parameters: {
    power: { unit: 'W', symbol: 'P', meaning: 'real power' },
    power_factor: shared.powerFactor,
  },
  result: { unit: 'VA', meaning: 'apparent power' },
  formula: 'S = P / cos_phi',
  assumptions: ['sinusoidal voltage and current'],
  sources: ['circuit theory'],
  examples: [{ text: 'apparent_power(4 kW, 0.8) in kVA', gives: '5 kVA' }],
  evaluate: ({ power, power_factor }, call) => apparentPower(call, { P: power, cos_phi: power_factor }),
});
