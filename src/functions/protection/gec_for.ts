import { defineFunction, Failure } from '../../language';
import { parseSize } from '../../tables';
import { conductorType } from '../conductor';
import * as shared from '../parameters';
import { plainConductor } from '../rules/plain-conductor';
import { supplyArea } from '../rules/supply-area';
import { notWhole } from '../rules/whole-number';
import { tablesOf } from '../settings';

export const gec_for = defineFunction({
  name: 'gec_for',
  summary: 'Grounding electrode conductor for a service or separately derived system.',
  parameters: {
    conductor: { ...shared.conductor, meaning: 'largest ungrounded supply conductor' },
    material: { ...shared.material, meaning: 'metal of the grounding electrode conductor' },
    sets: shared.sets,
  },
  result: { object: conductorType, meaning: 'smallest grounding electrode conductor' },
  assumptions: [
    'a rod, pipe or plate alone needs no more than 6 AWG copper, a concrete-encased electrode no more than 4 AWG copper: not applied here',
    'a parallel set counts with its total area',
  ],
  sources: ['NEC Table 250.66'],
  examples: [
    { text: 'gec_for(2/0 AWG Cu)', gives: '4 AWG Cu' },
    { text: 'gec_for(600 kcmil Cu, sets: 3)', gives: '3/0 AWG Cu' },
    { text: 'gec_for(4/0 AWG Al)', gives: '4 AWG Cu' },
  ],
  evaluate: ({ conductor, material, sets }, call) => {
    const area = notWhole(sets, 'sets', 'sets') ?? supplyArea(call, conductor, sets);
    if (area instanceof Failure) {
      return area;
    }
    const found = tablesOf(call).groundingElectrode(area, conductor.material);
    const size = found?.row[material] ? parseSize(found.row[material]) : undefined;
    if (!found || !size) {
      return new Failure('The grounding electrode table has no row for that conductor.', 'conductor', 'not-in-table');
    }
    call.table({ symbol: 'GEC', value: size.text, source: found.source, row: found.shown });
    return plainConductor(size, material);
  },
});
