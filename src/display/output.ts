import type { Drawing } from '../drawing';
import type { OtherSheet } from './other-sheet';

/**
 * What a cell shows, as data that each host draws in its own way: the notebook as Markdown with typeset maths, the
 * terminal as text, later the report. Numbers are rounded and formulas are LaTeX *and* text already; hosts only lay out.
 */
export type Block =
  /** One derivation line: `I = U / R = 207.6 V / 11.9 Ω = 17.4 A`. */
  | {
      readonly kind: 'maths';
      readonly latex: string;
      readonly text: string;
      readonly remark?: string;
      /** Where the value is taken from another sheet; the remark says so, too. */
      readonly from?: OtherSheet;
    }
  /** A value read from a table, with its row. */
  | {
      readonly kind: 'lookup';
      readonly latex: string;
      readonly text: string;
      readonly row: readonly (readonly [column: string, cell: string])[];
      readonly source: string;
      readonly fromMemory: boolean;
    }
  | { readonly kind: 'choice'; readonly text: string; readonly because: string }
  | { readonly kind: 'assumption'; readonly text: string }
  | {
      readonly kind: 'verdict';
      readonly verdict: 'yes' | 'no' | 'cannot tell';
      readonly label: string;
      readonly latex: string;
      readonly text: string;
      readonly margin?: string;
      /** Where it cannot tell: what the doubt comes from, and how to settle it. */
      readonly advice?: string;
    }
  /** A record's fields, or any other small table. */
  | {
      readonly kind: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
      /** Columns whose cells are numbers, which stand flush right. */
      readonly numeric?: readonly boolean[];
      /** True when the last row holds totals. */
      readonly totalled?: boolean;
      /** True for a schedule all of whose rows are there, which a reader may want in another order. */
      readonly sortable?: boolean;
    }
  /** A picture; `text` says all that it shows, `caption` what stands below it for those who see it. */
  | { readonly kind: 'drawing'; readonly drawing: Drawing; readonly text: string; readonly caption?: string }
  /** Steps of a call, folded when long. */
  | {
      readonly kind: 'group';
      readonly title: string;
      readonly blocks: readonly Block[];
      /** The other sheet that the title names. */
      readonly from?: OtherSheet;
    }
  /** No result, and why. */
  | { readonly kind: 'missing'; readonly name?: string; readonly text: string };
