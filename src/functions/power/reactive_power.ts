import { defineFormula, defineFunction } from '../../language';
import * as shared from '../parameters';

const fromReal = defineFormula({
  symbol: 'Q',
  text: 'P * tan(acos(cos_phi))',
  units: { P: 'W', cos_phi: '' },
  result: 'var',
  turnsPowerKind: true,
});
const fromApparent = defineFormula({
  symbol: 'Q',
  text: 'S * sin(acos(cos_phi))',
  units: { S: 'VA', cos_phi: '' },
  result: 'var',
  turnsPowerKind: true,
});

export const reactive_power = defineFunction({
  name: 'reactive_power',
  summary: 'Reactive power that goes with a real or apparent power at a power factor.',
  parameters: {
    power: { units: ['W', 'VA'], symbol: 'P', meaning: 'real or apparent power' },
    power_factor: shared.powerFactor,
  },
  result: { unit: 'var', meaning: 'reactive power, lagging' },
  formula: 'Q = P * tan(acos(cos_phi)) = S * sin(acos(cos_phi))',
  assumptions: ['sinusoidal voltage and current', 'lagging power factor'],
  sources: ['circuit theory'],
  examples: [
    { text: 'reactive_power(4 kW, 0.8) in kvar', gives: '3 kvar' },
    { text: 'reactive_power(5 kVA, 0.8) in kvar', gives: '3 kvar' },
  ],
  evaluate: ({ power, power_factor }, call) =>
    power.unit === 'W'
      ? fromReal(call, { P: power.value, cos_phi: power_factor })
      : fromApparent(call, { S: power.value, cos_phi: power_factor }),
});
