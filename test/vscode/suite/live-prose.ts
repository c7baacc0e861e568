import * as vscode from 'vscode';
import { equal, includes, ok, until } from './expect';
import { cellWith, positionOf, replace, show, shown, writeFile } from './sheets';

const text = '```kft\nx = 3 A\ny = 2 A\n```\n\nIt draws `= x in mA` beside `= y`.\n\n```kft\nz = x\n```\n';
const live = (cell: vscode.NotebookCell) => JSON.stringify(cell.metadata.live);

describe('live values in prose', () => {
  it('are there on opening, follow an edit, and change neither file nor undo', async () => {
    const uri = await writeFile('live.kft.md', text);
    const notebook = await show(uri);
    const prose = cellWith(notebook, 'It draws');
    const before = '[["x in mA","3000 mA"],["y","2 A"]]';
    equal(live(prose), before, 'values on opening');
    await until('the kernel', () => shown(cellWith(notebook, 'z ='), 'text/plain').includes('3 A'));
    equal(notebook.isDirty, false, 'dirty after opening');
    await replace(cellWith(notebook, 'x ='), '3', '4');
    await until('the new value', () => live(prose) === '[["x in mA","4000 mA"],["y","2 A"]]');
    ok(await notebook.save(), 'the save was refused');
    equal(notebook.isDirty, false, 'dirty after saving');
    const saved = new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
    equal(saved, text.replace('3 A', '4 A'), 'the saved file');
  });

  it('do not make a sheet dirty when they change for a file beside it', async () => {
    const source = await writeFile('live-source.kft.md', '```kft\nx = 3 A\n```\n');
    const sheet = '```kft\nuse x from "live-source.kft.md"\n```\n\nIt draws `= x`.\n';
    const notebook = await show(await writeFile('live-user.kft.md', sheet));
    const prose = cellWith(notebook, 'It draws');
    await until('the value', () => live(prose) === '[["x","3 A"]]');
    equal(notebook.isDirty, false, 'dirty after the first value');
    await vscode.workspace.fs.writeFile(source, new TextEncoder().encode('```kft\nx = 5 A\n```\n'));
    await until('the changed value', () => live(prose) === '[["x","5 A"]]');
    equal(notebook.isDirty, false, 'dirty after the changed value');
  });

  it('tell on hover what they show', async () => {
    const notebook = await show(await writeFile('live-hover.kft.md', text));
    const prose = cellWith(notebook, 'It draws');
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
      'vscode.executeHoverProvider',
      prose.document.uri,
      positionOf(prose, 'x in mA'),
    );
    const said = hovers.flatMap(({ contents }) => contents.map((part) => (part as vscode.MarkdownString).value));
    includes(said.join('\n'), 'Shows 3000 mA');
  });
});
