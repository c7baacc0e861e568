import { defineFormula, defineFunction, Failure } from '../../language';
import { leaveFact } from '../leave-fact';
import { figure } from '../number-text';
import * as shared from '../parameters';
import { assumeTemperature } from '../rules/operating-temperature';
import { resistancePerLength } from '../rules/resistance-per-length';
import { unwatched } from '../rules/unwatched';

const units = { R: 'Ω', R_leads: 'Ω', r_T: 'Ω/kft' } as const;
const lengthOfConductor = defineFormula({ symbol: 'L', text: '(R - R_leads) / r_T', units, result: 'ft' });
const lengthOfLoop = defineFormula({ symbol: 'L', text: '(R - R_leads) / (2 * r_T)', units, result: 'ft' });

/** The temperature that the conductor table holds for, in °C. */
const tableTemperatureC = 75;

export const conductor_length = defineFunction({
  name: 'conductor_length',
  summary: 'Length of a conductor from its measured resistance.',
  parameters: {
    resistance: { unit: 'Ω', symbol: 'R', above: 0, meaning: 'reading between the ends' },
    conductor: shared.conductor,
    temperature: {
      ...shared.operatingTemperature,
      default: 20,
      meaning: 'temperature of the conductor when it was measured',
    },
    leads: {
      unit: 'Ω',
      named: true,
      default: 0,
      symbol: 'R_leads',
      atLeast: 0,
      meaning: 'reading with the test leads shorted',
    },
    loop: { yesNo: true, named: true, default: false, meaning: 'yes when two conductors are joined at the far end' },
  },
  result: { unit: 'ft', unitSI: 'm', meaning: 'length of one conductor' },
  formula: 'L = (R - R_leads) / r_T',
  assumptions: [
    'whole conductor at one temperature',
    'table resistance: real wire differs by a few percent',
    'stranded where solid or stranded is not said',
  ],
  sources: [
    'NEC Chapter 9 Table 8 and its note',
    'NBS copper wire tables, for solid copper that Table 8 does not list',
  ],
  examples: [
    { text: 'conductor_length(0.4 Ω, 12 AWG Cu solid, leads: 0.03 Ω)', gives: '233.1 ft' },
    { text: 'conductor_length(54.6 Ω, 24 AWG Cu solid, loop: yes)', gives: '1063 ft' },
  ],
  evaluate: (args, call) => {
    const { resistance, conductor, temperature, leads, loop } = args;
    if (leads >= resistance) {
      return new Failure(
        `The leads' ${figure(leads)} Ω leave nothing of the ${figure(resistance)} Ω reading: check that both are in the same unit, and measure again.`,
        'leads',
        'leads-exceed-reading',
      );
    }
    assumeTemperature(call, temperature, 'a conductor at room temperature that carries no current');
    const ohmPerKft = resistancePerLength(call, conductor, temperature);
    if (ohmPerKft instanceof Failure) {
      return ohmPerKft;
    }
    const formula = loop ? lengthOfLoop : lengthOfConductor;
    const length = formula(call, { R: resistance, R_leads: leads, r_T: ohmPerKft });
    if (call.watched) {
      const silent = unwatched(call);
      const hot = resistancePerLength(silent, conductor, tableTemperatureC);
      leaveFact(call, {
        about: 'length',
        conductor,
        resistanceOhm: resistance,
        leadsOhm: leads,
        leadsGiven: call.given('leads'),
        temperatureC: temperature,
        temperatureGiven: call.given('temperature'),
        loop,
        loopGiven: call.given('loop'),
        lengthFt: length,
        lengthAtTableTemperatureFt:
          hot instanceof Failure ? length : formula(silent, { R: resistance, R_leads: leads, r_T: hot }),
      });
    }
    return length;
  },
});
