import { defineFormula, defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { temperatureCoefficient } from '../rules/temperature-coefficient';

const scaled = defineFormula({
  symbol: 'R_to',
  text: 'R_from * (1 + alpha * (T_to - T_ref)) / (1 + alpha * (T_from - T_ref))',
  units: { R_from: 'Ω', alpha: '1/°C', T_to: '°C', T_from: '°C', T_ref: '°C' },
  result: 'Ω',
});

/** Where the coefficient of the conductor table holds, in °C. */
const referenceC = 75;

export const resistance_at = defineFunction({
  name: 'resistance_at',
  summary: 'Resistance of a conductor at another temperature.',
  parameters: {
    resistance: { unit: 'Ω', symbol: 'R_from', atLeast: 0, meaning: 'resistance that is known' },
    from: {
      unit: '°C',
      named: true,
      symbol: 'T_from',
      atLeast: -100,
      atMost: 300,
      meaning: 'temperature at which it is known',
    },
    to: {
      unit: '°C',
      named: true,
      symbol: 'T_to',
      atLeast: -100,
      atMost: 300,
      meaning: 'temperature at which it is wanted',
    },
    material: shared.material,
  },
  result: { unit: 'Ω', meaning: 'resistance at the wanted temperature' },
  formula: 'R_to = R_from * (1 + alpha_75 * (T_to - 75 °C)) / (1 + alpha_75 * (T_from - 75 °C))',
  assumptions: ['copper or aluminum conductor; not a heating alloy, a lamp or a winding with other metals in it'],
  sources: ['NEC Chapter 9 Table 8, note'],
  examples: [
    { text: 'resistance_at(1.98 Ω, from: 75 °C, to: 20 °C)', gives: '1.628 Ω' },
    { text: 'resistance_at(1 Ω, from: 20 °C, to: 75 °C, material: Al)', gives: '1.222 Ω' },
  ],
  evaluate: ({ resistance, from, to, material }, call) => {
    const alpha = temperatureCoefficient(call, material, referenceC, 'material');
    return alpha instanceof Failure
      ? alpha
      : scaled(call, { R_from: resistance, alpha, T_to: to, T_from: from, T_ref: referenceC });
  },
});
