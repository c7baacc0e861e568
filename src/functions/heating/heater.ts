import { Absent, type Call, defineFormula, defineFunction, Failure } from '../../language';
import { leaveFact } from '../leave-fact';
import * as shared from '../parameters';
import { heaterFormulas } from '../rules/resistive-load';
import { notPhases } from '../rules/whole-number';

const atRunningTemperature = defineFormula({
  symbol: 'R_hot',
  text: 'k_hot * R',
  units: { k_hot: '', R: 'Ω' },
  result: 'Ω',
});

export const heater = defineFunction({
  name: 'heater',
  summary: 'Current and power of a resistive heater, from its resistance or its nameplate.',
  parameters: {
    resistance: {
      unit: 'Ω',
      named: true,
      optional: true,
      symbol: 'R',
      above: 0,
      meaning: 'element resistance; for three-phase between any two lines',
    },
    voltage: {
      unit: 'V',
      named: true,
      optional: true,
      symbol: 'U',
      above: 0,
      meaning: 'voltage that it is supplied with',
    },
    rated_voltage: {
      unit: 'V',
      named: true,
      optional: true,
      symbol: 'U_rated',
      above: 0,
      meaning: 'nameplate voltage',
    },
    phases: shared.phases,
    rated_power: {
      unit: 'W',
      named: true,
      optional: true,
      symbol: 'P_rated',
      above: 0,
      meaning: 'nameplate power, in place of a measured resistance',
    },
    hot_factor: {
      unit: '',
      named: true,
      optional: true,
      symbol: 'k_hot',
      atLeast: 0.9,
      atMost: 20,
      meaning: 'resistance hot over resistance as it was read; 1 where it was read hot, by volts over amperes',
    },
    kind: {
      choice: ['element', 'lamp'],
      named: true,
      optional: true,
      meaning: 'heating element if not said, or filament lamp: its cold ohms say nothing of its running watts',
    },
    isolated: {
      yesNo: true,
      named: true,
      optional: true,
      meaning: 'yes when the element was disconnected and proved dead while its resistance was read',
    },
  },
  result: {
    record: {
      current: { unit: 'A', meaning: 'line current at the supply voltage' },
      power: { unit: 'W', meaning: 'power at the supply voltage' },
      rated_power: { unit: 'W', meaning: 'power at the rated voltage' },
      cold_current: { unit: 'A', meaning: 'current as it is switched on, by the resistance as it was read' },
    },
  },
  formula: 'I = U / R, P = U^2 / R; three-phase, R between lines: I = 2 * U / (sqrt(3) * R), P = 2 * U^2 / R',
  assumptions: [
    'without a hot factor the element stays as cold as it was read: hot it draws 1 to 8 % less, so the current is an upper bound',
    'a cold filament has a tenth to a fifteenth of its hot resistance',
    'not a motor, a coil or electronics',
    'balanced three-phase element, wye or delta alike',
  ],
  sources: [
    'Ohm’s and Joule’s laws',
    'heating-alloy data sheets, and a lecture demonstration on lamps, for the hot-to-cold ratios',
  ],
  examples: [
    { text: 'element = heater(resistance: 12.8 Ω, voltage: 208 V)\nelement.current', gives: '16.25 A' },
    {
      text: 'tank = heater(rated_power: 4.5 kW, rated_voltage: 240 V, voltage: 208 V)\ntank.power in W',
      gives: '3380 W',
    },
    {
      text: 'element = heater(resistance: 14.4 Ω, voltage: 240 V, hot_factor: 1.08)\nelement.power in W',
      gives: '3704 W',
    },
    { text: 'bank = heater(resistance: 19.2 Ω, voltage: 480 V, phases: 3)\nbank.current', gives: '28.87 A' },
  ],
  evaluate: (args, call) => {
    const { voltage, rated_voltage, phases, rated_power } = args;
    const wrong = notPhases(phases);
    if (wrong) {
      return wrong;
    }
    if (args.resistance !== undefined && rated_power !== undefined) {
      return new Failure(
        'A measured resistance and a nameplate power both set the element: leave one out, and compare the two in a check.',
        'rated_power',
        'too-many-givens',
      );
    }
    const formulas = heaterFormulas(phases);
    if (args.resistance === undefined && (rated_power === undefined || rated_voltage === undefined)) {
      return new Failure(
        'Nothing says how large the element is: give its resistance, or its rated_power with its rated_voltage.',
        undefined,
        'too-few-givens',
      );
    }
    const cold =
      args.resistance ?? formulas.ratedResistance(call, { U_rated: rated_voltage ?? 0, P_rated: rated_power ?? 0 });
    if (voltage === undefined && rated_voltage === undefined) {
      return new Failure(
        'No voltage is known: give the supply voltage, the rated_voltage or both.',
        undefined,
        'too-few-givens',
      );
    }
    const hot = hotResistance(call, cold, args);
    if (hot instanceof Failure) {
      return hot;
    }
    const noSupply = new Absent('the supply voltage is not given');
    const current = voltage === undefined ? noSupply : formulas.current(call, { U: voltage, R: hot });
    const power = voltage === undefined ? noSupply : formulas.power(call, { U: voltage, R: hot });
    const ratedPower =
      rated_power ??
      (rated_voltage === undefined
        ? new Absent('the rated voltage is not given')
        : formulas.ratedPower(call, { U_rated: rated_voltage, R: hot }));
    if (typeof current === 'number' && typeof power === 'number') {
      leaveFact(call, {
        about: 'heater',
        resistanceOhm: args.resistance,
        voltage,
        ratedVoltage: rated_voltage,
        phases,
        currentA: current,
        powerW: power,
        ratedPowerW: typeof ratedPower === 'number' ? ratedPower : undefined,
        isolated: args.isolated,
      });
    }
    const coldCurrent =
      voltage === undefined
        ? noSupply
        : args.resistance === undefined
          ? new Absent('no resistance was read')
          : hot === cold
            ? current
            : formulas.current(call, { U: voltage, R: cold }, 'as it is switched on');
    return { current, power, rated_power: ratedPower, cold_current: coldCurrent };
  },
});

/** What the element or filament has while it runs; a filament read cold says nothing of it without a factor. */
function hotResistance(
  call: Call,
  cold: number,
  args: { readonly resistance?: number; readonly hot_factor?: number; readonly kind?: 'element' | 'lamp' },
): number | Failure {
  if (args.resistance === undefined) {
    return cold;
  }
  if (args.hot_factor !== undefined) {
    return atRunningTemperature(call, { k_hot: args.hot_factor, R: cold });
  }
  if (args.kind === 'lamp') {
    return new Failure(
      'The ohms of a cold filament give no running watts or amperes: add its hot_factor (10 to 15 for tungsten), say hot_factor: 1 where it was read lit by volts over amperes, or give the rated_power.',
      'resistance',
      'cold-filament',
    );
  }
  call.assume('element as cold as it was read: hot it draws 1 to 8 % less, so this current is an upper bound');
  return cold;
}
