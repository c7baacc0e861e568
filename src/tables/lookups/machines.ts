import type { Found } from '../contract';
import { type LockedRotorRow, lockedRotor } from '../locked-rotor';
import { type MotorCurrentRow, type MotorSupply, motorCurrents } from '../motor-currents';
import { type MotorProtectionRow, motorProtection } from '../motor-protection';
import { type TransformerImpedanceRow, transformerImpedance } from '../transformer-impedance';
import { type TransformerProtectionRow, transformerProtection } from '../transformer-protection';
import { type TransformerSizeRow, transformerSizes } from '../transformer-sizes';
import { type WelderDutyRow, welderDuty } from '../welder-duty';
import type { TableGetter } from './table-getter';

/** Motors, welders and transformers. */
export interface MachineTables {
  /** By the motor's rated voltage and horsepower; ratings between are not interpolated. */
  motorCurrent(supply: MotorSupply, voltage: number, horsepower: number): Found<MotorCurrentRow> | undefined;
  /** Every rating at a voltage, smallest first; for the nearest ones in a message. */
  motorCurrents(supply: MotorSupply, voltage: number): readonly Found<MotorCurrentRow>[];
  motorVoltages(supply: MotorSupply): readonly number[];
  motorProtection(category: string, motor: string, device: string): Found<MotorProtectionRow> | undefined;
  /** Of a three-phase motor, by its rated voltage and horsepower. */
  lockedRotorCurrent(voltage: number, horsepower: number): Found<LockedRotorRow> | undefined;
  /** The row that a duty cycle in percent falls under. */
  welderDuty(welder: WelderDutyRow['welder'], duty: number): Found<WelderDutyRow> | undefined;
  transformerProtection(protection: string, ratedAmperes: number): Found<TransformerProtectionRow> | undefined;
  transformerSizeAtLeast(phases: TransformerSizeRow['phases'], kVA: number): Found<TransformerSizeRow> | undefined;
  transformerImpedances(): readonly Found<TransformerImpedanceRow>[];
}

export function machineTables(table: TableGetter): MachineTables {
  const currents = table(motorCurrents);
  const percentages = table(motorProtection);
  const lockedRotors = table(lockedRotor);
  const duties = table(welderDuty);
  const protection = table(transformerProtection);
  const sizes = table(transformerSizes);
  const impedances = table(transformerImpedance);
  const at = (supply: MotorSupply, voltage: number) =>
    currents
      .where((row) => row.supply === supply && row.voltage === voltage)
      .sort((a, b) => a.row.horsepower - b.row.horsepower);
  return {
    // One sixth of a horsepower is printed as a fraction and kept to four figures.
    motorCurrent: (supply, voltage, horsepower) =>
      at(supply, voltage).find(({ row }) => Math.abs(row.horsepower - horsepower) <= 0.001 * row.horsepower),
    motorCurrents: at,
    motorVoltages: (supply) => [
      ...new Set(currents.all.filter((row) => row.supply === supply).map((row) => row.voltage)),
    ],
    motorProtection: (category, motor, device) => percentages.exact(category, motor, device),
    lockedRotorCurrent: (voltage, horsepower) =>
      lockedRotors.first(
        (row) => row.voltage === voltage && Math.abs(row.horsepower - horsepower) <= 0.001 * horsepower,
      ),
    welderDuty: (welder, duty) =>
      duties.upTo(
        duty,
        (row) => row.upToDuty,
        (row) => row.welder === welder,
      ),
    transformerProtection: (kind, amperes) =>
      protection.first(
        (row) =>
          row.protection === kind &&
          (row.fromA === null || amperes >= row.fromA) &&
          (row.belowA === null || amperes < row.belowA),
      ),
    transformerSizeAtLeast: (phases, kVA) =>
      sizes.upTo(
        kVA,
        (row) => row.kVA,
        (row) => row.phases === phases,
      ),
    transformerImpedances: () => impedances.where(() => true),
  };
}
