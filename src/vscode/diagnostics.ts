import * as vscode from 'vscode';
import type { Diagnostic, Severity } from '../text';
import { cellId, type OpenSheet } from './open-sheets';
import { Positions } from './positions';

const weights: Readonly<Record<Severity, vscode.DiagnosticSeverity>> = {
  error: vscode.DiagnosticSeverity.Error,
  warning: vscode.DiagnosticSeverity.Warning,
  information: vscode.DiagnosticSeverity.Information,
  hint: vscode.DiagnosticSeverity.Hint,
};

/** Marks a sheet's problems in its cells. */
export class SheetDiagnostics implements vscode.Disposable {
  private readonly collection = vscode.languages.createDiagnosticCollection('kilofoot');

  dispose(): void {
    this.collection.dispose();
  }

  publish(sheet: OpenSheet): void {
    const changed = sheet.takeChanged();
    const documents = new Map(sheet.notebook.getCells().map((cell) => [cellId(cell), cell.document]));
    for (const cell of sheet.notebook.getCells()) {
      const id = cellId(cell);
      if (changed.has(id)) {
        this.collection.set(cell.document.uri, toEditor(sheet.session.diagnostics(id), cell.document, documents));
      }
    }
    for (const id of changed) {
      if (!documents.has(id)) {
        this.collection.delete(vscode.Uri.parse(id)); // Its cell was deleted.
      }
    }
  }

  forget(notebook: vscode.NotebookDocument): void {
    for (const cell of notebook.getCells()) {
      this.collection.delete(cell.document.uri);
    }
  }
}

function toEditor(
  found: readonly Diagnostic[],
  document: vscode.TextDocument,
  documents: ReadonlyMap<string, vscode.TextDocument>,
): vscode.Diagnostic[] {
  const positions = new Positions(document);
  return found.map((problem) => {
    const made = new vscode.Diagnostic(positions.range(problem.span), problem.message, weights[problem.severity]);
    made.source = 'kilofoot';
    made.code = problem.code;
    made.relatedInformation = problem.related?.flatMap((place) => {
      const there = place.cell === undefined ? document : documents.get(place.cell);
      const range = there && new Positions(there).range(place.span);
      return range
        ? [new vscode.DiagnosticRelatedInformation(new vscode.Location(there.uri, range), place.message)]
        : [];
    });
    return made;
  });
}
