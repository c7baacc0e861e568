/**
 * The words that the syntax must know before it can read a line. The library hands them in, so that
 * the language itself knows no trade.
 */
export interface Vocabulary {
  /** Units that make a number a size when a designation word follows (`AWG`, `kcmil`, `MCM`, `mm²`). */
  readonly sizeUnits: ReadonlySet<string>;
  /** Size units that make a size even with no word after it: `12 AWG` is never an area. */
  readonly alwaysSizeUnits: ReadonlySet<string>;
  /** Words that may follow a size: metals, stranding, insulation types. Hyphens are part of a word (`XHHW-2`). */
  readonly designationWords: ReadonlySet<string>;
  /** Further words with hyphens that are one word wherever they stand (`NM-B`), beside the designation words. */
  readonly hyphenatedWords: ReadonlySet<string>;
}
