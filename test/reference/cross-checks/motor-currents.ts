import { type MotorCurrentRow, motorCurrents } from '../../../src/tables/motor-currents';
import { inUnit } from '../../functions/sheet';
import { about, type CrossCheck, rowsOf, tables, within } from './cross-check';

/** 550 ft·lbf/s. */
const wattsPerHorsepower = 745.7;

const phaseFactor = { 'three-phase': Math.sqrt(3), 'single-phase': 1, dc: 1 } as const;
const what = (row: MotorCurrentRow): string => `${row.supply}, ${row.horsepower} hp, ${row.voltage} V`;

/** Output over volt-amperes: efficiency times power factor, or efficiency alone for direct current. */
const quotient = (row: MotorCurrentRow): number =>
  (row.horsepower * wattsPerHorsepower) / (phaseFactor[row.supply] * row.voltage * row.amperes);

/** What a motor of that output can have; small ones are worse, and the table is on the high side for them. */
const plausible = (row: MotorCurrentRow): readonly [low: number, high: number] =>
  row.supply === 'dc'
    ? [0.4, 0.95]
    : row.supply === 'single-phase'
      ? [0.15, 0.75]
      : row.horsepower < 5
        ? [0.4, 0.75]
        : [0.6, 0.95];

export const motorCurrentChecks: readonly CrossCheck[] = [
  {
    title: 'motor currents against power',
    formula: 'η cos φ = P / (√3 U I), single-phase and direct current without √3',
    source: '1 hp = 550 ft·lbf/s; efficiencies and power factors of usual motors, common practice, no source',
    leeway: 'three-phase 0.6 to 0.95, below 5 hp 0.4 to 0.75; single-phase 0.15 to 0.75; direct current 0.4 to 0.95',
    tables: ['motor-currents'],
    compare: () =>
      rowsOf(motorCurrents).map((row) => {
        const [low, high] = plausible(row);
        return { what: what(row), ours: quotient(row), low, high };
      }),
  },
  {
    title: 'half the voltage, twice the current',
    formula: 'I(U / 2) = 2 I(U) for the same output',
    source: 'definition of power',
    leeway: '3 %, or half a unit of the last printed digit of small currents',
    tables: ['motor-currents'],
    compare: () =>
      rowsOf(motorCurrents).flatMap((row) => {
        const half = tables.motorCurrent(row.supply, row.voltage / 2, row.horsepower)?.row.amperes;
        return half === undefined || row.supply === 'dc'
          ? []
          : [within(what(row), half, 2 * row.amperes, Math.max(0.03 * half, 0.15))];
      }),
  },
  {
    title: 'a motor for 208 V against one for 230 V',
    formula: 'I(208 V) = 230 / 208 · I(230 V)',
    source: 'definition of power',
    leeway: '2 %: two or three figures printed',
    tables: ['motor-currents'],
    functions: ['motor_current'],
    compare: () =>
      tables.motorCurrents('three-phase', 230).flatMap(({ row }) => {
        const at208 = tables.motorCurrent('three-phase', 208, row.horsepower);
        return at208 === undefined
          ? []
          : [
              about(
                `${row.horsepower} hp`,
                inUnit(`motor_current(${row.horsepower} hp, 208 V)`, 'A'),
                (230 / 208) * inUnit(`motor_current(${row.horsepower} hp, 230 V)`, 'A'),
                0.02,
              ),
            ];
      }),
  },
];
