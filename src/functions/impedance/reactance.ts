import { defineFunction } from '../../language';
import * as shared from '../parameters';
import { reactance as reactanceOf } from '../rules/ac-impedance';

export const reactance = defineFunction({
  name: 'reactance',
  summary: 'Reactance of a conductor in a raceway, for its length.',
  parameters: { conductor: shared.conductor, raceway: shared.raceway },
  result: { unit: 'Ω/kft', unitSI: 'Ω/km', meaning: 'one conductor, to neutral, at 60 Hz' },
  assumptions: ['three single conductors in the raceway'],
  sources: ['NEC Chapter 9 Table 9'],
  examples: [{ text: 'reactance(250 kcmil Cu, raceway: steel)', gives: '0.052 Ω/kft' }],
  evaluate: ({ conductor, raceway }, call) => reactanceOf(call, conductor, raceway),
});
