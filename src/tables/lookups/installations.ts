import { type AcImpedanceRow, acImpedance } from '../ac-impedance';
import type { Found, Material } from '../contract';
import { type CordAmpacityRow, cordAmpacity } from '../cord-ampacity';
import { type DwellingServiceRow, dwellingServices } from '../dwelling-services';
import { groundingElectrode } from '../grounding-electrode';
import { type IecConductorRow, iecConductors } from '../iec-conductors';
import { type InsulatedAreaRow, insulatedAreas } from '../insulated-areas';
import { type RacewayAreaRow, racewayAreas } from '../raceway-areas';
import { type RacewayFillRow, racewayFill } from '../raceway-fill';
import { type SupplyBondingRow, supplyBonding } from '../supply-bonding';
import type { SupplyConductorRow } from '../supply-conductor-row';
import { type TapRuleRow, tapRules } from '../tap-rules';
import type { TableGetter } from './table-getter';

/** Raceways, impedance in conduit, services and their grounding. */
export interface InstallationTables {
  acImpedance(size: string): Found<AcImpedanceRow> | undefined;
  racewayTypes(): readonly string[];
  /** Every trade size of a type, smallest first. */
  raceways(type: string): readonly Found<RacewayAreaRow>[];
  raceway(type: string, tradeSize: string): Found<RacewayAreaRow> | undefined;
  /** By insulation type and size; `RHH*` is RHH without an outer covering. */
  insulatedArea(insulation: string, size: string): Found<InsulatedAreaRow> | undefined;
  racewayFill(conductors: number, nipple: boolean): Found<RacewayFillRow> | undefined;
  /** By the area in circular mils of the largest ungrounded supply conductor, or of a parallel set together. */
  groundingElectrode(cmil: number, material: Material): Found<SupplyConductorRow> | undefined;
  supplyBonding(cmil: number, material: Material): Found<SupplyBondingRow> | undefined;
  /** The first rating not below; absent before 2020 and above the largest rating. */
  dwellingService(rating: number): Found<DwellingServiceRow> | undefined;
  cordAmpacity(size: string): Found<CordAmpacityRow> | undefined;
  /** The rule for a feeder tap of that length in feet; absent above the longest. */
  tapRule(lengthFt: number): Found<TapRuleRow> | undefined;
  iecConductor(
    size: string,
    material: IecConductorRow['material'],
    conductorClass: IecConductorRow['class'],
  ): Found<IecConductorRow> | undefined;
}

export function installationTables(table: TableGetter): InstallationTables {
  const impedances = table(acImpedance);
  const raceways = table(racewayAreas);
  const insulated = table(insulatedAreas);
  const fills = table(racewayFill);
  const electrodes = table(groundingElectrode);
  const bonding = table(supplyBonding);
  const dwellings = table(dwellingServices);
  const cords = table(cordAmpacity);
  const taps = table(tapRules);
  const iec = table(iecConductors);
  const racewaysOfType = raceways.grouped(
    (row) => [row.type],
    (row) => row.metricDesignator,
  );
  const insulatedBy = insulated.grouped((row) => row.types.split(' ').map((type) => `${type} ${row.size}`));
  return {
    acImpedance: (size) => impedances.exact(size),
    racewayTypes: () => [...racewaysOfType().keys()],
    raceways: (type) => racewaysOfType().get(type) ?? [],
    raceway: (type, tradeSize) => raceways.exact(type, tradeSize),
    insulatedArea: (insulation, size) => insulatedBy().get(`${insulation} ${size}`)?.[0],
    racewayFill: (conductors, nipple) =>
      fills.upTo(
        conductors,
        (row) => row.max,
        (row) => row.case === (nipple ? 'nipple' : 'raceway') && conductors >= 1,
      ),
    groundingElectrode: (cmil, material) => electrodes.upTo(cmil, (row) => row.toCmil[material]),
    supplyBonding: (cmil, material) => bonding.upTo(cmil, (row) => row.toCmil[material]),
    dwellingService: (rating) => dwellings.upTo(rating, (row) => row.rating),
    cordAmpacity: (size) => cords.exact(size),
    tapRule: (lengthFt) => taps.upTo(lengthFt, (row) => row.maxLengthFt),
    iecConductor: (size, material, conductorClass) => iec.exact(size, material, conductorClass),
  };
}
