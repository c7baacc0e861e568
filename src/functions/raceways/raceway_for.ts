import { defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { chooseRaceway } from '../rules/raceway-fill';

export const raceway_for = defineFunction({
  name: 'raceway_for',
  summary: 'Smallest trade size of a raceway for its conductors.',
  parameters: {
    conductors: shared.conductors,
    type: { ...shared.racewayType, named: true, default: 'EMT' },
    nipple: shared.nipple,
  },
  result: { text: true, meaning: 'trade size in inches, a name and not a measure' },
  formula: 'A = sum(n * A_one), A <= k * A_100',
  assumptions: [
    'no more than 53 % for one conductor, 31 % for two, 40 % for more, 60 % in a nipple',
    'a complete raceway, not a sleeve for protection alone',
    'no compact-stranded conductors; a cable of several conductors is left out: it counts as one, by its own diameter',
    'areas of some raceways and insulations are from memory, and say so where they are used',
  ],
  sources: ['NEC Chapter 9 Tables 1, 4, 5 and 8, and their notes'],
  examples: [
    { text: 'raceway_for([12 AWG Cu THHN, 12 AWG Cu THHN, 12 AWG Cu THHN])', gives: '1/2' },
    { text: 'raceway_for([2/0 AWG Cu XHHW, 2/0 AWG Cu XHHW, 4 AWG Cu bare], type: PVC)', gives: '1-1/4' },
  ],
  evaluate: ({ conductors, type, nipple }, call) => {
    const found = chooseRaceway(call, type, conductors, nipple);
    return found instanceof Failure ? found : found.row.tradeSize;
  },
});
