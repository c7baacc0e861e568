import { defineFunction, Failure } from '../../language';
import { leaveFact } from '../leave-fact';
import * as shared from '../parameters';
import { assumeTemperature } from '../rules/operating-temperature';
import { resistancePerLength } from '../rules/resistance-per-length';

export const resistance_per_length = defineFunction({
  name: 'resistance_per_length',
  summary: 'DC resistance of a conductor for its length.',
  parameters: { conductor: shared.conductor, temperature: shared.operatingTemperature },
  result: { unit: 'Ω/kft', unitSI: 'Ω/km', meaning: 'one conductor, one way, direct current' },
  formula: 'r_T = r_75 * (1 + alpha_75 * (T - 75 °C))',
  assumptions: [
    'linear between the table’s temperature and the conductor’s',
    'stranded where solid or stranded is not said',
  ],
  sources: [
    'NEC Chapter 9 Table 8 and its note',
    'NBS copper wire tables, for solid copper that Table 8 does not list',
  ],
  examples: [
    { text: 'resistance_per_length(12 AWG Cu solid)', gives: '1.93 Ω/kft' },
    { text: 'resistance_per_length(12 AWG Cu stranded, temperature: 20 °C)', gives: '1.628 Ω/kft' },
    { text: 'resistance_per_length(4/0 AWG Al)', gives: '0.1 Ω/kft' },
  ],
  evaluate: ({ conductor, temperature }, call) => {
    assumeTemperature(call, temperature, 'operating temperature');
    const ohmPerKft = resistancePerLength(call, conductor, temperature);
    if (!(ohmPerKft instanceof Failure)) {
      leaveFact(call, {
        about: 'resistance per length',
        conductor,
        temperatureC: temperature,
        temperatureGiven: call.given('temperature'),
        ohmPerKft,
      });
    }
    return ohmPerKft;
  },
});
