import * as vscode from 'vscode';
import { ok } from './expect';

export const extensionId = 'kilofoot.kilofoot';

export function fileInWorkspace(name: string): vscode.Uri {
  const folder = vscode.workspace.workspaceFolders?.[0];
  ok(folder, 'the host has no workspace folder');
  return vscode.Uri.joinPath(folder.uri, name);
}

export async function writeFile(name: string, content: string | Uint8Array): Promise<vscode.Uri> {
  const uri = fileInWorkspace(name);
  await vscode.workspace.fs.writeFile(uri, typeof content === 'string' ? new TextEncoder().encode(content) : content);
  return uri;
}

/** Opens a sheet in an editor the way a double click does, without choosing a kernel. */
export async function show(uri: vscode.Uri): Promise<vscode.NotebookDocument> {
  const notebook = await vscode.workspace.openNotebookDocument(uri);
  await vscode.window.showNotebookDocument(notebook);
  return notebook;
}

export function shown(cell: vscode.NotebookCell, mime: string): string {
  const item = cell.outputs.flatMap((output) => output.items).find((candidate) => candidate.mime === mime);
  return item ? new TextDecoder().decode(item.data) : '';
}

/** The first cell whose text holds `part`. */
export function cellWith(notebook: vscode.NotebookDocument, part: string): vscode.NotebookCell {
  const cell = notebook.getCells().find((candidate) => candidate.document.getText().includes(part));
  ok(cell, `no cell holds ${part}`);
  return cell;
}

/** Puts the cursor into a cell. */
export const cursorIn = (cell: vscode.NotebookCell): Thenable<vscode.TextEditor> =>
  vscode.window.showTextDocument(cell.document);

/** Replaces the first occurrence of `old` in a cell. */
export async function replace(cell: vscode.NotebookCell, old: string, text: string): Promise<void> {
  const start = cell.document.getText().indexOf(old);
  ok(start >= 0, `the cell does not hold ${old}`);
  const at = (offset: number) => cell.document.positionAt(offset);
  const edit = new vscode.WorkspaceEdit();
  edit.replace(cell.document.uri, new vscode.Range(at(start), at(start + old.length)), text);
  ok(await vscode.workspace.applyEdit(edit), 'the edit was refused');
}

/**
 * What renaming changes. The editor's own part may not have a cell's text yet and then answers that the type is not the
 * one it expects; then it is asked again. Any other refusal is for whoever asked.
 */
export async function renamed(
  { uri }: vscode.TextDocument,
  at: vscode.Position,
  name: string,
): Promise<vscode.WorkspaceEdit> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await vscode.commands.executeCommand('vscode.executeDocumentRenameProvider', uri, at, name);
    } catch (error) {
      if (attempt === 100 || !String(error).includes('Unexpected type')) {
        throw error;
      }
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
}

/** The position `by` characters into the first occurrence of `part`. */
export function positionOf(cell: vscode.NotebookCell, part: string, by = 0): vscode.Position {
  const start = cell.document.getText().indexOf(part);
  ok(start >= 0, `the cell does not hold ${part}`);
  return cell.document.positionAt(start + by);
}

/** The code of a problem, which also carries the link to its page. */
export const codeOf = ({ code }: vscode.Diagnostic) => (typeof code === 'object' ? code.value : code);
