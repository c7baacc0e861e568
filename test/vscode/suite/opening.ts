import * as vscode from 'vscode';
import { equal, includes, ok, until } from './expect';
import { measured } from './report';
import { cellWith, extensionId, fileInWorkspace, show, shown, writeFile } from './sheets';

const decode = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

describe('opening a sheet', () => {
  it('activates without a wish of its own', async () => {
    const extension = vscode.extensions.getExtension(extensionId);
    ok(extension, 'the extension is not there');
    const start = performance.now();
    await extension.activate();
    measured.activateMs = Math.round(performance.now() - start);
    measured.vscode = vscode.version;
    measured.worker = 'importScripts' in globalThis;
  });

  it('opens the example as a notebook, cell by cell', async () => {
    const notebook = await vscode.workspace.openNotebookDocument(fileInWorkspace('kiln.kft.md'));
    equal(notebook.notebookType, 'kilofoot-sheet', 'notebook type');
    const languages = notebook.getCells().map((cell) => cell.document.languageId);
    equal(languages.slice(0, 3), ['yaml', 'markdown', 'kilofoot'], 'languages of the first cells');
    equal(languages.filter((language) => language === 'kilofoot').length, 4, 'number of calculation cells');
  });

  it('shows results without a picker and without becoming dirty', async () => {
    const notebook = await show(fileInWorkspace('kiln.kft.md'));
    const cell = cellWith(notebook, 'element =');
    await until('results', () => shown(cell, 'text/plain'));
    includes(shown(cell, 'text/plain'), 'current');
    includes(shown(cell, 'text/markdown'), '$\\displaystyle');
    equal(cell.executionSummary?.success, true, 'success of a cell without a fault');
    equal(notebook.isDirty, false, 'dirty after opening');
  });

  it('opens `.kft` like `.kft.md`', async () => {
    const notebook = await show(await writeFile('short.kft', '```kft\nx = 3\n```\n'));
    equal(notebook.notebookType, 'kilofoot-sheet', 'notebook type');
    includes(shown(notebook.cellAt(0), 'text/plain'), 'x = 3');
  });

  it('runs all without a picker', async () => {
    const notebook = await show(await writeFile('run.kft.md', '```kft\nx = 3\n```\n\n```kft\ny = x * 2\n```\n'));
    await vscode.commands.executeCommand('notebook.execute');
    await until('the run', () => notebook.cellAt(1).executionSummary?.success);
    includes(shown(notebook.cellAt(1), 'text/plain'), '6');
    equal(notebook.isDirty, false, 'dirty after a run');
  });

  it('writes back the bytes it read, whatever they were', async () => {
    const text =
      '\uFEFF# Odd  \r\n\r\n```kft   \r\nx  =  3\r\n```\r\n\r\n\r\n~~~kft\r\ny = x * 2\r\n~~~\r\nno final newline';
    const uri = await writeFile('odd.kft.md', text);
    const notebook = await show(uri);
    await until('results', () => shown(cellWith(notebook, 'y ='), 'text/plain'));
    equal(notebook.isDirty, false, 'dirty after opening');
    // A save writes only what is dirty, so the sheet is changed and changed back.
    const edit = new vscode.WorkspaceEdit();
    const cell = cellWith(notebook, 'x  =');
    edit.insert(cell.document.uri, new vscode.Position(0, 0), ' ');
    await vscode.workspace.applyEdit(edit);
    const back = new vscode.WorkspaceEdit();
    back.delete(cell.document.uri, new vscode.Range(0, 0, 0, 1));
    await vscode.workspace.applyEdit(back);
    ok(notebook.isDirty, 'the edit did not make the sheet dirty');
    ok(await notebook.save(), 'the save was refused');
    equal(
      decode(await vscode.workspace.fs.readFile(uri)),
      decode(new TextEncoder().encode(text)),
      'bytes after saving',
    );
  });
});
