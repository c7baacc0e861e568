import { defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { misfitOfRun, runImpedance, runImpedanceParameters } from '../rules/run-impedance';
import { voltageDrop } from '../rules/voltage-drop';
import { notPhases, notWhole } from '../rules/whole-number';

export const voltage_drop = defineFunction({
  name: 'voltage_drop',
  summary: 'Voltage drop along a run, by DC resistance, or by AC impedance where the raceway is given.',
  parameters: {
    conductor: shared.conductor,
    current: shared.current,
    length: shared.length,
    phases: shared.phases,
    temperature: shared.operatingTemperature,
    sets: shared.sets,
    ...runImpedanceParameters,
  },
  result: { unit: 'V', meaning: 'drop between the same two conductors that the supply voltage is taken between' },
  formula: 'U_drop = 2 * I * r_T * L / n, with sqrt(3) in place of 2 for three-phase',
  assumptions: [
    'direct-current resistance: from about 1/0 AWG in steel raceway the AC impedance is higher',
    'balanced load',
    'power factor 1 where it is not given',
  ],
  sources: ['NEC Chapter 9 Table 8 and its note', 'NEC Chapter 9 Table 9', 'circuit theory'],
  examples: [
    { text: 'voltage_drop(12 AWG Cu stranded, 16 A, 85 ft)', gives: '5.386 V' },
    { text: 'voltage_drop(4/0 AWG Al, 200 A, 170 ft)', gives: '6.8 V' },
    { text: 'voltage_drop(6 AWG Cu, 50 A, 300 ft, phases: 3)', gives: '12.76 V' },
    {
      text: 'voltage_drop(250 kcmil Cu, 200 A, 300 ft, phases: 3, raceway: steel, power_factor: 0.85)',
      gives: '7.617 V',
    },
  ],
  evaluate: (args, call) => {
    const { conductor, current, length, phases, sets } = args;
    const wrong = notPhases(phases) ?? notWhole(sets, 'sets', 'sets') ?? misfitOfRun(args, call);
    const ohmPerKft = wrong ?? runImpedance(call, conductor, args);
    return ohmPerKft instanceof Failure ? ohmPerKft : voltageDrop(call, { phases, current, ohmPerKft, length, sets });
  },
});
