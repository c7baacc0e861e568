import { defineFunction, Failure } from '../../language';
import { figure } from '../number-text';
import * as shared from '../parameters';
import { notPhases } from '../rules/whole-number';
import { tablesOf } from '../settings';

/** VA in a kVA, the unit of the table. */
const kilo = 1000;

export const transformer_for = defineFunction({
  name: 'transformer_for',
  summary: 'Smallest preferred transformer rating for a load.',
  parameters: {
    load: { unit: 'VA', symbol: 'S', above: 0, meaning: 'apparent power of the load' },
    phases: { ...shared.phases, default: 3 },
  },
  result: { unit: 'kVA', meaning: 'rated apparent power' },
  formula: 'S_n >= S',
  assumptions: [
    'room for growth, harmonics and a high ambient left out',
    'three-phase: one three-phase transformer, or three equal ones of a third each',
  ],
  sources: ['ANSI/IEEE C57.12 preferred ratings'],
  examples: [
    { text: 'transformer_for(100 A * 240 V, phases: 1)', gives: '25 kVA' },
    { text: 'transformer_for(sqrt(3) * 208 V * 30 A)', gives: '15 kVA' },
  ],
  evaluate: ({ load, phases }, call) => {
    const wrong = notPhases(phases);
    if (wrong) {
      return wrong;
    }
    const supply = phases === 3 ? 'three-phase' : 'single-phase';
    const found = tablesOf(call).transformerSizeAtLeast(supply, load / kilo);
    if (!found) {
      return new Failure(
        `${figure(load / kilo)} kVA is above the largest ${supply} rating of the table: split the load.`,
        'load',
        'no-standard-size',
      );
    }
    call.table({
      symbol: 'S_n',
      value: found.row.kVA,
      unit: 'kVA',
      source: found.source,
      row: found.shown,
      remark: 'smallest preferred rating that carries the load',
    });
    return found.row.kVA;
  },
});
