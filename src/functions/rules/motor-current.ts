import { type Call, Failure } from '../../language';
import type { MotorSupply, Tables } from '../../tables';
import { figure } from '../number-text';
import { tablesOf } from '../settings';
import { cellsOf } from './shown-cells';

/** One horsepower in watts, as motor ratings count it. */
export const wattsPerHorsepower = 746;

/** System voltages that a rated motor voltage stands for, as the tables print them below their columns; 2400 V: memory. */
const systems: readonly (readonly [from: number, to: number, rated: number])[] = [
  [110, 120, 115],
  [220, 240, 230],
  [440, 480, 460],
  [550, 600, 575],
  [2400, 2400, 2300],
];

const ratedVoltage = (system: number): number | undefined =>
  systems.find(([from, to]) => from <= system && system <= to)?.[2];

/** The voltage under which the motor tables list a motor for a system; undefined where they have none. */
export function motorVoltage(tables: Tables, supply: MotorSupply, voltage: number): number | undefined {
  const listed = tables.motorVoltages(supply);
  return [voltage, ratedVoltage(voltage)].find((rated) => rated !== undefined && listed.includes(rated));
}

/**
 * Full-load current of an alternating-current motor in amperes, by NEC Tables 430.248 and 430.250: the figure that sizes
 * conductors and short-circuit devices, whatever the nameplate says. `power` is the output in W.
 */
export function motorCurrent(
  call: Call,
  motor: { readonly power: number; readonly voltage: number; readonly phases: number },
): number | Failure {
  const tables = tablesOf(call);
  const supply = motor.phases === 3 ? 'three-phase' : 'single-phase';
  const horsepower = motor.power / wattsPerHorsepower;
  const listed = tables.motorVoltages(supply);
  const voltage = motorVoltage(tables, supply, motor.voltage);
  if (voltage === undefined) {
    return new Failure(
      `The motor tables have no ${supply} motors for ${figure(motor.voltage)} V; they have ${listed.join(', ')} V.`,
      'voltage',
      'not-in-table',
    );
  }
  const found = tables.motorCurrent(supply, voltage, horsepower);
  if (!found) {
    const ratings = tables.motorCurrents(supply, voltage).map(({ row }) => row.horsepower);
    const below = ratings.filter((rating) => rating < horsepower).at(-1);
    const above = ratings.find((rating) => rating > horsepower);
    const near = [below, above].filter((rating) => rating !== undefined).map((rating) => `${figure(rating)} hp`);
    return new Failure(
      `The tables have no ${figure(horsepower)} hp motor at ${voltage} V. The nearest are ${near.join(' and ')}.`,
      'power',
      'not-in-table',
    );
  }
  if (voltage !== motor.voltage) {
    call.assume(`motor rated ${voltage} V taken for a ${figure(motor.voltage)} V system`);
  }
  call.table({
    symbol: 'I_FLC',
    value: found.row.amperes,
    unit: 'A',
    source: found.source,
    row: cellsOf(found, 'supply', 'rated voltage, V', 'rating as printed, hp', 'full-load current, A'),
  });
  return found.row.amperes;
}
