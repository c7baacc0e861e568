import * as vscode from 'vscode';
import type { EditedSheet } from './edited-sheet';
import { sameBytes } from './same-bytes';

/** True where the file's own system says that it cannot be written. An editor may be for reading only all the same. */
export async function isWriteProtected(file: vscode.Uri): Promise<boolean> {
  if (file.scheme === 'untitled') {
    return false;
  }
  if (vscode.workspace.fs.isWritableFileSystem(file.scheme) === false) {
    return true;
  }
  const { permissions = 0 } = await vscode.workspace.fs.stat(file).then(
    (found) => found,
    (): Partial<vscode.FileStat> => ({}), // It is gone, and may be written again.
  );
  return (permissions & vscode.FilePermission.Readonly) !== 0;
}

/**
 * Makes a change in the sheet in front that a person asked for. The editor itself would put it into a file for reading
 * only without a word, and drop it on closing: there nothing is changed, and the person is told. True when it was made.
 */
export async function changeSheet(sheet: EditedSheet, change: () => Thenable<boolean>): Promise<boolean> {
  if (await isWriteProtected(sheet.uri)) {
    await tellProtected(sheet.uri);
    return false;
  }
  const before = stateOf(sheet.uri);
  const isMade = await change();
  if (!isMade) {
    void vscode.window.showErrorMessage(
      vscode.l10n.t('The editor did not take the change to {0}. Try it again.', nameOf(sheet.uri)),
    );
    return false;
  }
  const isTaken = stateOf(sheet.uri).versions !== before.versions;
  if (isTaken && (await isKept(sheet))) {
    return true;
  }
  // A setting or a command made this editor one for reading only, of which an extension is told nothing.
  await putBack(sheet.uri, before.texts);
  await tellProtected(sheet.uri);
  return false;
}

/** True when the change waits for saving, or was saved at once. */
async function isKept(sheet: EditedSheet): Promise<boolean> {
  if (openAs(sheet.uri).some(({ isDirty, isUntitled }) => isDirty || isUntitled)) {
    return true;
  }
  const now = sheet.bytes();
  const saved = await vscode.workspace.fs.readFile(sheet.uri).then(
    (bytes) => bytes,
    () => undefined, // A file that is gone is written by the next save.
  );
  return !now || !saved || sameBytes(now, saved);
}

type Open = vscode.NotebookDocument | vscode.TextDocument;

function openAs(file: vscode.Uri): Open[] {
  const { notebookDocuments, textDocuments } = vscode.workspace;
  return [...notebookDocuments, ...textDocuments].filter(({ uri }) => uri.toString() === file.toString());
}

const documentsOf = (open: Open): vscode.TextDocument[] =>
  'notebookType' in open ? open.getCells().map(({ document }) => document) : [open];

/** The documents of a file with their texts, and what becomes another string as soon as one is changed. */
function stateOf(file: vscode.Uri): { texts: ReadonlyMap<vscode.TextDocument, string>; versions: string } {
  const documents = openAs(file).flatMap(documentsOf);
  return {
    texts: new Map(documents.map((document) => [document, document.getText()])),
    versions: documents.map(({ uri, version }) => `${uri} ${version}`).join('\n'),
  };
}

/** Takes a change back: texts as they were, and no cell that was not there. */
async function putBack(file: vscode.Uri, before: ReadonlyMap<vscode.TextDocument, string>): Promise<void> {
  const edit = new vscode.WorkspaceEdit();
  for (const [document, text] of before) {
    if (document.getText() !== text) {
      edit.replace(document.uri, new vscode.Range(0, 0, document.lineCount, 0), text);
    }
  }
  const added = openAs(file)
    .flatMap((open) => ('notebookType' in open ? open.getCells() : []))
    .filter(({ document }) => !before.has(document))
    .map(({ index }) => vscode.NotebookEdit.deleteCells(new vscode.NotebookRange(index, index + 1)));
  edit.set(file, added.reverse());
  await vscode.workspace.applyEdit(edit);
}

async function tellProtected(file: vscode.Uri): Promise<void> {
  const saveAs = vscode.l10n.t('Save As…');
  const message = vscode.l10n.t(
    '{0} is read-only, so nothing was changed. Save it under another name and change the copy, or let it be written to.',
    nameOf(file),
  );
  if ((await vscode.window.showWarningMessage(message, saveAs)) === saveAs) {
    await vscode.commands.executeCommand('workbench.action.files.saveAs');
  }
}

const nameOf = (uri: vscode.Uri): string => uri.path.split('/').at(-1) ?? uri.path;
