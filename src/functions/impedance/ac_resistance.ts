import { defineFunction } from '../../language';
import * as shared from '../parameters';
import { acResistance } from '../rules/ac-impedance';

export const ac_resistance = defineFunction({
  name: 'ac_resistance',
  summary: 'AC resistance of a conductor in a raceway, for its length.',
  parameters: { conductor: shared.conductor, raceway: shared.raceway },
  result: { unit: 'Ω/kft', unitSI: 'Ω/km', meaning: 'one conductor, to neutral, at 75 °C and 60 Hz' },
  assumptions: ['three single conductors in the raceway', 'small sizes are printed with two figures only'],
  sources: ['NEC Chapter 9 Table 9'],
  examples: [
    { text: 'ac_resistance(250 kcmil Cu, raceway: steel)', gives: '0.054 Ω/kft' },
    { text: 'ac_resistance(12 AWG Cu)', gives: '2 Ω/kft' },
  ],
  evaluate: ({ conductor, raceway }, call) => acResistance(call, conductor, raceway),
});
