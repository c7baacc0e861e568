import { defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { ampacityChain } from '../rules/ampacity-chain';

export const ampacity = defineFunction({
  name: 'ampacity',
  summary: 'Current that one conductor may carry after correction, adjustment and the terminals’ limit.',
  parameters: {
    conductor: shared.conductor,
    insulation: shared.insulation,
    terminals: shared.terminals,
    ambient: shared.ambient,
    bundled: shared.bundled,
  },
  result: { unit: 'A', meaning: 'allowed continuous current of one conductor' },
  formula: 'I_z = min(I_table * k_ambient * k_bundled, I_terminals)',
  assumptions: [
    'in a raceway, a cable or the earth; not in free air',
    'dry or damp place',
    'terminals not given: 60 °C for 14 to 1 AWG, 75 °C for larger sizes',
    'NM-B and UF-B held to the 60 °C column',
    'small-conductor limits of 240.4(D) are for the overcurrent device and not taken off here',
  ],
  sources: ['NEC Table 310.16', 'NEC 310.15(B) and (C)', 'NEC 110.14(C)', 'NEC 334.80', 'NEC 340.80'],
  examples: [
    { text: 'ampacity(10 AWG Cu THHN)', gives: '30 A' },
    { text: 'ampacity(12 AWG Cu THHN, bundled: 9)', gives: '20 A' },
    { text: 'ampacity(3/0 AWG Cu THHN, ambient: 40 °C)', gives: '200 A' },
  ],
  evaluate: (args, call) => {
    const found = ampacityChain(call, args);
    return found instanceof Failure ? found : found.ampacity;
  },
});
