import { figure, type HeaterFact } from '../../functions';
import { argumentSpan } from '../argument-places';
import { defineLint } from '../contract';
import { callNodes } from '../statement-kinds';

/** Nominal and utilization voltages of one system differ by up to 5 %: 240 V and 230 V, 120 V and 115 V. */
const sameSystem = 0.05;

/** An element on another voltage than it is rated for. */
export const otherThanRatedVoltage = defineLint({
  id: 'other-than-rated-voltage',
  summary: 'A resistance element is supplied with another voltage than it is rated for.',
  why:
    'Current follows the voltage and power its square: a 240 V element on 208 V gives three quarters of its power, on 277 V a ' +
    'third more than it stands. Where 208 V is possible, 240 V is not to be taken for granted.',
  sources: ['Joule’s law: P = U²/R', 'common practice, no source: which voltages belong to one system'],
  severity: 'information',
  silent: ['The supply is within 5 % of the rating.', 'One of the two voltages is not given.'],
  examples: {
    bad: ['tank = heater(rated_power: 4.5 kW, rated_voltage: 240 V, voltage: 208 V)\n'],
    good: ['tank = heater(rated_power: 4.5 kW, rated_voltage: 240 V, voltage: 236 V)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      for (const found of call.facts) {
        const fact = found as HeaterFact;
        const { voltage, ratedVoltage, ratedPowerW } = fact;
        if (
          fact.about !== 'heater' ||
          voltage === undefined ||
          ratedVoltage === undefined ||
          ratedPowerW === undefined
        ) {
          continue;
        }
        if (Math.abs(voltage / ratedVoltage - 1) > sameSystem) {
          const over = voltage > ratedVoltage;
          report({
            span: argumentSpan(statement, call, 'voltage'),
            severity: over ? 'warning' : 'information',
            message: `Rated ${figure(ratedVoltage)} V, supplied ${figure(voltage)} V: ${figure(fact.powerW / 1000)} kW of ${figure(ratedPowerW / 1000)} kW, ${figure((100 * fact.powerW) / ratedPowerW)} %. ${over ? 'It is overloaded: fit one rated for this supply.' : 'Size by this current, and tell the owner what it gives.'}`,
          });
        }
      }
    }
  },
});
