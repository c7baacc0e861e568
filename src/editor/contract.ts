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

export type CompletionKind = 'name' | 'field' | 'function' | 'parameter' | 'unit' | 'word' | 'keyword';

/** Something that may stand at the cursor. */
export interface Completion {
  readonly label: string;
  readonly kind: CompletionKind;
  /** One line beside the label: a value, a meaning. */
  readonly detail?: string;
  /** Markdown for who asks for more. */
  readonly page?: string;
  readonly text: string;
  readonly replaces: Span;
}
