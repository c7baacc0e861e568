import { defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { lineCurrent } from '../rules/line-current';
import { notPhases } from '../rules/whole-number';

export const line_current = defineFunction({
  name: 'line_current',
  summary: 'Current in each line of a load.',
  parameters: {
    power: {
      units: ['W', 'VA'],
      symbol: 'P',
      atLeast: 0,
      meaning: 'power of the load: real in W, kW or hp, or apparent in VA',
    },
    voltage: { unit: 'V', symbol: 'U', above: 0, meaning: 'supply voltage, line to line for three-phase' },
    phases: shared.phases,
    power_factor: { ...shared.powerFactor, named: true, default: 1 },
    efficiency: {
      unit: '',
      named: true,
      default: 1,
      symbol: 'eta',
      above: 0,
      atMost: 1,
      meaning: 'output over input, where the power is an output such as motor horsepower',
    },
  },
  result: { unit: 'A', meaning: 'current in each line conductor' },
  formula: 'I = P / (U * cos_phi * eta), with sqrt(3) * U for three-phase',
  assumptions: ['balanced load', 'motor circuits are sized from the code’s full-load current tables, not from this'],
  sources: ['circuit theory'],
  examples: [
    { text: 'line_current(10 kW, 240 V)', gives: '41.67 A' },
    { text: 'line_current(45 kVA, 208 V, phases: 3)', gives: '124.9 A' },
    { text: 'line_current(12 kW, 480 V, phases: 3, power_factor: 0.85)', gives: '16.98 A' },
  ],
  evaluate: ({ power, voltage, phases, power_factor, efficiency }, call) => {
    const wrong = notPhases(phases);
    if (wrong) {
      return wrong;
    }
    const extra = ['power_factor', 'efficiency'].find((name) => call.given(name));
    if (power.unit === 'VA' && extra) {
      return new Failure(
        `${extra} does not apply to apparent power, which holds it already: leave it out, or give the load in W.`,
        extra,
        'not-with-apparent-power',
      );
    }
    return lineCurrent(call, { power, voltage, phases, powerFactor: power_factor, efficiency });
  },
});
