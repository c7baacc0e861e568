import { defineFormula, defineFunction, Failure } from '../../language';
import { parseSize } from '../../tables';
import { conductorType } from '../conductor';
import * as shared from '../parameters';
import { reaches } from '../rules/last-bits';
import { plainConductor } from '../rules/plain-conductor';
import { supplyArea } from '../rules/supply-area';
import { notWhole } from '../rules/whole-number';
import { tablesOf } from '../settings';
import { conductorValue } from '../step-values';

const shareOfArea = defineFormula({
  symbol: 'A_bond',
  text: 'k * A',
  units: { k: '%', A: 'cmil' },
  result: 'cmil',
});

export const supply_bonding_for = defineFunction({
  name: 'supply_bonding_for',
  summary: 'Grounded conductor, main or system bonding jumper, or supply-side bonding jumper.',
  parameters: {
    conductor: { ...shared.conductor, meaning: 'largest ungrounded supply conductor' },
    material: { ...shared.material, meaning: 'metal of the jumper' },
    sets: shared.sets,
  },
  result: { object: conductorType, meaning: 'smallest jumper or grounded conductor' },
  formula: 'A_bond = 12.5 % * A, over the last printed size',
  assumptions: [
    'a parallel set counts with its total area; a jumper in each raceway goes by that raceway’s conductors alone',
    'a grounded conductor must also carry its own load',
    'several rows of the table are from memory, and say so where they are used',
  ],
  sources: ['NEC Table 250.102(C)(1)'],
  examples: [
    { text: 'supply_bonding_for(3/0 AWG Cu)', gives: '4 AWG Cu' },
    { text: 'supply_bonding_for(500 kcmil Cu, sets: 3)', gives: '4/0 AWG Cu' },
  ],
  evaluate: ({ conductor, material, sets }, call) => {
    const tables = tablesOf(call);
    const area = notWhole(sets, 'sets', 'sets') ?? supplyArea(call, conductor, sets);
    if (area instanceof Failure) {
      return area;
    }
    const found = tables.supplyBonding(area, conductor.material);
    if (!found) {
      return new Failure('The bonding table has no row for that conductor.', 'conductor', 'not-in-table');
    }
    const { percentOfArea } = found.row;
    const printed = found.row[material];
    call.table({
      symbol: percentOfArea === null ? 'SSBJ' : 'k',
      value: percentOfArea ?? printed ?? '',
      ...(percentOfArea === null ? {} : { unit: '%' }),
      source: found.source,
      row: found.shown,
    });
    if (percentOfArea === null) {
      const size = printed ? parseSize(printed) : undefined;
      return size
        ? plainConductor(size, material)
        : new Failure('The bonding table has no size in that metal.', 'material', 'not-in-table');
    }
    if (material !== conductor.material) {
      return new Failure(
        'Above the last printed size the jumper goes by the area of conductors of its own metal: give the supply conductor in that metal, of the same ampacity.',
        'material',
        'not-covered',
      );
    }
    const wanted = shareOfArea(call, { k: percentOfArea, A: area });
    const size = tables.sizes.find((other) =>
      reaches(tables.conductorProperties(other.text, 'stranded')?.row.areaCmil ?? 0, wanted),
    );
    if (!size) {
      return new Failure('No single size in the tables is that large.', 'conductor', 'not-in-table');
    }
    const chosen = plainConductor(size, material);
    call.choose({ result: conductorValue(chosen), because: 'smallest size with that area' });
    return chosen;
  },
});
