import type { Found, SmallConductorRow, Tables } from '../../tables';
import type { Conductor } from '../conductor';

/** The largest overcurrent device of NEC 240.4(D) for a small conductor, in amperes; larger sizes have none. */
export const smallConductorLimit = (tables: Tables, conductor: Conductor): Found<SmallConductorRow> | undefined =>
  tables.smallConductorLimit(conductor.size.text, conductor.material);
