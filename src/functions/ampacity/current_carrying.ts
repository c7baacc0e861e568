import { defineFormula, defineFunction } from '../../language';
import * as shared from '../parameters';
import { notWhole } from '../rules/whole-number';

/** What of each kind of circuit counts, with a neutral that carries the unbalance of linear loads alone, and otherwise. */
const circuits = {
  two_wire: { lines: 2, neutral: 'none', because: 'both conductors of a two-wire circuit carry the load' },
  three_wire: {
    lines: 2,
    neutral: 'not counted',
    because: 'a single-phase neutral carries the unbalance of its own lines alone (310.15(E)(1))',
  },
  three_wire_wye: {
    lines: 2,
    neutral: 'counted',
    because: 'the neutral of two lines of a wye carries about what a line does (310.15(E)(2))',
  },
  three_phase: { lines: 3, neutral: 'none', because: 'three lines, no neutral' },
  four_wire_wye: {
    lines: 3,
    neutral: 'by load',
    because: 'the neutral of a wye carries the unbalance alone (310.15(E)(1))',
  },
} as const;
type CircuitWord = keyof typeof circuits;
const words = Object.keys(circuits) as CircuitWord[];

const total = defineFormula({
  symbol: 'n_bundled',
  text: 'n * (n_lines + n_neutral)',
  units: { n: '', n_lines: '', n_neutral: '' },
  result: '',
});

export const current_carrying = defineFunction({
  name: 'current_carrying',
  summary: 'How many conductors of circuits in one raceway or cable count as current-carrying.',
  parameters: {
    circuit: {
      choice: words,
      meaning:
        'two_wire; three_wire of a single-phase system; three_wire_wye: two lines and the neutral of a wye; three_phase; four_wire_wye',
    },
    count: { unit: '', named: true, default: 1, symbol: 'n', atLeast: 1, meaning: 'circuits of that kind' },
    nonlinear: {
      ...shared.continuous,
      meaning: 'yes when the load is mostly discharge lighting, electronics or other nonlinear load',
    },
  },
  result: { unit: '', meaning: 'current-carrying conductors, for bundled' },
  formula: 'n_bundled = n * (n_lines + n_neutral)',
  assumptions: [
    'equipment grounding conductors never count',
    'each circuit has its own neutral; several kinds in one raceway are added up',
    'a nipple of no more than 24 in needs no adjustment',
  ],
  sources: ['NEC 310.15(E) (310.15(B)(5) before 2020), 310.15(F)'],
  examples: [
    { text: 'current_carrying(two_wire, count: 4)', gives: '8' },
    { text: 'current_carrying(four_wire_wye)', gives: '3' },
    { text: 'current_carrying(four_wire_wye, nonlinear: yes)', gives: '4' },
    {
      text: 'ampacity(12 AWG Cu THHN, bundled: current_carrying(two_wire, count: 4), terminals: 75 °C)',
      gives: '21 A',
    },
  ],
  evaluate: ({ circuit, count, nonlinear }, call) => {
    const wrong = notWhole(count, 'count', 'circuits');
    if (wrong) {
      return wrong;
    }
    const { lines, neutral, because } = circuits[circuit];
    const harmonic = neutral === 'by load' && nonlinear;
    if (neutral === 'by load' && !call.given('nonlinear')) {
      call.assume('mostly linear load taken: nonlinear not given');
    }
    const neutrals = neutral === 'counted' || harmonic ? 1 : 0;
    call.choose({
      symbol: { base: 'n', subscript: 'circuit' },
      result: { kind: 'text', value: String(lines + neutrals) },
      because: harmonic ? 'harmonics of a mostly nonlinear load add up in the neutral (310.15(E)(3))' : because,
    });
    return total(call, { n: count, n_lines: lines, n_neutral: neutrals });
  },
});
