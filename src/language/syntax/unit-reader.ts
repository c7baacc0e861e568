/** Finds where a unit ends; the unit table implements it. */
export interface UnitReader {
  /** The end of the longest unit expression that begins at `offset`, or `offset` itself when none does. */
  readUnit(text: string, offset: number): number;
}
