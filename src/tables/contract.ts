import type { TableReference } from '../text';
import type { InstallationTables } from './lookups/installations';
import type { LoadTables } from './lookups/loads';
import type { MachineTables } from './lookups/machines';

export type { AcImpedanceRow, Conduit } from './ac-impedance';
export type { CordAmpacityRow } from './cord-ampacity';
export type { DryerDemandRow } from './dryer-demand';
export type { DwellingServiceRow } from './dwelling-services';
export type { IecConductorRow } from './iec-conductors';
export type { InsulatedAreaRow } from './insulated-areas';
export type { LightingDemandRow } from './lighting-demand';
export type { LightingLoadRow } from './lighting-loads';
export type { LoadRuleRow } from './load-rules';
export type { LockedRotorRow } from './locked-rotor';
export type { MotorCurrentRow, MotorSupply } from './motor-currents';
export type { MotorProtectionRow } from './motor-protection';
export type { MultifamilyDemandRow } from './multifamily-demand';
export type { RacewayAreaRow } from './raceway-areas';
export type { RacewayFillRow } from './raceway-fill';
export type { RangeDemandRow } from './range-demand';
export type { SupplyBondingRow } from './supply-bonding';
export type { SupplyConductorRow } from './supply-conductor-row';
export type { TapRuleRow } from './tap-rules';
export type { TransformerImpedanceRow } from './transformer-impedance';
export type { TransformerProtectionRow } from './transformer-protection';
export type { TransformerSizeRow } from './transformer-sizes';
export type { WelderDutyRow } from './welder-duty';
export type { InstallationTables, LoadTables, MachineTables };

/**
 * A conductor's size as the tables key it. `text` is canonical: `12 AWG`, `1/0 AWG`, `250 kcmil`, `2.5 mm²`.
 */
export interface Size {
  readonly text: string;
  readonly unit: 'AWG' | 'kcmil' | 'mm²';
  /** Nominal metal area, for ordering and for comparing one world with the other. */
  readonly mm2: number;
}

/** A row that was found, ready to be shown: where it stands and the cells that matter, as printed. */
export interface Found<Row> {
  readonly row: Row;
  readonly source: TableReference;
  readonly shown: readonly (readonly [column: string, cell: string])[];
}

export type Material = 'Cu' | 'Al';
export type Stranding = 'solid' | 'stranded';
export type TemperatureColumn = 60 | 75 | 90;

/** NEC Chapter 9 Table 8. Resistances in Ω/kft and Ω/km at 75 °C, DC. */
export interface ConductorProperties {
  readonly size: string;
  readonly stranding: Stranding;
  readonly areaCmil: number;
  readonly areaMm2: number | null;
  readonly strands: number;
  readonly overallDiameterIn: number;
  readonly overallAreaIn2: number;
  readonly ohmPerKft: { readonly Cu: number; readonly coatedCu: number; readonly Al: number };
  readonly ohmPerKm: { readonly Cu: number; readonly coatedCu: number; readonly Al: number };
}

/** The annealed-copper wire table, 20 °C, solid. */
export interface WireTableRow {
  readonly size: string;
  readonly diameterMils: number;
  readonly areaCmil: number;
  readonly ohmPerKft: number;
  readonly poundsPerKft: number | null;
}

export interface AmpacityRow {
  readonly size: string;
  /** Amperes by metal and temperature column; null where the table has none. */
  readonly amperes: { readonly [M in Material]: { readonly [C in TemperatureColumn]: number | null } };
}

export interface AmbientCorrectionRow {
  readonly minC: number | null;
  readonly maxC: number;
  readonly factor: { readonly [C in TemperatureColumn]: number | null };
}

export interface BundlingRow {
  readonly min: number;
  readonly max: number | null;
  readonly percent: number;
}

export interface SmallConductorRow {
  readonly size: string;
  readonly material: Material | 'copper-clad aluminum';
  readonly maxOcpd: number;
  readonly condition: string | null;
}

export interface StandardRatingRow {
  readonly rating: number;
  readonly appliesTo: string;
}

export interface EquipmentGroundingRow {
  readonly ocpdNotOver: number;
  readonly Cu: string;
  readonly Al: string;
}

export interface InsulationRow {
  readonly type: string;
  readonly insulation: string;
  readonly ratingDryC: number;
  readonly ratingWetC: number | null;
  readonly columnDryC: TemperatureColumn;
  readonly columnWetC: TemperatureColumn | null;
  readonly locations: string;
  readonly notes: string | null;
}

export interface TemperatureCoefficientRow {
  readonly material: string;
  readonly grade: string | null;
  readonly referenceC: number;
  readonly alphaPerC: number | null;
  readonly resistivityOhmM: number | null;
  readonly resistivityOhmCmilPerFt: number | null;
  readonly hotC: number | null;
  readonly hotToColdRatio: number | null;
}

/** Every table of one code edition, with the workspace's own tables laid over. All lookups are pure. */
export interface Tables extends InstallationTables, MachineTables, LoadTables {
  /** `NEC 2023` */
  readonly edition: string;
  /** Sizes of the ampacity table, smallest first. */
  readonly sizes: readonly Size[];
  conductorProperties(size: string, stranding: Stranding): Found<ConductorProperties> | undefined;
  wireTable(size: string): Found<WireTableRow> | undefined;
  ampacity(size: string): Found<AmpacityRow> | undefined;
  /** The row whose range holds the ambient temperature (the printed ranges are whole degrees: 30.4 °C counts as 31 to 35). */
  ambientCorrection(ambientC: number): Found<AmbientCorrectionRow> | undefined;
  bundling(conductors: number): Found<BundlingRow> | undefined;
  smallConductorLimit(size: string, material: Material): Found<SmallConductorRow> | undefined;
  /** The smallest standard rating not below, for breakers and fuses alike (fuse-only ratings left out). */
  standardRatingAtLeast(amperes: number): Found<StandardRatingRow> | undefined;
  /** The largest standard rating not above; for a fuse its own small ratings too. */
  standardRatingAtMost(amperes: number, device?: 'breaker' | 'fuse'): Found<StandardRatingRow> | undefined;
  readonly standardRatings: readonly number[];
  equipmentGrounding(ocpd: number): Found<EquipmentGroundingRow> | undefined;
  insulation(type: string): Found<InsulationRow> | undefined;
  readonly insulationTypes: readonly string[];
  temperatureCoefficient(material: string, referenceC: number): Found<TemperatureCoefficientRow> | undefined;
}
