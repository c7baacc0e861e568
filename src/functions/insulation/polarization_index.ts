import { defineFormula, defineFunction } from '../../language';

const index = defineFormula({ symbol: 'PI', text: 'R_10 / R_1', units: { R_10: 'Ω', R_1: 'Ω' }, result: '' });

/** One-minute readings above this, in Ω, make the index meaningless; from memory. */
const tellingUpTo = 5e9;

export const polarization_index = defineFunction({
  name: 'polarization_index',
  summary: 'Insulation reading after ten minutes over that after one.',
  parameters: {
    ten_minutes: {
      unit: 'Ω',
      symbol: 'R_10',
      above: 0,
      meaning: 'insulation resistance after ten minutes of test voltage',
    },
    one_minute: {
      unit: 'Ω',
      symbol: 'R_1',
      above: 0,
      meaning: 'insulation resistance after one minute of test voltage',
    },
  },
  result: { unit: '', meaning: 'ratio' },
  formula: 'PI = R_10 / R_1',
  assumptions: ['same test voltage throughout', 'says little where the one-minute reading is above 5000 MΩ (memory)'],
  sources: ['IEEE 43'],
  examples: [{ text: 'polarization_index(900 MΩ, 300 MΩ)', gives: '3' }],
  evaluate: ({ ten_minutes, one_minute }, call) => {
    if (one_minute > tellingUpTo) {
      call.assume('the one-minute reading is above 5000 MΩ, where this index says little of the insulation (memory)');
    }
    return index(call, { R_10: ten_minutes, R_1: one_minute });
  },
});
