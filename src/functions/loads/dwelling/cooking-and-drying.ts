import { type Call, defineFormula, Failure } from '../../../language';
import { dryerDemand } from '../../rules/dryer-demand';
import { rangeDemand } from '../../rules/range-demand';
import { loadFigure } from './load-figure';

const onThreePhase = defineFormula({
  symbol: 'P_three',
  text: '3 * P_demand / 2',
  units: { P_demand: 'kW' },
  result: 'kW',
});

export interface LikeAppliances {
  readonly count: number;
  /** Each, in VA. */
  readonly rating: number;
  readonly phases: number;
}

/** Where single-phase appliances are shared out over a four-wire wye: the most between any two phases count twice. */
function demandOf(
  call: Call,
  { count, rating, phases }: LikeAppliances,
  rule: string,
  demand: (call: Call, count: number, kilowatts: number) => number | Failure,
): number | Failure {
  if (count === 0) {
    return 0;
  }
  if (phases !== 3) {
    const kilowatts = demand(call, count, rating / 1000);
    return kilowatts instanceof Failure ? kilowatts : kilowatts * 1000;
  }
  const times = loadFigure(call, rule, 'k');
  const kilowatts = demand(call, times * Math.ceil(count / 3), rating / 1000);
  return kilowatts instanceof Failure ? kilowatts : onThreePhase(call, { P_demand: kilowatts }) * 1000;
}

/** Demand of household ranges in VA (NEC 220.55). */
export const rangesDemand = (call: Call, ranges: LikeAppliances): number | Failure =>
  demandOf(call, ranges, 'ranges on three-phase four-wire', rangeDemand);

/** Demand of household dryers in VA (NEC 220.54). */
export const dryersDemand = (call: Call, dryers: LikeAppliances): number | Failure =>
  demandOf(call, dryers, 'dryers on three-phase four-wire', dryerDemand);
