import * as vscode from 'vscode';
import { equal, includes, until } from './expect';
import { replace, show, writeFile } from './sheets';

const text = '```kft\nU = 240 V // nameplate\nI = U / (12 Ω)\n```\n\n```kft\nP = U * I\n```\n';
const pages = () => vscode.workspace.textDocuments.filter(({ uri }) => uri.scheme === 'kilofoot-why');

describe('the chain behind a value', () => {
  it('is shown beside the sheet and follows it', async () => {
    const notebook = await show(await writeFile('why/a.kft.md', text));
    await vscode.commands.executeCommand('kilofoot.showWhy', { name: 'P' });
    await until('the page', () => pages().length === 1);
    const [page] = pages();
    includes(page.getText(), 'P = 4.8 kW');
    includes(page.getText(), '├ U = 240 V, from the nameplate');
    equal(vscode.window.visibleNotebookEditors.length, 1, 'the sheet beside it');
    await replace(notebook.cellAt(0), '240', '120');
    await until('the new chain', () => page.getText().includes('U = 120 V'));
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
  });
});
