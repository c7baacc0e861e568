import * as vscode from 'vscode';
import { equal, until } from './expect';
import { writeFile } from './sheets';

/** Where the problems of a file are listed: in its cells, or in its text. */
const listed = (file: vscode.Uri) =>
  vscode.languages
    .getDiagnostics()
    .filter(([{ path, scheme }, problems]) => path === file.path && scheme !== 'untitled' && problems.length > 0)
    .map(([{ scheme }, { length }]) => `${scheme === 'vscode-notebook-cell' ? 'cell' : 'text'} ${length}`);
const isListed = (file: vscode.Uri, where: string) => () => listed(file).join() === where;

describe('a problem of a sheet', () => {
  it('is listed once, in the cell while the sheet is open as a notebook too, else in the text', async () => {
    const file = await writeFile('once.kft.md', '# T\n\n```kft\nz = 3 V + 2 A\n```\n');
    const document = await vscode.workspace.openTextDocument(file);
    await vscode.window.showTextDocument(document, { preview: false });
    await until('the problem in the text', isListed(file, 'text 1'));
    // Not by the suite's own call, after which the editor would hold the notebook for minutes.
    await vscode.commands.executeCommand('vscode.openWith', file, 'kilofoot-sheet');
    await until('the problem in the cell alone', isListed(file, 'cell 1'));
    const edit = new vscode.WorkspaceEdit();
    edit.insert(file, new vscode.Position(0, 1), ' more');
    await vscode.workspace.applyEdit(edit);
    await document.save();
    await new Promise((resolve) => setTimeout(resolve, 400)); // The text is read again when nothing is typed for a while.
    equal(listed(file), ['cell 1'], 'where it is listed after the text was typed in');
    const { tabs } = vscode.window.tabGroups.activeTabGroup;
    await vscode.window.tabGroups.close(tabs.filter(({ input }) => input instanceof vscode.TabInputNotebook));
    await until('the problem in the text again', isListed(file, 'text 1'));
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  });
});
