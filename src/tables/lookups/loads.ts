import type { Found } from '../contract';
import { type DryerDemandRow, dryerDemand } from '../dryer-demand';
import { type LightingDemandRow, lightingDemand } from '../lighting-demand';
import { type LightingLoadRow, lightingLoads } from '../lighting-loads';
import { type LoadRuleRow, loadRules } from '../load-rules';
import { type MultifamilyDemandRow, multifamilyDemand } from '../multifamily-demand';
import { type RangeDemandRow, rangeDemand } from '../range-demand';
import type { TableGetter } from './table-getter';

/** Load calculations. */
export interface LoadTables {
  lightingOccupancies(): readonly string[];
  lightingLoad(occupancy: string): Found<LightingLoadRow> | undefined;
  /** The demand steps of an occupancy, in order; those of `other` where it has none of its own. */
  lightingDemand(occupancy: string): readonly Found<LightingDemandRow>[];
  rangeDemand(appliances: number): Found<RangeDemandRow> | undefined;
  dryerDemand(dryers: number): Found<DryerDemandRow> | undefined;
  /** Of that many dwelling units together, by the optional method; absent below three. */
  multifamilyDemand(units: number): Found<MultifamilyDemandRow> | undefined;
  loadRule(rule: string): Found<LoadRuleRow> | undefined;
}

export function loadTables(table: TableGetter): LoadTables {
  const loads = table(lightingLoads);
  const demands = table(lightingDemand);
  const ranges = table(rangeDemand);
  const dryers = table(dryerDemand);
  const families = table(multifamilyDemand);
  const rules = table(loadRules);
  return {
    lightingOccupancies: () => loads.all.map((row) => row.occupancy),
    lightingLoad: (occupancy) => loads.exact(occupancy),
    lightingDemand: (occupancy) => {
      const own = demands.where((row) => row.occupancy === occupancy);
      return own.length > 0 ? own : demands.where((row) => row.occupancy === 'other');
    },
    rangeDemand: (appliances) => (appliances < 1 ? undefined : ranges.upTo(appliances, (row) => row.max)),
    dryerDemand: (count) => (count < 1 ? undefined : dryers.upTo(count, (row) => row.max)),
    multifamilyDemand: (units) => (units < 3 ? undefined : families.upTo(units, (row) => row.max)),
    loadRule: (rule) => rules.exact(rule),
  };
}
