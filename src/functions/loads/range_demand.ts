import { defineFunction } from '../../language';
import { rangeDemand } from '../rules/range-demand';

export const range_demand = defineFunction({
  name: 'range_demand',
  summary: 'Demand of household cooking appliances of one rating.',
  parameters: {
    count: { unit: '', symbol: 'n', atLeast: 1, meaning: 'number of appliances' },
    rating: { unit: 'kW', symbol: 'P', above: 0, meaning: 'nameplate rating of each' },
  },
  result: { unit: 'kW', meaning: 'demand load' },
  formula: 'P_demand = P_C * (1 + 5 % * n_over)',
  assumptions: [
    'appliances of one rating on a single-phase supply',
    'up to 8.75 kW the smaller of column C and of column A or B',
    'some rows of the table are from memory, and say so where they are used',
  ],
  sources: ['NEC 220.55', 'NEC Table 220.55 with Notes 1 and 3'],
  examples: [
    { text: 'range_demand(1, 12 kW)', gives: '8 kW' },
    { text: 'range_demand(24, 16 kW)', gives: '46.8 kW' },
    { text: 'range_demand(1, 8 kW)', gives: '6.4 kW' },
  ],
  evaluate: ({ count, rating }, call) => rangeDemand(call, count, rating),
});
