import { defineFormula, defineFunction } from '../../language';

// The textbook's A² + B² + C² − AB − BC − CA as a sum of squares, so that rounding cannot make it negative.
const neutral = defineFormula({
  symbol: 'I_N',
  text: 'sqrt(((I_A - I_B)^2 + (I_B - I_C)^2 + (I_C - I_A)^2) / 2)',
  units: { I_A: 'A', I_B: 'A', I_C: 'A' },
  result: 'A',
});

const line = (symbol: string) => ({ unit: 'A', symbol, atLeast: 0, meaning: 'current of one line' }) as const;

export const neutral_current = defineFunction({
  name: 'neutral_current',
  summary: 'Neutral current of a four-wire wye system from its three line currents.',
  parameters: { a: line('I_A'), b: line('I_B'), c: line('I_C') },
  result: { unit: 'A', meaning: 'current in the neutral' },
  formula: 'I_N = sqrt(((I_A - I_B)^2 + (I_B - I_C)^2 + (I_C - I_A)^2) / 2)',
  assumptions: [
    'same power factor on each line',
    'no harmonics: triplen harmonics of nonlinear loads add in the neutral',
  ],
  sources: ['circuit theory: sum of three phasors 120° apart'],
  examples: [
    { text: 'neutral_current(10 A, 8 A, 6 A)', gives: '3.464 A' },
    { text: 'neutral_current(12 A, 12 A, 12 A)', gives: '0 A' },
  ],
  evaluate: ({ a, b, c }, call) => neutral(call, { I_A: a, I_B: b, I_C: c }),
});
