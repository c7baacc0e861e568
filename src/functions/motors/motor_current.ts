import { defineFunction } from '../../language';
import * as shared from '../parameters';
import { motorCurrent } from '../rules/motor-current';
import { notPhases } from '../rules/whole-number';

export const motor_current = defineFunction({
  name: 'motor_current',
  summary: 'Full-load current of a motor by the code’s tables.',
  parameters: {
    power: { unit: 'W', symbol: 'P', above: 0, meaning: 'rated output, usually in hp' },
    voltage: {
      unit: 'V',
      symbol: 'U',
      above: 0,
      meaning: 'rated voltage of the motor, or nominal voltage of the system',
    },
    phases: { ...shared.phases, default: 3 },
  },
  result: { unit: 'A', meaning: 'table current, for conductors and short-circuit devices; not for overloads' },
  assumptions: ['listed ratings only, nothing interpolated', '746 W to the horsepower'],
  sources: ['NEC Table 430.248', 'NEC Table 430.250', 'NEC 430.6'],
  examples: [
    { text: 'motor_current(7.5 hp, 230 V)', gives: '22 A' },
    { text: 'motor_current(5 hp, 230 V, phases: 1)', gives: '28 A' },
  ],
  evaluate: (args, call) => notPhases(args.phases) ?? motorCurrent(call, args),
});
