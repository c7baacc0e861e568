import type { Program } from '../language';
import type { Span } from '../text';

/** What every feature looks at. Offsets count in the text that the program was given for the cell. */
export interface EditedSheet {
  readonly program: Program;
}

/** A place in a sheet. */
export interface Place {
  /** Set for a place in another sheet of the folder tree: its path. `cell` is then its number in that file, from 0. */
  readonly file?: string;
  readonly cell: string;
  readonly span: Span;
}

/** A page to show beside the stretch of text it is about. Markdown with tables, no typeset maths, no markup. */
export interface Hover {
  readonly span: Span;
  readonly markdown: string;
}

/** What is asked of the files near a sheet: which there are, or which names one of them defines. */
export type NearbyWanted = { readonly what: 'sheet' | 'table' } | { readonly namesIn: string };

/** The answer, found by the host. */
export interface Nearby {
  /** As the sheet would write them. */
  readonly files?: readonly string[];
  readonly names?: readonly { readonly name: string; readonly text: string }[];
}

export type CompletionKind =
  | 'file'
  | 'name'
  | 'field'
  | 'function'
  | 'parameter'
  | 'unit'
  | 'word'
  | 'keyword'
  | 'snippet';

/** Something that may stand at the cursor. */
export interface Completion {
  readonly label: string;
  readonly kind: CompletionKind;
  /** One line beside the label: a value, a meaning. */
  readonly detail?: string;
  /** Markdown for who asks for more. */
  readonly page?: string;
  /** What is written; of a snippet with its places to type over, such as `${1:text}`. */
  readonly text: string;
  readonly replaces: Span;
}
