import { type Call, defineFormula, defineFunction, Failure } from '../../language';
import type { Conductor } from '../conductor';
import * as shared from '../parameters';
import type { RacewayWord } from '../raceway-words';
import { acResistanceAt, reactance } from '../rules/ac-impedance';
import { faultFact } from '../rules/fault-fact';
import { assumeTemperature } from '../rules/operating-temperature';
import { resistancePerLength } from '../rules/resistance-per-length';
import { notPhases, notWhole } from '../rules/whole-number';

const impedance = defineFormula({
  symbol: 'z',
  text: 'sqrt(r^2 + x^2)',
  units: { r: 'Ω/kft', x: 'Ω/kft' },
  result: 'Ω/kft',
});
const units = { I_sc: 'A', z: 'Ω/kft', L: 'kft', n: '', U: 'V' } as const;
const threePhase = defineFormula({
  symbol: 'I_end',
  text: 'I_sc / (1 + sqrt(3) * I_sc * z * L / (n * U))',
  units,
  result: 'A',
});
const singlePhase = defineFormula({
  symbol: 'I_end',
  text: 'I_sc / (1 + 2 * I_sc * z * L / (n * U))',
  units,
  result: 'A',
});

export const fault_current_at = defineFunction({
  name: 'fault_current_at',
  summary: 'Bolted fault current at the end of a run, point to point.',
  parameters: {
    current: { unit: 'A', symbol: 'I_sc', above: 0, meaning: 'fault current at the start of the run' },
    voltage: { unit: 'V', symbol: 'U', above: 0, meaning: 'voltage, line to line' },
    conductor: shared.conductor,
    length: shared.length,
    phases: { ...shared.phases, default: 3 },
    sets: shared.sets,
    raceway: shared.raceway,
    temperature: {
      ...shared.operatingTemperature,
      default: 20,
      meaning: 'temperature of the conductors: cold for the largest fault current, hot for the least',
    },
    interrupting_rating: shared.interruptingRating,
  },
  result: { unit: 'A', meaning: 'symmetrical bolted fault current at the end' },
  formula: 'I_end = I_sc / (1 + sqrt(3) * I_sc * z * L / (n * U))',
  assumptions: [
    'cold conductors at 20 °C unless a temperature is given: resistance of the AC table brought to it, reactance left as it is',
    'magnitudes added, whatever their angles',
    'lies below results with printed C values, which rest on a lower reactance than the AC table’s, by 2.7 % for 20 ft of two 500 kcmil in steel at 46 kA: leave a margin to an interrupting rating',
    'no motor contribution',
  ],
  sources: ['circuit theory', 'NEC Chapter 9 Table 9'],
  examples: [
    { text: 'fault_current_at(46273 A, 208 V, 500 kcmil Cu, 20 ft, sets: 2, raceway: steel)', gives: '38,352 A' },
  ],
  evaluate: (
    { current, voltage, conductor, length, phases, sets, raceway, temperature, interrupting_rating },
    call,
  ) => {
    const wrong = notPhases(phases) ?? notWhole(sets, 'sets', 'sets');
    assumeTemperature(call, temperature, 'cold, for the largest fault current; give 75 °C or more for the least');
    const parts = wrong ?? resistanceAndReactance(call, { conductor, raceway, temperature });
    if (parts instanceof Failure) {
      return parts;
    }
    const z = impedance(call, parts);
    const atEnd = (phases === 3 ? threePhase : singlePhase)(call, {
      I_sc: current,
      z,
      L: length / 1000,
      n: sets,
      U: voltage,
    });
    faultFact(call, atEnd, interrupting_rating);
    return atEnd;
  },
});

/** Per thousand feet, to neutral. Metric sizes have no reactance in the tables, and direct-current resistance alone. */
function resistanceAndReactance(
  call: Call,
  run: { readonly conductor: Conductor; readonly raceway: RacewayWord; readonly temperature: number },
): { readonly r: number; readonly x: number } | Failure {
  const { conductor, raceway, temperature } = run;
  if (conductor.size.unit === 'mm²') {
    const r = resistancePerLength(call, conductor, temperature);
    call.assume('no reactance in the tables for sizes in mm²: left out, which makes the current come out high');
    return r instanceof Failure ? r : { r, x: 0 };
  }
  const r = acResistanceAt(call, conductor, raceway, temperature);
  const x = r instanceof Failure ? r : reactance(call, conductor, raceway);
  return r instanceof Failure ? r : x instanceof Failure ? x : { r, x };
}
