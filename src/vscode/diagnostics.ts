import * as vscode from 'vscode';
import type { Diagnostic, Severity, Span } from '../text';
import { locationOf } from './edited-sheet';
import { cellId, type OpenSheet } from './open-sheets';
import { Positions } from './positions';
import { codeWithPage } from './reference-pages';
import type { TextSheet } from './text-sheet';

const weights: Readonly<Record<Severity, vscode.DiagnosticSeverity>> = {
  error: vscode.DiagnosticSeverity.Error,
  warning: vscode.DiagnosticSeverity.Warning,
  information: vscode.DiagnosticSeverity.Information,
  hint: vscode.DiagnosticSeverity.Hint,
};

/**
 * Marks a sheet's problems in its cells, or in its file where that is shown as text. While a file is open as both, its
 * cells have them: a problem is listed once.
 */
export class SheetDiagnostics implements vscode.Disposable {
  private readonly collection = vscode.languages.createDiagnosticCollection('kilofoot');
  /** The files whose cells have the problems. */
  private readonly notebooks = new Set<string>();
  private readonly texts = new Map<string, TextSheet>();

  dispose(): void {
    this.collection.dispose();
  }

  /** Puts the problems of the cells in place that changed, all in one message to the editor. */
  publish(sheet: OpenSheet, changed: ReadonlySet<string>): void {
    const file = sheet.uri.toString();
    if (!this.notebooks.has(file)) {
      this.notebooks.add(file);
      this.collection.delete(sheet.uri);
    }
    if (changed.size === 0) {
      return;
    }
    const documents = new Map(sheet.notebook.getCells().map((cell) => [cellId(cell), cell.document]));
    const entries = [...changed].map((id): [vscode.Uri, vscode.Diagnostic[] | undefined] => {
      const document = documents.get(id);
      if (!document) {
        return [vscode.Uri.parse(id), undefined]; // Its cell was deleted.
      }
      const positions = new Positions(document);
      const found = sheet.session.diagnostics(id).map((problem) =>
        toEditor(problem, positions, (cell, span) => {
          return cell === undefined
            ? [new vscode.Location(document.uri, positions.range(span))]
            : locationOf(sheet, { cell, span });
        }),
      );
      return [document.uri, found];
    });
    this.collection.set(entries);
  }

  publishText(sheet: TextSheet): void {
    this.texts.set(sheet.uri.toString(), sheet);
    if (this.notebooks.has(sheet.uri.toString())) {
      return;
    }
    const positions = new Positions(sheet.document);
    const found = sheet
      .problems()
      .map((problem) =>
        toEditor(problem, positions, (_, span) => [new vscode.Location(sheet.uri, positions.range(span))]),
      );
    this.collection.set(sheet.uri, found);
  }

  forget(notebook: vscode.NotebookDocument): void {
    for (const cell of notebook.getCells()) {
      this.collection.delete(cell.document.uri);
    }
    this.notebooks.delete(notebook.uri.toString());
    const text = this.texts.get(notebook.uri.toString());
    if (text) {
      this.publishText(text);
    }
  }

  forgetText(document: vscode.TextDocument): void {
    this.texts.delete(document.uri.toString());
    this.collection.delete(document.uri);
  }
}

function toEditor(
  problem: Diagnostic,
  positions: Positions,
  locate: (cell: string | undefined, span: Span) => readonly vscode.Location[],
): vscode.Diagnostic {
  const made = new vscode.Diagnostic(positions.range(problem.span), problem.message, weights[problem.severity]);
  made.source = 'kilofoot';
  made.code = codeWithPage(problem.code);
  made.relatedInformation = problem.related?.flatMap(({ cell, span, message }) =>
    locate(cell, span).map((location) => new vscode.DiagnosticRelatedInformation(location, message)),
  );
  return made;
}
