import * as vscode from 'vscode';
import { SheetSession } from '../core';
import type { Severity } from '../text';
import { languageId, notebookType, settings } from './names';
import { coreText } from './positions';
import type { SheetMetadata } from './serializer';
import type { WorkspaceTables } from './workspace-tables';

/** An open sheet and its session. A cell's id in the session is the address of its document. */
export class OpenSheet {
  readonly session = new SheetSession();
  private readonly changed = new Set<string>();

  constructor(
    readonly notebook: vscode.NotebookDocument,
    private readonly tables: WorkspaceTables,
  ) {}

  /** False for a file that is shown as text only. */
  get editable(): boolean {
    return (this.notebook.metadata as Partial<SheetMetadata>).editable !== false;
  }

  get refreshesItself(): boolean {
    return vscode.workspace.getConfiguration(settings.section, this.notebook.uri).get(settings.refresh, true);
  }

  /** Hands the cells' present texts to the session. Costs little when nothing changed. */
  update(): void {
    const cells = this.editable ? this.notebook.getCells() : [];
    const configuration = vscode.workspace.getConfiguration(settings.section, this.notebook.uri);
    this.session.severities = configuration.get<Record<string, Severity | 'off'>>(settings.severities, {});
    this.session.tableFiles = this.tables.for(this.notebook.uri);
    const changed = this.session.update(
      cells.map((cell) => ({
        id: cellId(cell),
        kind: isCalculation(cell) ? 'calculation' : 'prose',
        text: coreText(cell.document),
      })),
    );
    for (const id of changed) {
      this.changed.add(id);
    }
  }

  /** The cells whose results or problems changed since this was last asked. */
  takeChanged(): ReadonlySet<string> {
    const taken = new Set(this.changed);
    this.changed.clear();
    return taken;
  }
}

export const cellId = (cell: { readonly document: vscode.TextDocument }): string => cell.document.uri.toString();

export const isCalculation = (cell: vscode.NotebookCell): boolean =>
  cell.kind === vscode.NotebookCellKind.Code && cell.document.languageId === languageId;

/** All sheets that are open now, by the address of the file and by that of any of their cells. */
export class OpenSheets {
  private readonly sheets = new Map<vscode.NotebookDocument, OpenSheet>();

  constructor(private readonly tables: WorkspaceTables) {}

  /** The sheet of a notebook, opened here on first sight; undefined for any other kind of notebook. */
  of(notebook: vscode.NotebookDocument): OpenSheet | undefined {
    if (notebook.notebookType !== notebookType) {
      return undefined;
    }
    let sheet = this.sheets.get(notebook);
    if (!sheet) {
      sheet = new OpenSheet(notebook, this.tables);
      this.sheets.set(notebook, sheet);
    }
    return sheet;
  }

  /** The sheet that a cell's document belongs to, with everything typed so far taken into account. */
  withDocument(document: vscode.TextDocument): OpenSheet | undefined {
    for (const sheet of this.sheets.values()) {
      if (sheet.notebook.getCells().some((cell) => cell.document === document)) {
        return sheet;
      }
    }
    return undefined;
  }

  forget(notebook: vscode.NotebookDocument): void {
    this.sheets.delete(notebook);
  }

  all(): Iterable<OpenSheet> {
    return this.sheets.values();
  }
}
