import { defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { assumeTemperature } from '../rules/operating-temperature';
import { resistancePerLength } from '../rules/resistance-per-length';
import { voltageDrop } from '../rules/voltage-drop';
import { notPhases, notWhole } from '../rules/whole-number';

export const voltage_drop = defineFunction({
  name: 'voltage_drop',
  summary: 'Voltage drop along a run, by DC resistance.',
  parameters: {
    conductor: shared.conductor,
    current: shared.current,
    length: shared.length,
    phases: shared.phases,
    temperature: shared.operatingTemperature,
    sets: shared.sets,
  },
  result: { unit: 'V', meaning: 'drop between the same two conductors that the supply voltage is taken between' },
  formula: 'U_drop = 2 * I * r_T * L / n, with sqrt(3) in place of 2 for three-phase',
  assumptions: [
    'direct-current resistance: from about 1/0 AWG in steel raceway the AC impedance is higher',
    'balanced load',
    'power factor near 1',
  ],
  sources: ['NEC Chapter 9 Table 8 and its note', 'circuit theory'],
  examples: [
    { text: 'voltage_drop(12 AWG Cu stranded, 16 A, 85 ft)', gives: '5.386 V' },
    { text: 'voltage_drop(4/0 AWG Al, 200 A, 170 ft)', gives: '6.8 V' },
    { text: 'voltage_drop(6 AWG Cu, 50 A, 300 ft, phases: 3)', gives: '12.76 V' },
  ],
  evaluate: ({ conductor, current, length, phases, temperature, sets }, call) => {
    const wrong = notPhases(phases) ?? notWhole(sets, 'sets', 'sets');
    if (wrong) {
      return wrong;
    }
    assumeTemperature(call, temperature, 'operating temperature of the table');
    const ohmPerKft = resistancePerLength(call, conductor, temperature);
    return ohmPerKft instanceof Failure ? ohmPerKft : voltageDrop(call, { phases, current, ohmPerKft, length, sets });
  },
});
