import * as vscode from 'vscode';
import { type Allowing, allowingOf, fixAllEdits } from '../core';
import type { Diagnostic, Fix } from '../text';
import type { PlacedCell } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { codeOf } from './reference-pages';

const fixAll = vscode.CodeActionKind.SourceFixAll.append('kilofoot');

/** Offers the fixes that problems bring with them. A fix that needs a person's eye is never taken by "fix all". */
export class QuickFixes implements vscode.CodeActionProvider {
  static readonly kinds = [vscode.CodeActionKind.QuickFix, fixAll];

  constructor(private readonly sheets: OpenSheets) {}

  provideCodeActions(
    document: vscode.TextDocument,
    range: vscode.Range,
    { only }: vscode.CodeActionContext,
  ): vscode.CodeAction[] {
    if (vscode.workspace.fs.isWritableFileSystem(document.uri.scheme) === false) {
      return [];
    }
    if (only && (only.contains(fixAll) || fixAll.contains(only))) {
      return this.fixAll(document);
    }
    return this.sheets.cells(document).flatMap(({ sheet, cell }) => {
      const wanted = cell.within(range);
      const near = sheet.session
        .diagnostics(cell.id)
        .filter(({ span }) => wanted && span.start <= wanted.end && wanted.start <= span.end);
      const tree = sheet.session.program.tree(cell.id);
      return near.flatMap((problem) => [
        ...(problem.fixes ?? []).map((fix) => action(fix, problem, cell)),
        ...allow(tree && allowingOf(tree, problem), problem, cell),
      ]);
    });
  }

  private fixAll(document: vscode.TextDocument): vscode.CodeAction[] {
    const edits = this.sheets.cells(document).flatMap(({ sheet, cell }) => {
      const tree = sheet.session.program.tree(cell.id);
      return tree ? cell.textEdits(fixAllEdits(tree, sheet.session.diagnostics(cell.id))) : [];
    });
    if (edits.length === 0) {
      return [];
    }
    const made = new vscode.CodeAction(vscode.l10n.t('Fix all that is safe to fix'), fixAll);
    made.edit = new vscode.WorkspaceEdit();
    made.edit.set(document.uri, edits);
    return [made];
  }
}

/** Lets a finding stand; the cursor then stands where the reason goes. */
function allow(allowing: Allowing | undefined, problem: Diagnostic, cell: PlacedCell): vscode.CodeAction[] {
  if (!allowing) {
    return [];
  }
  const { offset, before, after } = allowing;
  const title = vscode.l10n.t('Allow {0} here, with the reason', problem.code);
  const made = new vscode.CodeAction(title, vscode.CodeActionKind.QuickFix);
  const line = new vscode.SnippetString(before).appendPlaceholder(vscode.l10n.t('reason')).appendText(after);
  made.edit = new vscode.WorkspaceEdit();
  made.edit.set(cell.document.uri, [
    vscode.SnippetTextEdit.insert(cell.range({ start: offset, end: offset }).start, line),
  ]);
  return [made];
}

function action(fix: Fix, problem: Diagnostic, cell: PlacedCell): vscode.CodeAction {
  const made = new vscode.CodeAction(fix.title, vscode.CodeActionKind.QuickFix);
  const { uri } = cell.document;
  made.edit = new vscode.WorkspaceEdit();
  made.edit.set(uri, cell.textEdits(fix.edits));
  made.isPreferred = fix.safe && problem.fixes?.length === 1;
  made.diagnostics = vscode.languages
    .getDiagnostics(uri)
    .filter((shown) => codeOf(shown) === problem.code && shown.range.isEqual(cell.range(problem.span)));
  return made;
}
