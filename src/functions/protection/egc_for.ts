import { defineFunction } from '../../language';
import { conductorType } from '../conductor';
import * as shared from '../parameters';
import { groundingConductor } from '../rules/grounding-conductor';

export const egc_for = defineFunction({
  name: 'egc_for',
  summary: 'Equipment grounding conductor for an overcurrent device.',
  parameters: {
    ocpd: { unit: 'A', symbol: 'I_n', above: 0, meaning: 'rating of the overcurrent device' },
    material: shared.material,
    area_ratio: {
      unit: '',
      named: true,
      default: 1,
      symbol: 'k_area',
      atLeast: 1,
      meaning: 'area of the circuit conductors over the smallest that would do',
    },
  },
  result: { object: conductorType, meaning: 'smallest wire-type equipment grounding conductor' },
  formula: 'A_egc = A_table * k_area',
  assumptions: [
    'wire-type conductor; a metal raceway or cable armor may serve instead',
    'in parallel sets: one of this size in each raceway',
  ],
  sources: ['NEC Table 250.122', 'NEC 250.122(B)'],
  examples: [
    { text: 'egc_for(60 A)', gives: '10 AWG Cu' },
    { text: 'egc_for(20 A, area_ratio: 26240 / 6530)', gives: '6 AWG Cu' },
    { text: 'egc_for(400 A, material: Al)', gives: '1 AWG Al' },
  ],
  evaluate: (args, call) =>
    groundingConductor(call, { ocpd: args.ocpd, material: args.material, areaRatio: args.area_ratio }),
});
