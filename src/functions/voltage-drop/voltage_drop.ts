import { type Call, defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { effectiveImpedance } from '../rules/ac-impedance';
import { assumeTemperature } from '../rules/operating-temperature';
import { resistancePerLength } from '../rules/resistance-per-length';
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
    raceway: { ...shared.raceway, default: undefined, optional: true },
    power_factor: { ...shared.powerFactor, named: true, default: 1 },
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
    const { conductor, current, length, phases, temperature, sets, raceway, power_factor } = args;
    const wrong = notPhases(phases) ?? notWhole(sets, 'sets', 'sets') ?? misfit(args, call);
    if (wrong) {
      return wrong;
    }
    if (!raceway) {
      assumeTemperature(call, temperature, 'operating temperature of the table');
    }
    const ohmPerKft = raceway
      ? effectiveImpedance(call, conductor, { raceway, powerFactor: power_factor })
      : resistancePerLength(call, conductor, temperature);
    return ohmPerKft instanceof Failure ? ohmPerKft : voltageDrop(call, { phases, current, ohmPerKft, length, sets });
  },
});

/** The impedance table holds for 75 °C, and a power factor needs its reactance. */
function misfit(args: { readonly raceway?: string; readonly temperature: number }, call: Call): Failure | undefined {
  if (args.raceway && call.given('temperature') && args.temperature !== 75) {
    return new Failure(
      'With a raceway the drop goes by the AC impedance table, which holds at 75 °C: leave out the temperature or the raceway.',
      'temperature',
      'not-at-that-temperature',
    );
  }
  return !args.raceway && call.given('power_factor')
    ? new Failure(
        'A power factor needs the reactance, which hangs on the raceway: give the raceway, such as raceway: EMT, or leave the power factor out.',
        'power_factor',
        'raceway-missing',
      )
    : undefined;
}
