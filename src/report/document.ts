import { codeParts, verdictWords } from '../display';
import type { Drawing } from '../drawing';
import type { PictureFile } from './picture';

/**
 * A report as data, before any format: what it says and in which order. Numbers are rounded and formulas are LaTeX *and*
 * text already; a writer only lays out.
 */
export interface ReportDocument {
  /** What kind of paper it is, such as `Load memo`. */
  readonly kind: string;
  readonly title: string;
  /** Title block: label and text, empty lines to be filled in by hand included. */
  readonly fields: readonly (readonly [label: string, text: string])[];
  /** As the sheet states them; absent when it does not. */
  readonly date?: string;
  readonly revision?: string;
  readonly author?: string;
  /** What it is printed on: letter for sheets in US units, else A4. */
  readonly paper: 'letter' | 'A4';
  /** What the reader must know before anything else: values that are missing, checks that fail. */
  readonly banners: readonly Banner[];
  readonly sections: readonly Section[];
  /** The same figures as plain tables with numbers, for CSV and spreadsheets. */
  readonly data: readonly DataTable[];
}

export interface Banner {
  readonly tone: 'error' | 'warning';
  readonly title: string;
  readonly items: readonly string[];
}

export interface Section {
  readonly title: string;
  readonly parts: readonly Part[];
}

export type Part =
  | { readonly kind: 'heading'; readonly depth: 3 | 4 | 5; readonly content: readonly Inline[] }
  | { readonly kind: 'paragraph'; readonly content: readonly Inline[] }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Part[])[] }
  | { readonly kind: 'quote'; readonly parts: readonly Part[] }
  | { readonly kind: 'code'; readonly text: string }
  | Table
  /** One line of a derivation, with what stands behind it: a remark, or a table and its row. */
  | ({ readonly kind: 'step'; readonly note?: readonly Inline[] } & Maths)
  | ({
      readonly kind: 'verdict';
      readonly verdict: Verdict;
      /** Empty when the comparison says it all. */
      readonly label: string;
      readonly notes: readonly string[];
    } & Maths)
  /** A picture, with all that it says in words for a format that holds none. */
  | { readonly kind: 'drawing'; readonly drawing: Drawing; readonly text: string; readonly caption?: string }
  /** A picture of the prose; `alt` says what is on it. */
  | { readonly kind: 'picture'; readonly alt: string; readonly source: string; readonly file: PictureFile }
  /** The steps of one call. */
  | { readonly kind: 'group'; readonly title: readonly Inline[]; readonly parts: readonly Part[] }
  | { readonly kind: 'signatures'; readonly lines: readonly { readonly role: string; readonly name: string }[] };

export type Verdict = 'yes' | 'no' | 'cannot tell';

export interface Maths {
  readonly latex: string;
  readonly text: string;
}

export interface Table {
  readonly kind: 'table';
  readonly caption?: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Totals, set apart below the rows. */
  readonly totals?: readonly (readonly Cell[])[];
}

export interface Column {
  readonly title: string;
  readonly align?: 'right';
  /** Share of the width compared with the other columns; 1 when absent. */
  readonly width?: number;
  /** In letters: the longest word in it, and the longest text, where that is not left to `width`. */
  readonly letters?: { readonly word: number; readonly text: number };
}

export type Cell = readonly Inline[];

export type Inline =
  | { readonly kind: 'text'; readonly text: string; readonly style?: 'strong' | 'emphasis' | 'code' }
  | ({ readonly kind: 'maths' } & Maths)
  | { readonly kind: 'verdict'; readonly verdict: Verdict; readonly text: string }
  | { readonly kind: 'link'; readonly text: string; readonly target: string }
  /** A file near the report; `target` is the way to it, encoded as the reference of a web page. */
  | { readonly kind: 'file'; readonly text: string; readonly target: string }
  | { readonly kind: 'break' };

/** A table of plain values. A column's unit belongs into its heading. */
export interface DataTable {
  readonly name: string;
  readonly columns: readonly { readonly title: string; readonly unit?: string }[];
  readonly rows: readonly (readonly (string | number | undefined)[])[];
}

/** A verdict by its sign and word. */
export const verdictInline = (verdict: Verdict): Inline => ({ kind: 'verdict', verdict, text: verdictWords[verdict] });

/** Plain text as content. */
export const words = (text: string, style?: 'strong' | 'emphasis' | 'code'): Inline[] =>
  text === '' ? [] : [{ kind: 'text', text, ...(style && { style }) }];

export const paragraph = (text: string): Part => ({ kind: 'paragraph', content: words(text) });

/** A message's text: what stands between backticks is code. */
export const message = (text: string): Inline[] =>
  codeParts(text).flatMap((part) => words(part.text, part.isCode ? 'code' : undefined));

/** A list with one paragraph an item. */
export const bullets = (items: readonly string[]): Part => ({
  kind: 'list',
  ordered: false,
  items: items.map((item) => [{ kind: 'paragraph', content: message(item) }]),
});

/** A table whose cells are plain text. */
export const textTable = (columns: readonly Column[], rows: readonly (readonly string[])[]): Table => ({
  kind: 'table',
  columns,
  rows: rows.map((row) => row.map((cell) => message(cell))),
});

/** Content as plain text. */
export const plain = (content: readonly Inline[]): string =>
  content.map((inline) => (inline.kind === 'break' ? ' ' : inline.text)).join('');
