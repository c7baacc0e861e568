import * as vscode from 'vscode';
import { equal, includes, until } from './expect';
import { cellWith, show, writeFile } from './sheets';

describe('results written into the sheet', () => {
  it('stand behind each cell in the file once it is saved, and are told when they no longer match', async () => {
    const uri = await writeFile(
      'saved/a.kft.md',
      '# T\n\n```kft\nU = 240 V\n```\n\nText.\n\n```kft\nI = U / (12 Ω)\n```\n',
    );
    const notebook = await show(uri);
    await vscode.commands.executeCommand('kilofoot.writeResults');
    await until('the new cell', () => notebook.cellCount === 5);
    await notebook.save();
    const text = new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
    equal(
      text,
      '# T\n\n```kft\nU = 240 V\n```\n\n```kft-result\nU = 240 V\n```\n\nText.\n\n```kft\nI = U / (12 Ω)\n```\n\n' +
        '```kft-result\nI = U / 12 Ω = 240 V / 12 Ω = 20 A\n```\n',
      'the file',
    );
    const cell = cellWith(notebook, 'U = 240');
    const edit = new vscode.WorkspaceEdit();
    edit.replace(cell.document.uri, new vscode.Range(0, 4, 0, 7), '120');
    await vscode.workspace.applyEdit(edit);
    const stale = () => vscode.languages.getDiagnostics(notebook.cellAt(2).document.uri).map(({ message }) => message);
    await until('what is out of date', () => stale().length === 1);
    includes(stale()[0], 'no longer what the calculation above comes to');
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  });
});
