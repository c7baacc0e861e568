import * as vscode from 'vscode';
import { includes, until } from './expect';
import { codeOf, show, writeFile } from './sheets';

const tabs = () => vscode.window.tabGroups.all.flatMap((group) => group.tabs);
const { executeCommand } = vscode.commands;

describe('the page of a problem', () => {
  it('opens from the link on its code, as a lint’s does, out of the extension itself', async () => {
    const notebook = await show(await writeFile('pages/a.kft.md', '```kft\nx = 5 Kw\n```\n'));
    const { uri } = notebook.cellAt(0).document;
    const problem = await until('the problem', () =>
      vscode.languages.getDiagnostics(uri).find((one) => codeOf(one) === 'unknown-unit'),
    );
    const { target } = problem.code as { target: vscode.Uri };
    const [command, given] = [target.path, JSON.parse(target.query)];
    for (const [name, said] of [
      [given[0], 'capitals decide'],
      ['voltage-drop', '## When it is silent'],
    ]) {
      await executeCommand(command, name);
      await until(`the page of ${name}`, () =>
        tabs().some(({ input, label }) => input instanceof vscode.TabInputWebview && label.includes(name)),
      );
      const page = vscode.Uri.from({ scheme: 'kilofoot-page', path: `/${name}.md` });
      includes((await vscode.workspace.openTextDocument(page)).getText(), said);
      await executeCommand('workbench.action.closeActiveEditor');
    }
    await until('the sheet in front again', () => vscode.window.visibleNotebookEditors.length === 1);
  });
});
