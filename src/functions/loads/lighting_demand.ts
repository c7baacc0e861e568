import { defineFunction } from '../../language';
import { lightingDemand } from '../rules/lighting-demand';

/** How a sheet names the occupancies of the table. */
const occupancies = { dwelling: 'dwelling', hotel: 'hotel or motel', warehouse: 'warehouse', other: 'other' } as const;
const words = Object.keys(occupancies) as (keyof typeof occupancies)[];

export const lighting_demand = defineFunction({
  name: 'lighting_demand',
  summary: 'Demand of a general lighting load on a feeder or service.',
  parameters: {
    load: {
      unit: 'VA',
      symbol: 'S',
      atLeast: 0,
      meaning: 'connected load; a dwelling’s small-appliance and laundry circuits included',
    },
    occupancy: { choice: words, named: true, default: 'dwelling', meaning: 'kind of building' },
  },
  result: { unit: 'VA', meaning: 'demand load' },
  formula: 'S_demand = sum(k * S_part)',
  assumptions: ['rows other than those of dwellings are from memory, and say so where they are used'],
  sources: ['NEC Table 220.42 (220.45 from 2023)'],
  examples: [
    { text: 'lighting_demand(9000 VA)', gives: '5100 VA' },
    { text: 'lighting_demand(12900 VA)', gives: '6465 VA' },
  ],
  evaluate: ({ load, occupancy }, call) => lightingDemand(call, load, occupancies[occupancy]),
});
