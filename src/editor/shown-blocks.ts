import { type Block, blocksOf } from '../display';
import { phaseLoads } from '../functions';
import type { StatementResult } from '../language';
import { phaseChart } from './phase-chart';

/** What a statement shows in its cell; a panel schedule with the loads of its phases below. */
export function shownBlocks(result: StatementResult, options: { readonly rows?: number } = {}): Block[] {
  const blocks = blocksOf(result, options);
  const loads = result.value && result.taken === undefined ? phaseLoads(result.value) : undefined;
  const [table, ...rest] = blocks;
  return loads && table ? [table, phaseChart(loads), ...rest] : blocks;
}
