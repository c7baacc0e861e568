import * as vscode from 'vscode';
import { type SessionCell, SheetSession, writeSheet } from '../core';
import { type EditedSheet, type PlacedCell, type Spot, spotAt, WholeDocument } from './edited-sheet';
import { isTextSheet } from './is-text-sheet';
import { languageId, notebookType, settings } from './names';
import { coreText } from './positions';
import { emptyOrigin, originIn, type SheetMetadata } from './serializer';
import type { Surroundings } from './surroundings';
import { TextSheet } from './text-sheet';

/** A cell as it was last read, for the version of its document that it holds for. */
interface Read {
  readonly version: number;
  readonly cell: SessionCell;
}

/** A sheet that is open as a notebook, and its session. A cell's id in the session is the address of its document. */
export class OpenSheet implements EditedSheet {
  readonly session = new SheetSession();
  private readonly changed = new Set<string>();
  private readonly read = new WeakMap<vscode.NotebookCell, Read>();
  private seen: readonly SessionCell[] = [];
  private written: { readonly cells: readonly SessionCell[]; readonly bytes: Uint8Array } | undefined;

  constructor(
    readonly notebook: vscode.NotebookDocument,
    private readonly surroundings: Surroundings,
  ) {}

  get uri(): vscode.Uri {
    return this.notebook.uri;
  }

  /** False for a file that is shown as text only. */
  get editable(): boolean {
    return (this.notebook.metadata as Partial<SheetMetadata>).editable !== false;
  }

  get refreshesItself(): boolean {
    return vscode.workspace.getConfiguration(settings.section, this.notebook.uri).get(settings.refresh, true);
  }

  update(): void {
    const isConfigured = this.surroundings.tell(this.session, this.uri);
    const cells = this.cells();
    const isTouched = !areSame(cells, this.seen);
    this.seen = cells;
    if (!isTouched && !isConfigured) {
      return;
    }
    const changed = this.session.update(cells);
    for (const id of changed) {
      this.changed.add(id);
    }
  }

  /** The cells as the session sees them, each the same object until it changes; none of a file that is shown as text only. */
  cells(): SessionCell[] {
    return (this.editable ? this.notebook.getCells() : []).map((cell) => {
      const { version } = cell.document;
      const kind = isCalculation(cell) ? 'calculation' : 'prose';
      let read = this.read.get(cell);
      if (read?.version !== version || read.cell.kind !== kind) {
        read = { version, cell: { id: cellId(cell), kind, text: coreText(cell.document) } };
        this.read.set(cell, read);
      }
      return read.cell;
    });
  }

  /** True while a file that the sheet names is being read. */
  get isWaiting(): boolean {
    return this.surroundings.files.isAwaitedBy(this.uri);
  }

  /** The file as it would be saved now, the same array until something is typed; undefined where nothing can be saved. */
  bytes(): Uint8Array | undefined {
    if (!this.editable) {
      return undefined;
    }
    const now = this.cells();
    if (!this.written || !areSame(now, this.written.cells)) {
      const { origin } = this.notebook.metadata as Partial<SheetMetadata>;
      const cells = now.map((cell, i) => ({ ...cell, origin: originIn(this.notebook.cellAt(i).metadata) }));
      this.written = { cells: now, bytes: writeSheet(cells, origin ?? emptyOrigin) };
    }
    return this.written.bytes;
  }

  cellsIn(document: vscode.TextDocument): readonly PlacedCell[] {
    return document.languageId === languageId ? [new WholeDocument(cellId({ document }), document)] : [];
  }

  proseIn(document: vscode.TextDocument): readonly PlacedCell[] {
    return document.languageId === languageId ? [] : [new WholeDocument(cellId({ document }), document)];
  }

  placed(cell: string): PlacedCell | undefined {
    const found = this.notebook.getCells().find((candidate) => cellId(candidate) === cell);
    return found && new WholeDocument(cell, found.document);
  }

  /** The cells whose results or problems changed since this was last asked. */
  takeChanged(): ReadonlySet<string> {
    const taken = new Set(this.changed);
    this.changed.clear();
    return taken;
  }
}

const areSame = (a: readonly SessionCell[], b: readonly SessionCell[]): boolean =>
  a.length === b.length && a.every((cell, i) => cell === b[i]);

export const cellId = (cell: { readonly document: vscode.TextDocument }): string => cell.document.uri.toString();

export const isCalculation = (cell: vscode.NotebookCell): boolean =>
  cell.kind === vscode.NotebookCellKind.Code && cell.document.languageId === languageId;

/** All sheets that are open now, as notebooks and as text. */
export class OpenSheets {
  private readonly sheets = new Map<vscode.NotebookDocument, OpenSheet>();
  private readonly texts = new Map<vscode.TextDocument, TextSheet>();

  constructor(private readonly surroundings: Surroundings) {}

  /** The sheet of a notebook, opened here on first sight; undefined for any other kind of notebook. */
  of(notebook: vscode.NotebookDocument): OpenSheet | undefined {
    if (notebook.notebookType !== notebookType) {
      return undefined;
    }
    let sheet = this.sheets.get(notebook);
    if (!sheet) {
      sheet = new OpenSheet(notebook, this.surroundings);
      this.sheets.set(notebook, sheet);
    }
    return sheet;
  }

  /** The sheet of a file that is open as text, opened here on first sight; undefined for any other document. */
  ofText(document: vscode.TextDocument): TextSheet | undefined {
    if (!isTextSheet(document)) {
      return undefined;
    }
    let sheet = this.texts.get(document);
    if (!sheet) {
      sheet = new TextSheet(document, this.surroundings);
      this.texts.set(document, sheet);
    }
    return sheet;
  }

  /** The sheet that a document belongs to, a notebook's cell or a file shown as text. */
  withDocument(document: vscode.TextDocument): EditedSheet | undefined {
    for (const sheet of this.sheets.values()) {
      const { notebook } = sheet;
      if (notebook.uri.path === document.uri.path && notebook.getCells().some((cell) => cell.document === document)) {
        return sheet;
      }
    }
    return this.ofText(document);
  }

  /** The calculation cell at a position, with everything typed so far taken into account. */
  spot(document: vscode.TextDocument, position: vscode.Position): Spot | undefined {
    return spotAt(this.withDocument(document), document, position);
  }

  /** The sheet of a document and the calculation cells in it, with everything typed so far taken into account. */
  cells(document: vscode.TextDocument): readonly { readonly sheet: EditedSheet; readonly cell: PlacedCell }[] {
    const sheet = this.withDocument(document);
    sheet?.update();
    return sheet ? sheet.cellsIn(document).map((cell) => ({ sheet, cell })) : [];
  }

  /** What is typed in an open editor of a sheet; the same array until it changes. */
  typed(file: vscode.Uri): Uint8Array | undefined {
    for (const sheet of this.sheets.values()) {
      if (sheet.uri.toString() === file.toString()) {
        return sheet.bytes();
      }
    }
    return undefined;
  }

  forget(notebook: vscode.NotebookDocument): void {
    this.sheets.delete(notebook);
  }

  forgetText(document: vscode.TextDocument): void {
    this.texts.delete(document);
  }

  all(): Iterable<OpenSheet> {
    return this.sheets.values();
  }

  allTexts(): Iterable<TextSheet> {
    return this.texts.values();
  }
}
