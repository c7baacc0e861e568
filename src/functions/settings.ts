import type { Call } from '../language';
import type { Tables } from '../tables';

/** What the trade library was made with: the code edition's tables, and the units that lengths are shown in. */
export interface TradeSettings {
  readonly tables: Tables;
  readonly system: 'US' | 'SI';
}

export const tablesOf = (call: Call): Tables => (call.settings as TradeSettings).tables;

/** True where lengths are shown in metres. */
export const isMetric = (call: Call): boolean => (call.settings as TradeSettings).system === 'SI';
