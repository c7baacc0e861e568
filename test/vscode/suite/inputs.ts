import * as vscode from 'vscode';
import { equal, includes, until } from './expect';
import { fileInWorkspace, show, shown, writeFile } from './sheets';

const text = '```kft\ninput run = 85 ft from 5 ft to 400 ft "one way"\n```\n\n```kft\ntwice = run * 2\n```\n';

describe('the inputs of a sheet', () => {
  it('are changed by a command in one edit', async () => {
    const notebook = await show(await writeFile('inputs/a.kft.md', text));
    await until('results', () => shown(notebook.cellAt(1), 'text/plain').includes('170 ft'));
    const { document } = notebook.cellAt(0);
    const edits: number[] = [];
    const watch = vscode.workspace.onDidChangeTextDocument(({ document: changed, contentChanges }) => {
      if (changed === document && contentChanges.length > 0) {
        edits.push(contentChanges.length);
      }
    });
    await vscode.commands.executeCommand('kilofoot.changeInput', { name: 'run', value: '100' });
    watch.dispose();
    includes(document.getText(), 'input run = 100 ft from 5 ft');
    equal(edits, [1], 'edits');
    await until('the new result', () => shown(notebook.cellAt(1), 'text/plain').includes('200 ft'));
  });

  it('are run over a file of cases, with the results beside it', async () => {
    const cases = await writeFile('inputs/cases.csv', 'run\n10\n20 m\n900\n');
    await show(await writeFile('inputs/b.kft.md', text));
    await vscode.commands.executeCommand('kilofoot.runCases', cases);
    const found = await vscode.workspace.fs.readFile(fileInWorkspace('inputs/cases.results.csv'));
    const [head, first, , third] = new TextDecoder().decode(found).split('\n');
    equal([head, first], ['run,twice (ft),problems', '10,20,'], 'the results');
    includes(third, 'outside 5 ft to 400 ft');
  });
});

describe('cells of a spreadsheet', () => {
  it('become a schedule in the cell under the cursor', async () => {
    const notebook = await show(await writeFile('inputs/c.kft.md', '```kft\nx = 1\n```\n'));
    const { document } = notebook.cellAt(0);
    const editor = await vscode.window.showTextDocument(document);
    editor.selection = new vscode.Selection(0, 5, 0, 5);
    const cells = 'Tag\tLoad (kVA)\nP1\t9.2\nP2\t1.5\n';
    await vscode.env.clipboard.writeText(cells);
    // A page without focus may have no clipboard to read; the command then gets the cells from here.
    const hasClipboard = (await vscode.env.clipboard.readText()) === cells;
    await vscode.commands.executeCommand('kilofoot.pasteAsSchedule', ...(hasClipboard ? [] : [cells]));
    includes(document.getText().replaceAll('\r\n', '\n'), 'x = 1\nrows = schedule\n  | tag | load    |\n');
    await until('its total', () => shown(notebook.cellAt(0), 'text/plain').includes('10.7'));
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  });
});
