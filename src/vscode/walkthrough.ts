import * as vscode from 'vscode';
import { contexts, notebookType } from './names';

type Step = keyof typeof contexts;

/** When each step was last ticked off. */
const ticked = new Map<Step, number>();

/** What is done again within so many ms, as letters are typed, is one thing done. */
const pause = 2000;

/**
 * Ticks a step of the walkthrough off, once it is truly done: a command that was called off has done nothing. The context
 * is set for a moment only: what is set when the walkthrough is first shown, the editor would never tick off again.
 */
export function tickOff(step: Step): void {
  const now = Date.now();
  if (now - (ticked.get(step) ?? 0) > pause) {
    ticked.set(step, now);
    for (const isDone of [true, false]) {
      void vscode.commands.executeCommand('setContext', contexts[step], isDone);
    }
  }
}

/** Ticks off that a sheet was edited, by hand or through a form, and that one was saved. */
export function followForWalkthrough(): vscode.Disposable[] {
  const { workspace } = vscode;
  const edited = workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
    if (contentChanges.length > 0 && isCellOfSheet(document)) {
      tickOff('sheetEdited');
    }
  });
  const saved = (notebook: vscode.NotebookDocument) => {
    if (notebook.notebookType === notebookType) {
      tickOff('sheetSaved');
    }
  };
  // A new sheet that is saved for the first time closes, and the file that it became opens; no save is told of.
  const became = (one: vscode.NotebookDocument) => {
    const isFile = ({ uri }: vscode.NotebookDocument) => uri.scheme !== 'untitled';
    const other = workspace.notebookDocuments.find((open) => isFile(open) !== isFile(one) && isSame(open, one));
    if (other) {
      saved(other);
    }
  };
  return [
    edited,
    workspace.onDidSaveNotebookDocument(saved),
    workspace.onDidOpenNotebookDocument(became),
    workspace.onDidCloseNotebookDocument(became),
  ];
}

const isSame = (one: vscode.NotebookDocument, other: vscode.NotebookDocument): boolean =>
  one.cellCount === other.cellCount &&
  one.getCells().every(({ document }, i) => document.getText() === other.cellAt(i).document.getText());

const isCellOfSheet = (document: vscode.TextDocument): boolean =>
  vscode.workspace.notebookDocuments.some(
    (notebook) =>
      notebook.notebookType === notebookType && notebook.getCells().some((cell) => cell.document === document),
  );
