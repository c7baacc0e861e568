import { defineFormula, defineFunction } from '../../language';
import * as shared from '../parameters';

const correction = defineFormula({
  symbol: 'Q_C',
  text: 'P * (tan(acos(cos_phi_from)) - tan(acos(cos_phi_to)))',
  units: { P: 'W', cos_phi_from: '', cos_phi_to: '' },
  result: 'kvar',
  turnsPowerKind: true,
});

export const correction_kvar = defineFunction({
  name: 'correction_kvar',
  summary: 'Capacitor reactive power that raises the power factor of a load.',
  parameters: {
    power: { unit: 'W', symbol: 'P', atLeast: 0, meaning: 'real power of the load' },
    from: { ...shared.powerFactor, named: true, symbol: 'cos_phi_from', meaning: 'power factor now' },
    to: { ...shared.powerFactor, named: true, symbol: 'cos_phi_to', meaning: 'power factor wanted' },
  },
  result: { unit: 'kvar', meaning: 'capacitor rating at the supply voltage, all phases together' },
  formula: 'Q_C = P * (tan(acos(cos_phi_from)) - tan(acos(cos_phi_to)))',
  assumptions: ['lagging power factors', 'sinusoidal voltage and current'],
  sources: ['circuit theory'],
  examples: [{ text: 'correction_kvar(5 kW, from: 0.75, to: 0.9)', gives: '1.988 kvar' }],
  evaluate: ({ power, from, to }, call) => correction(call, { P: power, cos_phi_from: from, cos_phi_to: to }),
});
