import { Node } from '../../language';
import { defineLint } from '../contract';

/** Real, apparent and reactive power treated as one. The language finds it before anything runs. */
export const mixedPowerKinds = defineLint({
  id: 'mixed-power-kinds',
  summary: 'Watts, volt-amperes or vars are added, compared or given for one another.',
  why:
    'Real, apparent and reactive power have one dimension and are not one quantity: 5 kW and 3 kVA make no 8 of anything. ' +
    'They are brought together by the power factor, at right angles.',
  sources: ['IEC 80000-6: active, reactive and apparent power'],
  severity: 'error',
  silent: [
    'Both sides are of one kind.',
    'The power factor stands between them: `real_power`, `apparent_power`, `reactive_power`.',
    'Volts times amperes is of no kind yet and joins either.',
  ],
  examples: {
    bad: ['total = 5 kW + 3 kVA\n', 'x = 5 kW\ncheck x <= 6 kVA "within the transformer"\n'],
    good: ['total = 5 kW + real_power(3 kVA, 0.9)\n'],
  },
  looksAt: [Node.Binary],
});
