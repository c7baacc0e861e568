import { parseSize } from '../../../src/tables';
import { insulatedAreas } from '../../../src/tables/insulated-areas';
import { inUnit, valueOf } from '../../functions/sheet';
import { type Comparison, type CrossCheck, rowsOf, tables, within } from './cross-check';

const circle = (d: number): number => (Math.PI / 4) * d ** 2;
const thhn = rowsOf(insulatedAreas).filter(({ types }) => types.split(' ').includes('THHN'));

/** The standard rating that a limit leads to: at or next above it, or at or next below. */
const nextUp = (limit: number): number => tables.standardRatings.find((rating) => rating >= limit - 1e-9)!;
const nextDown = (limit: number): number => tables.standardRatings.filter((rating) => rating <= limit + 1e-9).at(-1)!;

/** Sizes of the ampacity table from 14 AWG up, smallest first. */
const sizes = tables.sizes.filter(({ mm2 }) => mm2 > 2);

/** Largest general device of a small copper conductor. */
const smallLimit: Readonly<Record<string, number>> = { '14 AWG': 15, '12 AWG': 20, '10 AWG': 30 };

function racewayText(call: string): string {
  const value = valueOf(call);
  return value.kind === 'text' ? value.value : '';
}

/** Choices of a size or a rating, against a search of our own through the whole table. */
export const choiceChecks: readonly CrossCheck[] = [
  {
    title: 'smallest conductor for a current',
    formula: 'the first size with I(75 °C column) ≥ I and a device that 240.4(D) allows',
    source: 'search through NEC Table 310.16; limits of 240.4(D)',
    leeway: 'none',
    functions: ['conductor_for'],
    tables: ['ampacity', 'small-conductors'],
    compare: () =>
      [9, 14, 19, 24, 29, 34, 48, 61, 88, 101, 131, 178, 199, 256, 301, 378, 419].map((current) => {
        const expected = sizes.find(({ text }) => {
          const allowed = tables.ampacity(text)!.row.amperes.Cu[75]!;
          return allowed >= current && (smallLimit[text] ?? Number.POSITIVE_INFINITY) >= nextUp(current);
        })!;
        const value = valueOf(`conductor_for(${current} A, terminals: 75 °C)`);
        const chosen = value.kind === 'object' ? value.object.text(value.value as never) : '';
        return within(`${current} A`, parseSize(/^\S+ \S+/.exec(chosen)![0])!.mm2, expected.mm2, 0);
      }),
  },
  {
    title: 'smallest device for a load',
    formula: 'the first standard rating ≥ I, or ≥ 1.25 I where it is continuous',
    source: 'search through NEC 240.6(A)',
    leeway: 'none',
    functions: ['ocpd_for'],
    tables: ['overcurrent-ratings'],
    compare: () =>
      [11, 16, 20.5, 36, 80, 199, 333, 640].flatMap((current) => [
        within(`${current} A`, inUnit(`ocpd_for(${current} A)`, 'A'), nextUp(current), 0),
        within(
          `${current} A, continuous`,
          inUnit(`ocpd_for(${current} A, continuous: yes)`, 'A'),
          nextUp(1.25 * current),
          0,
        ),
      ]),
  },
  {
    title: 'largest device within a limit',
    formula: 'the last standard rating ≤ I',
    source: 'search through NEC 240.6(A)',
    leeway: 'none',
    functions: ['ocpd_within'],
    tables: ['overcurrent-ratings'],
    compare: () =>
      [15, 29.9, 42, 54, 113.75, 190, 320, 1100].map((limit) =>
        within(`${limit} A`, inUnit(`ocpd_within(${limit} A)`, 'A'), nextDown(limit), 0),
      ),
  },
  {
    title: 'device of a motor feeder',
    formula: 'the last standard rating ≤ largest branch device + other motors; conductors at 1.25 I_largest + the rest',
    source: 'NEC 430.24 and 430.62(A)',
    leeway: 'none',
    functions: ['motor_feeder'],
    tables: ['motor-protection', 'overcurrent-ratings'],
    compare: () =>
      [
        [14, 21, 27],
        [7.6, 4.8, 34],
        [52, 65, 124],
      ].flatMap(([a, b, c]) => {
        const devices = [a, b, c].map((current) => nextUp(2.5 * current));
        const feeder = `x = motor_feeder([${a} A, ${b} A, ${c} A], devices: [${devices.map((each) => `${each} A`).join(', ')}])`;
        return [
          within(
            `${a}, ${b} and ${c} A, conductors`,
            inUnit(`${feeder}\nx.conductor_ampacity`, 'A'),
            a + b + c + 0.25 * Math.max(a, b, c),
            1e-9,
          ),
          within(`${a}, ${b} and ${c} A, device`, inUnit(`${feeder}\nx.ocpd`, 'A'), nextDown(devices[2] + a + b), 0),
        ];
      }),
  },
  {
    title: 'devices of motors',
    formula:
      'the first standard rating ≥ 250 % (breaker), 175 % (time-delay fuse) or 300 % (fuse) of the table current',
    source: 'NEC 430.52; percentages as trade notes have them',
    leeway: 'none',
    functions: ['motor_circuit'],
    tables: ['motor-protection', 'overcurrent-ratings'],
    compare: () =>
      (
        [
          ['breaker', 2.5],
          ['time_delay_fuse', 1.75],
          ['fuse', 3],
        ] as const
      ).flatMap(([device, times]) =>
        [3, 7.5, 25, 50, 100].map((horsepower) => {
          const current = tables.motorCurrent('three-phase', 460, horsepower)!.row.amperes;
          const call = `x = motor_circuit(power: ${horsepower} hp, voltage: 460 V, device: ${device})\nx.ocpd`;
          return within(`${horsepower} hp, ${device}`, inUnit(call, 'A'), nextUp(times * current), 0);
        }),
      ),
  },
  {
    title: 'devices of transformers',
    formula: 'primary alone: first standard rating ≥ 125 %; with a secondary device: last one ≤ 250 %',
    source: 'NEC Table 450.3(B), 9 A and more',
    leeway: 'none',
    functions: ['transformer_ocpd'],
    tables: ['transformer-protection', 'overcurrent-ratings'],
    compare: () =>
      [9.5, 18.04, 36.08, 54.1, 90.2, 135, 270].flatMap((current) => [
        within(`${current} A, primary`, inUnit(`transformer_ocpd(${current} A)`, 'A'), nextUp(1.25 * current), 0),
        within(
          `${current} A, both`,
          inUnit(`transformer_ocpd(${current} A, protection: primary_with_secondary)`, 'A'),
          nextDown(2.5 * current),
          0,
        ),
      ]),
  },
  {
    title: 'smallest raceway',
    formula: 'Σ π d² / 4 ≤ 40 % of π D² / 4, and not in the next smaller size',
    source: 'geometry, from the printed diameters; NEC Chapter 9 Table 1',
    leeway: '0.5 %: diameters have three decimals',
    functions: ['raceway_for'],
    tables: ['raceway-areas', 'insulated-areas', 'raceway-fill'],
    compare: () =>
      ['EMT', 'RMC', 'PVC'].flatMap((type) =>
        ['12 AWG', '6 AWG', '2 AWG', '3/0 AWG', '350 kcmil'].flatMap((size): Comparison[] => {
          const conductors = 4 * circle(thhn.find((row) => row.size === size)!.diameterIn);
          const chosen = racewayText(`raceway_for(4 * (${size} Cu THHN), type: ${type})`);
          const bores = tables.raceways(type === 'PVC' ? 'PVC Sch 40' : type).map(({ row }) => row);
          const at = bores.findIndex(({ tradeSize }) => tradeSize === chosen);
          const room = (i: number) => 0.4 * circle(bores[i].internalDiameterIn);
          return [
            {
              what: `four ${size} in ${type} ${chosen}`,
              ours: conductors,
              low: at === 0 ? 0 : room(at - 1) * 0.995,
              high: room(at) * 1.005,
            },
          ];
        }),
      ),
  },
  {
    title: 'how full a raceway is',
    formula: 'Σ d² / D²',
    source: 'geometry, from the printed diameters',
    leeway: '1 %: diameters have three decimals',
    functions: ['raceway_fill'],
    tables: ['raceway-areas', 'insulated-areas'],
    compare: () =>
      (
        [
          ['12 AWG', '1/2'],
          ['6 AWG', '1'],
          ['3/0 AWG', '2'],
        ] as const
      ).map(([size, trade]) => {
        const d = thhn.find((row) => row.size === size)!.diameterIn;
        const outside = (3 * d ** 2) / tables.raceway('EMT', trade)!.row.internalDiameterIn ** 2;
        const ours = inUnit(`raceway_fill(3 * (${size} Cu THHN), EMT, ${trade})`, '');
        return within(`three ${size} in EMT ${trade}`, ours, outside, 0.01 * outside);
      }),
  },
];
