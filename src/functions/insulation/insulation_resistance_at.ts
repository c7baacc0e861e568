import { defineFormula, defineFunction } from '../../language';

const corrected = defineFormula({
  symbol: 'R_to',
  text: 'R_from * 0.5^((T_to - T_from) / (10 K))',
  units: { R_from: 'Ω', T_to: '°C', T_from: '°C' },
  result: 'Ω',
});

const temperature = { unit: '°C', named: true, atLeast: -40, atMost: 200 } as const;

export const insulation_resistance_at = defineFunction({
  name: 'insulation_resistance_at',
  summary: 'Insulation resistance brought to another temperature.',
  parameters: {
    resistance: { unit: 'Ω', symbol: 'R_from', above: 0, meaning: 'reading of the insulation tester, usually in MΩ' },
    from: { ...temperature, symbol: 'T_from', meaning: 'temperature of the winding or cable at the test' },
    to: { ...temperature, symbol: 'T_to', meaning: 'temperature to compare at, 40 °C for machines' },
  },
  result: { unit: 'Ω', meaning: 'insulation resistance at the wanted temperature' },
  formula: 'R_to = R_from * 0.5^((T_to - T_from) / (10 K))',
  assumptions: [
    'halves for each 10 °C rise: a rule of thumb, and the maker’s figure for the insulation is better',
    'above the dew point',
  ],
  sources: ['IEEE 43'],
  examples: [{ text: 'insulation_resistance_at(200 MΩ, from: 20 °C, to: 40 °C) in MΩ', gives: '50 MΩ' }],
  evaluate: ({ resistance, from, to }, call) => corrected(call, { R_from: resistance, T_to: to, T_from: from }),
});
