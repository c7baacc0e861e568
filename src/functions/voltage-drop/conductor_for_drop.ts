import { defineFunction, Failure } from '../../language';
import { conductorType } from '../conductor';
import { figure } from '../number-text';
import * as shared from '../parameters';
import { metricSizes } from '../rules/metric-sizes';
import { plainConductor } from '../rules/plain-conductor';
import { misfitOfRun, runImpedance, runImpedanceParameters } from '../rules/run-impedance';
import { unwatched } from '../rules/unwatched';
import { voltageDrop } from '../rules/voltage-drop';
import { notPhases, notWhole } from '../rules/whole-number';
import { isMetric, tablesOf } from '../settings';
import { conductorValue } from '../step-values';

export const conductor_for_drop = defineFunction({
  name: 'conductor_for_drop',
  summary: 'Smallest conductor that keeps a run within a voltage drop; its ampacity is a separate question.',
  parameters: {
    current: shared.current,
    length: shared.length,
    drop: { unit: 'V', symbol: 'U_drop', above: 0, meaning: 'voltage drop that is allowed' },
    phases: shared.phases,
    material: shared.material,
    temperature: shared.operatingTemperature,
    sets: shared.sets,
    ...runImpedanceParameters,
  },
  result: { object: conductorType, meaning: 'smallest size within the drop' },
  formula: 'U_drop = 2 * I * r_T * L / n, with sqrt(3) in place of 2 for three-phase',
  assumptions: [
    'direct-current resistance of stranded conductors where the raceway is not given',
    'sizes in mm² where the sheet’s units are SI and the raceway is not given: its impedance table has none',
    'balanced load',
    'power factor 1 where it is not given',
  ],
  sources: ['NEC Chapter 9 Table 8 and its note', 'NEC Chapter 9 Table 9', 'IEC 60228', 'circuit theory'],
  examples: [
    { text: 'conductor_for_drop(16 A, 85 ft, 3.6 V)', gives: '10 AWG Cu' },
    { text: 'conductor_for_drop(50 A, 300 ft, 14.4 V, phases: 3)', gives: '6 AWG Cu' },
  ],
  evaluate: (args, call) => {
    const { current, length, drop, phases, material, sets } = args;
    const wrong = notPhases(phases) ?? notWhole(sets, 'sets', 'sets') ?? misfitOfRun(args, call);
    if (wrong) {
      return wrong;
    }
    const dropOf = (by: typeof call, conductor: ReturnType<typeof plainConductor>): number => {
      const ohmPerKft = runImpedance(by, conductor, args);
      return ohmPerKft instanceof Failure ? Infinity : voltageDrop(by, { phases, current, ohmPerKft, length, sets });
    };
    const silent = unwatched(call);
    const sizes = isMetric(call) && !args.raceway ? metricSizes(tablesOf(call), material) : tablesOf(call).sizes;
    const chosen = sizes
      .map((size) => plainConductor(size, material))
      .find((conductor) => dropOf(silent, conductor) <= drop);
    if (!chosen) {
      return new Failure(
        `No ${material} size keeps ${figure(current)} A over ${figure(length)} ft within ${figure(drop)} V: use more sets, a higher voltage or a shorter run.`,
        'drop',
        'no-sufficient-size',
      );
    }
    dropOf(call, chosen);
    call.choose({
      result: conductorValue(chosen),
      because: `smallest size within ${figure(drop)} V`,
    });
    return chosen;
  },
});
