import { cordAmpacity } from '../../../src/tables/cord-ampacity';
import { insulation } from '../../../src/tables/insulation';
import { lockedRotor } from '../../../src/tables/locked-rotor';
import { transformerImpedance } from '../../../src/tables/transformer-impedance';
import { transformerSizes } from '../../../src/tables/transformer-sizes';
import { welderDuty } from '../../../src/tables/welder-duty';
import { about, type Comparison, type CrossCheck, neverFalls, rowsOf, tables, within } from './cross-check';

/** Dry rating that the letters of an insulation type stand for. */
function ratingByLetters(type: string): number {
  if (type.endsWith('-2') || type.includes('HH')) {
    return 90;
  }
  return type.includes('H') ? 75 : 60;
}

/** A welder that runs its motor between welds draws about a third of its current then. */
const betweenWelds = { arc: 0, resistance: 0, 'motor generator': 0.125 } as const;

export const machineAndMaterialChecks: readonly CrossCheck[] = [
  {
    title: 'temperature ratings by the letters of the type',
    formula: 'no H 60 °C, H 75 °C, HH or -2 90 °C, in dry places; -2 90 °C in wet ones too',
    source: 'how the type letters are read: common practice, no source',
    leeway: 'none',
    tables: ['insulation'],
    compare: () =>
      rowsOf(insulation)
        .filter(({ type }) => /^(TH|TW|XHH|RH)/.test(type))
        .flatMap((row) => [
          within(`${row.type}, dry`, row.ratingDryC, ratingByLetters(row.type), 0),
          ...(row.type.endsWith('-2') ? [within(`${row.type}, wet`, row.ratingWetC!, 90, 0)] : []),
        ]),
  },
  {
    title: 'ampacity columns within the insulation’s rating',
    formula: 'column ≤ rating',
    source: 'what an ampacity column is',
    leeway: 'none',
    tables: ['insulation'],
    compare: () =>
      rowsOf(insulation).flatMap((row): Comparison[] => [
        { what: `${row.type}, dry`, ours: row.columnDryC, low: 60, high: row.ratingDryC },
        ...(row.columnWetC === null
          ? []
          : [{ what: `${row.type}, wet`, ours: row.columnWetC, low: 60, high: row.ratingWetC! }]),
      ]),
  },
  {
    title: 'welder multipliers',
    formula: 'k = √d for a duty cycle d; √(d + 0.125 (1 − d)) where a motor runs on between welds',
    source: 'heating by the root of the mean square of the current; the share between welds fitted, no source',
    leeway: '0.006: two figures printed',
    tables: ['welder-duty'],
    compare: () =>
      rowsOf(welderDuty).map(({ welder, upToDuty, multiplier }) => {
        const duty = upToDuty / 100;
        const heating = Math.sqrt(duty + betweenWelds[welder] * (1 - duty));
        return within(`${welder}, ${upToDuty} %`, multiplier, heating, 0.006);
      }),
  },
  {
    title: 'locked-rotor against full-load currents',
    formula: 'I(locked rotor) = 5 to 7.5 I(full load), small motors to 10',
    source: 'usual induction motors of design B: common practice, no source',
    leeway: 'the bounds themselves',
    tables: ['locked-rotor', 'motor-currents'],
    compare: () =>
      rowsOf(lockedRotor).flatMap(({ voltage, horsepower, amperes }): Comparison[] => {
        const running = tables.motorCurrent('three-phase', voltage, horsepower)?.row.amperes;
        return running === undefined
          ? []
          : [
              {
                what: `${horsepower} hp, ${voltage} V`,
                ours: amperes / running,
                low: 5,
                high: horsepower < 3 ? 10 : 7.7,
              },
            ];
      }),
  },
  {
    title: 'cords with two and with three loaded conductors',
    formula: 'the same heat: I2 / I3 = √(3/2)',
    source: 'heat balance I² R of two against three conductors in one jacket',
    leeway: '1.1 to 1.45: whole amperes and steps of 5 A, small cords rounded most',
    tables: ['cord-ampacity'],
    compare: () =>
      rowsOf(cordAmpacity).map(({ size, twoA, threeA }) => ({ what: size, ours: twoA / threeA, low: 1.1, high: 1.45 })),
  },
  {
    title: 'larger cords carry more',
    formula: 'I rises with the area',
    source: 'Ohm’s law',
    leeway: 'none',
    tables: ['cord-ampacity'],
    compare: () => [
      ...neverFalls(rowsOf(cordAmpacity).map(({ size, twoA }) => [`${size}, two`, twoA])),
      ...neverFalls(rowsOf(cordAmpacity).map(({ size, threeA }) => [`${size}, three`, threeA])),
    ],
  },
  {
    title: 'transformer impedances',
    formula: 'z = √(r² + x²)',
    source: 'circuit theory; the three are printed apart from each other',
    leeway: '0.15 percentage points: half a unit of each last printed digit',
    tables: ['transformer-impedance'],
    compare: () =>
      rowsOf(transformerImpedance).flatMap(({ transformer, rating, percentZ, percentR, percentX }) =>
        percentR === null || percentX === null
          ? []
          : [within(`${transformer}, ${rating}`, percentZ.low, Math.hypot(percentR, percentX), 0.15)],
      ),
  },
  {
    title: 'three-phase transformers as banks of three',
    formula: 'S(three-phase) = 3 S(single-phase), 15 to 1500 kVA',
    source: 'circuit theory; preferred ratings of both',
    leeway: '0.3 %: 167, 333 and 833 kVA are rounded thirds',
    tables: ['transformer-sizes'],
    compare: () => {
      const of = (phases: string) => rowsOf(transformerSizes).filter((row) => row.phases === phases);
      const single = of('single-phase').map(({ kVA }) => 3 * kVA);
      return of('three-phase')
        .filter(({ kVA }) => kVA >= 15 && kVA <= 1500)
        .map(({ kVA }) => {
          const nearest = single.reduce((best, each) => (Math.abs(each - kVA) < Math.abs(best - kVA) ? each : best));
          return about(`${kVA} kVA`, kVA, nearest, 0.003);
        });
    },
  },
];
