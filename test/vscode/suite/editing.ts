import * as vscode from 'vscode';
import commandsOfTheEditor from '../../editor/commands-of-the-editor.json';
import { equal, includes, ok, until } from './expect';
import { cellWith, replace, show, shown, writeFile } from './sheets';

describe('editing a sheet', () => {
  it('refreshes every result that depends on an edit, and no other', async () => {
    const text = '```kft\nx = 3\n```\n\n```kft\ny = x * 2\n```\n\n```kft\nz = 5\n```\n';
    const notebook = await show(await writeFile('refresh.kft.md', text));
    await until('the kernel', () => shown(notebook.cellAt(1), 'text/plain').includes('6'));
    const written: number[] = [];
    const watch = vscode.workspace.onDidChangeNotebookDocument(({ cellChanges }) => {
      written.push(...cellChanges.filter(({ outputs }) => outputs).map(({ cell }) => cell.index));
    });
    await replace(notebook.cellAt(0), '3', '4');
    await until('the dependant', () => shown(notebook.cellAt(1), 'text/plain').includes('8'));
    watch.dispose();
    equal([...new Set(written)].sort(), [0, 1], 'cells whose outputs were written');
  });

  it('keeps an edit to its own cell when saving', async () => {
    const uri = await writeFile('local.kft.md', '# T\n\n```kft\nx = 3\n```\n\n\n*  odd   list\n');
    const notebook = await show(uri);
    await replace(cellWith(notebook, 'x ='), '3', '4');
    ok(await notebook.save(), 'the save was refused');
    const saved = new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
    equal(saved, '# T\n\n```kft\nx = 4\n```\n\n\n*  odd   list\n', 'the saved file');
  });

  it('saves a cell that was inserted', async () => {
    const uri = await writeFile('insert.kft.md', '```kft\nx = 3\n```\n');
    const notebook = await show(uri);
    const added = new vscode.NotebookCellData(vscode.NotebookCellKind.Code, 'y = x * 2', 'kilofoot');
    const edit = new vscode.WorkspaceEdit();
    edit.set(notebook.uri, [vscode.NotebookEdit.insertCells(1, [added])]);
    ok(await vscode.workspace.applyEdit(edit), 'the edit was refused');
    await until('its result', () => shown(notebook.cellAt(1), 'text/plain').includes('6'));
    ok(await notebook.save(), 'the save was refused');
    const saved = new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
    equal(saved, '```kft\nx = 3\n```\n\n```kft\ny = x * 2\n```\n', 'the saved file');
  });

  it('leaves results alone when automatic refresh is off, until asked', async () => {
    const settings = vscode.workspace.getConfiguration('kilofoot');
    const notebook = await show(await writeFile('manual.kft.md', '```kft\nx = 3\n```\n\n```kft\ny = x * 2\n```\n'));
    await until('results', () => shown(notebook.cellAt(1), 'text/plain').includes('6'));
    await settings.update('refreshAutomatically', false, vscode.ConfigurationTarget.Global);
    try {
      await replace(notebook.cellAt(0), '3', '4');
      await new Promise((resolve) => setTimeout(resolve, 300));
      includes(shown(notebook.cellAt(1), 'text/plain'), '6');
      await vscode.commands.executeCommand('kilofoot.refresh');
      await until('the refreshed result', () => shown(notebook.cellAt(1), 'text/plain').includes('8'));
    } finally {
      await settings.update('refreshAutomatically', undefined, vscode.ConfigurationTarget.Global);
    }
  });

  it('opens a starter sheet as an untitled sheet', async () => {
    await vscode.commands.executeCommand('kilofoot.newSheet', 'unmarked-heater.kft.md');
    const notebook = vscode.window.activeNotebookEditor?.notebook;
    ok(notebook?.isUntitled, 'the sheet is not untitled');
    equal(notebook.notebookType, 'kilofoot-sheet', 'notebook type');
    await until('its results', () => shown(cellWith(notebook, 'element ='), 'text/plain').includes('current'));
    includes(shown(cellWith(notebook, 'element ='), 'text/markdown'), '$\\displaystyle');
  });

  it('has every command that the walkthrough names', async () => {
    const all = new Set(await vscode.commands.getCommands());
    equal(
      commandsOfTheEditor.filter((command) => !all.has(command)),
      [],
      'commands that the editor lacks',
    );
  });
});
