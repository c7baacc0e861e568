import { defineFormula, defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { misfitOfRun, runImpedance, runImpedanceParameters } from '../rules/run-impedance';
import { notPhases, notWhole } from '../rules/whole-number';

const units = { U_drop: 'V', I: 'A', r_T: 'Ω/kft', n: '' } as const;
const twoWire = defineFormula({ symbol: 'L', text: 'n * U_drop / (2 * I * r_T)', units, result: 'ft' });
const threePhase = defineFormula({ symbol: 'L', text: 'n * U_drop / (sqrt(3) * I * r_T)', units, result: 'ft' });

export const longest_run = defineFunction({
  name: 'longest_run',
  summary:
    'Longest one-way run within a voltage drop, by DC resistance, or by AC impedance where the raceway is given.',
  parameters: {
    conductor: shared.conductor,
    current: { ...shared.current, atLeast: undefined, above: 0 },
    drop: { unit: 'V', symbol: 'U_drop', above: 0, meaning: 'voltage drop that is allowed' },
    phases: shared.phases,
    temperature: shared.operatingTemperature,
    sets: shared.sets,
    ...runImpedanceParameters,
  },
  result: { unit: 'ft', unitSI: 'm', meaning: 'one-way length' },
  formula: 'L = n * U_drop / (2 * I * r_T), with sqrt(3) in place of 2 for three-phase',
  assumptions: [
    'direct-current resistance where the raceway is not given',
    'balanced load',
    'power factor 1 where it is not given',
  ],
  sources: ['NEC Chapter 9 Table 8 and its note', 'NEC Chapter 9 Table 9', 'circuit theory'],
  examples: [
    { text: 'longest_run(12 AWG Cu stranded, 16 A, 3.6 V)', gives: '56.82 ft' },
    { text: 'longest_run(6 AWG Cu, 50 A, 14.4 V, phases: 3)', gives: '338.6 ft' },
    {
      text: 'longest_run(10 AWG Cu, 20 A, 14.4 V, phases: 3, raceway: steel, power_factor: 0.85)',
      gives: '394.7 ft',
    },
  ],
  evaluate: (args, call) => {
    const { conductor, current, drop, phases, sets } = args;
    const wrong = notPhases(phases) ?? notWhole(sets, 'sets', 'sets') ?? misfitOfRun(args, call);
    const ohmPerKft = wrong ?? runImpedance(call, conductor, args);
    return ohmPerKft instanceof Failure
      ? ohmPerKft
      : (phases === 3 ? threePhase : twoWire)(call, { U_drop: drop, I: current, r_T: ohmPerKft, n: sets });
  },
});
