import { defineFunction } from '../../language';
import * as shared from '../parameters';
import { effectiveImpedance } from '../rules/ac-impedance';

export const effective_impedance = defineFunction({
  name: 'effective_impedance',
  summary: 'Impedance of a conductor that a load of some power factor sees, for its length.',
  parameters: {
    conductor: shared.conductor,
    raceway: shared.raceway,
    power_factor: { ...shared.powerFactor, named: true, default: 0.85 },
  },
  result: { unit: 'Ω/kft', unitSI: 'Ω/km', meaning: 'one conductor, to neutral, at 75 °C and 60 Hz' },
  formula: 'z_e = r_ac * cos_phi + x * sin(acos(cos_phi))',
  assumptions: [
    'lagging load',
    'three single conductors in the raceway',
    'small sizes are printed with two figures only',
  ],
  sources: ['NEC Chapter 9 Table 9 and its note'],
  examples: [
    { text: 'effective_impedance(250 kcmil Cu, raceway: steel)', gives: '0.07329 Ω/kft' },
    { text: 'effective_impedance(250 kcmil Cu, raceway: PVC, power_factor: 1)', gives: '0.052 Ω/kft' },
  ],
  evaluate: ({ conductor, raceway, power_factor }, call) =>
    effectiveImpedance(call, conductor, { raceway, powerFactor: power_factor }),
});
