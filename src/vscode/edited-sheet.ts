import * as vscode from 'vscode';
import type { Place, SheetSession } from '../core';
import type { Edit, Span } from '../text';
import { Positions } from './positions';

/**
 * A sheet that is being worked on, as a notebook or as text. Features of the language see only this, so that they are
 * the same in both.
 */
export interface EditedSheet {
  readonly session: SheetSession;
  /** The file. */
  readonly uri: vscode.Uri;
  /** False for a file that nothing may be evaluated in. */
  readonly editable: boolean;
  /** True while a file that the sheet names is being read. */
  readonly isWaiting: boolean;
  /** Hands everything typed so far to the session. Costs little when nothing changed. */
  update(): void;
  /** The file as it would be saved now; undefined where nothing can be saved. */
  bytes(): Uint8Array | undefined;
  /** The calculation cells that a document holds: a notebook's cell is one, a file shown as text holds them all. */
  cellsIn(document: vscode.TextDocument): readonly PlacedCell[];
  /** The prose cells that a document holds. */
  proseIn(document: vscode.TextDocument): readonly PlacedCell[];
  /** A cell of the session in the editor, prose too; undefined when it is no more. */
  placed(cell: string): PlacedCell | undefined;
}

/** A cell of the session where it stands in a document of the editor. */
export abstract class PlacedCell {
  constructor(
    readonly id: string,
    readonly document: vscode.TextDocument,
    protected readonly positions: Positions,
  ) {}

  /** The offset in the cell; undefined when the position lies outside the cell. */
  abstract offset(position: vscode.Position): number | undefined;

  /** A stretch of the cell as a stretch of the document's text. */
  protected abstract inDocument(span: Span): Span;

  /** The part of a range that lies in the cell. */
  abstract within(range: vscode.Range): Span | undefined;

  range(span: Span): vscode.Range {
    return this.positions.range(this.inDocument(span));
  }

  location(span: Span): vscode.Location {
    return new vscode.Location(this.document.uri, this.range(span));
  }

  textEdits(edits: readonly Edit[]): vscode.TextEdit[] {
    return edits.map((edit) => vscode.TextEdit.replace(this.range(edit.span), edit.newText));
  }
}

/** A notebook's cell: the whole of its document. */
export class WholeDocument extends PlacedCell {
  constructor(id: string, document: vscode.TextDocument) {
    super(id, document, new Positions(document));
  }

  offset(position: vscode.Position): number {
    return this.positions.offset(position);
  }

  within(range: vscode.Range): Span {
    return this.positions.span(range);
  }

  protected inDocument(span: Span): Span {
    return span;
  }
}

/** Where in a sheet a position of a document lies. */
export interface Spot {
  readonly sheet: EditedSheet;
  readonly session: SheetSession;
  readonly cell: PlacedCell;
  readonly offset: number;
}

/** The calculation cell at a position, with everything typed so far taken into account. */
export function spotAt(
  sheet: EditedSheet | undefined,
  document: vscode.TextDocument,
  position: vscode.Position,
): Spot | undefined {
  sheet?.update();
  for (const cell of sheet?.cellsIn(document) ?? []) {
    const offset = cell.offset(position);
    if (sheet && offset !== undefined) {
      return { sheet, session: sheet.session, cell, offset };
    }
  }
  return undefined;
}

/** A place of a session in the editor. */
export const locationOf = (sheet: EditedSheet, { cell, span }: Place): vscode.Location[] => {
  const placed = sheet.placed(cell);
  return placed ? [placed.location(span)] : [];
};
