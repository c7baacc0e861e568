import { defineFormula, defineFunction, Failure } from '../../language';
import { leaveFact } from '../leave-fact';
import * as shared from '../parameters';
import { assumeTemperature } from '../rules/operating-temperature';
import { resistancePerLength } from '../rules/resistance-per-length';

const resistanceOfLength = defineFormula({
  symbol: 'R',
  text: 'r_T * L',
  units: { r_T: 'Ω/kft', L: 'ft' },
  result: 'Ω',
});

export const resistance = defineFunction({
  name: 'resistance',
  summary: 'DC resistance of one conductor, one way.',
  parameters: { conductor: shared.conductor, length: shared.length, temperature: shared.operatingTemperature },
  result: { unit: 'Ω', meaning: 'one conductor, one way, direct current' },
  formula: 'R = r_T * L',
  assumptions: ['one conductor: a two-wire loop has twice this', 'stranded where solid or stranded is not said'],
  sources: ['NEC Chapter 9 Table 8 and its note'],
  examples: [
    { text: 'resistance(12 AWG Cu stranded, 500 ft)', gives: '0.99 Ω' },
    { text: 'resistance(14 AWG Cu solid, 200 ft, temperature: 20 °C)', gives: '0.5049 Ω' },
  ],
  evaluate: ({ conductor, length, temperature }, call) => {
    assumeTemperature(call, temperature, 'operating temperature of the table');
    const ohmPerKft = resistancePerLength(call, conductor, temperature);
    if (ohmPerKft instanceof Failure) {
      return ohmPerKft;
    }
    leaveFact(call, {
      about: 'resistance per length',
      conductor,
      temperatureC: temperature,
      temperatureGiven: call.given('temperature'),
      ohmPerKft,
    });
    return resistanceOfLength(call, { r_T: ohmPerKft, L: length });
  },
});
