import { parseSize } from '../../../src/tables';
import { equipmentGrounding } from '../../../src/tables/equipment-grounding';
import { groundingElectrode } from '../../../src/tables/grounding-electrode';
import { supplyBonding } from '../../../src/tables/supply-bonding';
import { inUnit, textOf } from '../../functions/sheet';
import { type Comparison, type CrossCheck, neverFalls, rowsOf, tables, within } from './cross-check';

const mm2 = (size: string): number => parseSize(size)!.mm2;
const ohms = (size: string, metal: 'Cu' | 'Al'): number =>
  tables.conductorProperties(size, 'stranded')!.row.ohmPerKft[metal];

/** Aluminum as good a conductor as the copper beside it, and not much better. */
const alike = (what: string, Cu: string, Al: string): Comparison[] =>
  tables.conductorProperties(Cu, 'stranded') && tables.conductorProperties(Al, 'stranded')
    ? [{ what: `${what}: ${Al} Al for ${Cu} Cu`, ours: ohms(Al, 'Al') / ohms(Cu, 'Cu'), low: 0.78, high: 1.16 }]
    : [];

const sizeIn = (call: string): number => mm2(/^\S+ \S+/.exec(textOf(call))![0]);
const areas = tables.sizes.map(({ text }) => tables.conductorProperties(text, 'stranded')!.row.areaCmil);
const supplies = tables.sizes.filter(({ mm2: area }) => area > 30).map(({ text }) => text);

export const groundingChecks: readonly CrossCheck[] = [
  {
    title: 'a larger device never has a smaller grounding conductor',
    formula: 'area does not fall as the rating rises',
    source: 'what the conductor is for: a larger device lets more through before it opens',
    leeway: 'none',
    tables: ['equipment-grounding', 'overcurrent-ratings'],
    functions: ['egc_for'],
    compare: () =>
      (['Cu', 'Al'] as const).flatMap((metal) =>
        neverFalls(
          tables.standardRatings.map((rating) => [
            `${metal}, ${rating} A`,
            sizeIn(`egc_for(${rating} A, material: ${metal})`),
          ]),
        ),
      ),
  },
  {
    title: 'a larger supply never has a smaller electrode conductor or bonding jumper',
    formula: 'area does not fall as the supply conductor grows',
    source: 'what the conductor is for',
    leeway: 'none',
    tables: ['grounding-electrode', 'supply-bonding'],
    functions: ['gec_for', 'supply_bonding_for'],
    compare: () =>
      ['gec_for', 'supply_bonding_for'].flatMap((name) =>
        (['Cu', 'Al'] as const).flatMap((metal) =>
          neverFalls(
            supplies.map((size) => [
              `${name}, ${size} ${metal}`,
              sizeIn(`${name}(${size} ${metal}, material: ${metal})`),
            ]),
          ),
        ),
      ),
  },
  {
    title: 'aluminum beside copper',
    formula: 'R(Al) = R(Cu) or less, as far as sizes go',
    source: 'NEC Chapter 9 Table 8 resistances',
    leeway: '0.78 to 1.16: sizes come in steps of a quarter in area',
    tables: ['equipment-grounding', 'grounding-electrode', 'supply-bonding'],
    compare: () => [
      ...rowsOf(equipmentGrounding).flatMap((row) => alike(`up to ${row.ocpdNotOver} A`, row.Cu, row.Al)),
      ...[...rowsOf(groundingElectrode), ...rowsOf(supplyBonding)].flatMap((row) =>
        row.Cu && row.Al ? alike(row.copperRange, row.Cu, row.Al) : [],
      ),
    ],
  },
  {
    title: 'electrode conductors against bonding jumpers',
    formula: 'the two tables agree up to 1100 kcmil of copper',
    source: 'NEC Tables 250.66 and 250.102(C)(1): the same sizes but for the last row',
    leeway: 'none',
    tables: ['grounding-electrode', 'supply-bonding'],
    compare: () =>
      rowsOf(groundingElectrode).flatMap((row, i) => {
        const bonding = rowsOf(supplyBonding)[i];
        return row.Cu && bonding.Cu && row.Al && bonding.Al
          ? [
              within(`${row.copperRange}, Cu`, mm2(row.Cu), mm2(bonding.Cu), 0),
              within(`${row.aluminumRange}, Al`, mm2(row.Al), mm2(bonding.Al), 0),
            ]
          : [];
      }),
  },
  {
    title: 'grounding conductors raised in proportion',
    formula: 'A ≥ A(table) · k, and the next smaller size does not do',
    source: 'NEC 250.122(B); areas of Chapter 9 Table 8',
    leeway: 'none: the smallest size that reaches it',
    functions: ['egc_for'],
    tables: ['equipment-grounding', 'conductor-properties'],
    compare: () =>
      [60, 100, 200, 400].flatMap((rating) =>
        [1, 1.3, 1.6, 2.5].map((ratio) => {
          const area = (k: number) => {
            const size = /^\S+ \S+/.exec(textOf(`egc_for(${rating} A, area_ratio: ${k})`))![0];
            return tables.conductorProperties(size, 'stranded')!.row.areaCmil;
          };
          const needed = area(1) * ratio;
          const smallest = Math.min(...areas.filter((each) => each >= needed));
          return within(`${rating} A, ${ratio} times`, area(ratio), smallest, 0);
        }),
      ),
  },
  {
    title: 'a phase conductor in place of an electrode conductor',
    formula: 'the electrode conductor is never larger than its supply conductor',
    source: 'common practice, no source',
    leeway: 'none',
    functions: ['gec_for'],
    compare: () =>
      supplies.map((size) => ({ what: size, ours: sizeIn(`gec_for(${size} Cu)`), low: 0, high: mm2(size) })),
  },
  {
    title: 'largest device on a conductor, and the smallest for a load',
    formula: 'I ≤ ocpd_for(I), and largest_ocpd is at most one standard size above the ampacity up to 800 A',
    source: 'NEC 240.4(B) and 240.6(A)',
    leeway: 'one step of standard sizes',
    functions: ['ocpd_for', 'largest_ocpd'],
    tables: ['overcurrent-ratings'],
    compare: () =>
      ['8 AWG', '6 AWG', '3 AWG', '1/0 AWG', '250 kcmil', '500 kcmil', '750 kcmil'].map((size) => {
        const ampacity = inUnit(`ampacity(${size} Cu THHN, terminals: 75 °C)`, 'A');
        const next = tables.standardRatings.find((rating) => rating >= ampacity)!;
        return within(size, inUnit(`largest_ocpd(${size} Cu THHN, terminals: 75 °C)`, 'A'), next, 0);
      }),
  },
];
