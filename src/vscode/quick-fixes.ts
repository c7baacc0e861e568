import * as vscode from 'vscode';
import type { Diagnostic, Fix } from '../text';
import { cellId, type OpenSheets } from './open-sheets';
import { Positions } from './positions';

/** Offers the fixes that problems bring with them. A fix that needs a person's eye is never taken by "fix all". */
export class QuickFixes implements vscode.CodeActionProvider {
  static readonly kinds = [vscode.CodeActionKind.QuickFix];

  constructor(private readonly sheets: OpenSheets) {}

  provideCodeActions(document: vscode.TextDocument, range: vscode.Range): vscode.CodeAction[] {
    const sheet = this.sheets.withDocument(document);
    sheet?.update();
    const positions = new Positions(document);
    const wanted = positions.span(range);
    const near = (sheet?.session.diagnostics(cellId({ document })) ?? []).filter(
      ({ span }) => span.start <= wanted.end && wanted.start <= span.end,
    );
    return near.flatMap((problem) => (problem.fixes ?? []).map((fix) => action(fix, problem, document, positions)));
  }
}

function action(fix: Fix, problem: Diagnostic, document: vscode.TextDocument, positions: Positions): vscode.CodeAction {
  const made = new vscode.CodeAction(fix.title, vscode.CodeActionKind.QuickFix);
  made.edit = new vscode.WorkspaceEdit();
  made.edit.set(document.uri, positions.textEdits(fix.edits));
  made.isPreferred = fix.safe && problem.fixes?.length === 1;
  made.diagnostics = vscode.languages
    .getDiagnostics(document.uri)
    .filter((shown) => shown.code === problem.code && shown.range.isEqual(positions.range(problem.span)));
  return made;
}
