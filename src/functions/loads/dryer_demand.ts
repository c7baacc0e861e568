import { defineFunction } from '../../language';
import { dryerDemand } from '../rules/dryer-demand';

export const dryer_demand = defineFunction({
  name: 'dryer_demand',
  summary: 'Demand of household clothes dryers on a feeder or service.',
  parameters: {
    count: { unit: '', symbol: 'n', atLeast: 1, meaning: 'number of dryers' },
    rating: { unit: 'kW', symbol: 'P', above: 0, meaning: 'nameplate rating of each' },
  },
  result: { unit: 'kW', meaning: 'demand load' },
  formula: 'P_demand = k * n * max(P, 5 kW)',
  assumptions: ['single-phase supply', 'some rows of the table are from memory, and say so where they are used'],
  sources: ['NEC 220.54', 'NEC Table 220.54'],
  examples: [
    { text: 'dryer_demand(1, 4 kW)', gives: '5 kW' },
    { text: 'dryer_demand(10, 5.5 kW)', gives: '27.5 kW' },
  ],
  evaluate: ({ count, rating }, call) => dryerDemand(call, count, rating),
});
