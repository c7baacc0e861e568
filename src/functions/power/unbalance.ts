import { defineFunction, Failure } from '../../language';
import { unbalanceOf } from '../rules/unbalance';

const line = {
  units: ['V', 'A', 'Ω'],
  atLeast: 0,
  meaning: 'line-to-line voltage, line current, or resistance of a winding',
} as const;

export const unbalance = defineFunction({
  name: 'unbalance',
  summary: 'Unbalance of three line voltages, currents or winding resistances.',
  parameters: { a: line, b: line, c: line },
  result: { unit: '%', meaning: 'largest distance from the mean, over the mean' },
  formula: 'unbalance = max(abs(x - mean)) / mean',
  assumptions: ['magnitudes only; not the negative-sequence ratio'],
  sources: ['NEMA MG 1'],
  examples: [
    { text: 'unbalance(462 V, 463 V, 455 V)', gives: '1.087 %' },
    { text: 'unbalance(480 V, 476 V, 472 V)', gives: '0.8403 %' },
    { text: 'unbalance(1.21 Ω, 1.24 Ω, 1.18 Ω)', gives: '2.479 %' },
  ],
  evaluate: ({ a, b, c }, call) => {
    const other = b.unit !== a.unit ? 'b' : c.unit !== a.unit ? 'c' : undefined;
    if (other) {
      return new Failure(
        'Voltages, currents and resistances do not mix here: give three of one kind.',
        other,
        'mixed-units',
      );
    }
    const percent = unbalanceOf({ a: a.value, b: b.value, c: c.value }, a.unit, call);
    return percent ?? new Failure('All three are zero, so their unbalance has no meaning.', 'a', 'division-by-zero');
  },
});
