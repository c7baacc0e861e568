import type { Codes } from '../../text';

/** Finds where a unit ends; the unit table implements it. */
export interface UnitReader {
  /** The end of the longest unit expression that begins at `offset`, or `offset` itself when none does. */
  readUnit(codes: Codes, offset: number): number;
}
