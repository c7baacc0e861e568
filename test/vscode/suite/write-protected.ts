import * as vscode from 'vscode';
import { equal, includes, ok, until } from './expect';
import { heardWhile } from './hear';
import { MemoryFiles } from './memory-files';
import { positionOf, renamed, show, shown, writeFile } from './sheets';

const sheet =
  '```kft\ninput run = 85 ft from 5 ft to 400 ft "one way"\n```\n\n```kft\ntwice = run * 2\nend = twice\n```\n';

/** Asks for each change that a command makes, and checks that the text stays and that the person is told what to do. */
async function nothingIsChanged(notebook: vscode.NotebookDocument): Promise<void> {
  const name = notebook.uri.path.split('/').at(-1)!;
  const texts = () => notebook.getCells().map((cell) => cell.document.getText());
  const before = texts();
  await until('results', () => shown(notebook.cellAt(1), 'text/plain').includes('170 ft'));
  const editor = await vscode.window.showTextDocument(notebook.cellAt(1).document);
  editor.selection = new vscode.Selection(1, 11, 1, 11);
  for (const [command, ...given] of [
    ['kilofoot.changeInput', { name: 'run', value: '100' }],
    ['kilofoot.writeResults'],
    ['kilofoot.pasteAsSchedule', 'Tag\tLoad (kVA)\nP1\t9.2\nP2\t1.5\n'],
  ] as const) {
    const said = await heardWhile((heard) =>
      vscode.commands
        .executeCommand(command, ...given)
        .then(() => heard.hears(`${name} is read-only, so nothing was changed.`, 'Save it under another name')),
    );
    equal(said.length, 1, `messages of ${command}`);
    await until(`the text as it was, after ${command}`, () => JSON.stringify(texts()) === JSON.stringify(before));
  }
  equal(notebook.isDirty, false, 'dirty');
}

describe('a sheet that is read-only', () => {
  for (const [what, scheme, isReadonly] of [
    ['a file without leave to write', 'kept-file', false],
    ['a file system that cannot be written to', 'kept-system', true],
  ] as const) {
    it(`as ${what} opens with its results, and no command changes it in memory alone`, async () => {
      const files = new MemoryFiles();
      const uri = files.put(vscode.Uri.parse(`${scheme}:/a/kept.kft.md`), sheet, { isProtected: !isReadonly });
      const system = vscode.workspace.registerFileSystemProvider(scheme, files, { isReadonly });
      await nothingIsChanged(await show(uri));
      equal(files.text(uri), sheet, 'the file');
      await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
      system.dispose();
    });
  }

  it('by a setting of the editor alone is told of all the same, and the change taken back', async () => {
    const files = vscode.workspace.getConfiguration('files');
    await files.update('readonlyInclude', { '**/set/*.kft.md': true }, vscode.ConfigurationTarget.Global);
    try {
      const uri = await writeFile('set/kept.kft.md', sheet);
      await nothingIsChanged(await show(uri));
      equal(new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)), sheet, 'the file');
    } finally {
      await files.update('readonlyInclude', undefined, vscode.ConfigurationTarget.Global);
    }
  });

  it('keeps a name that it uses from being renamed in another sheet', async () => {
    const files = new MemoryFiles();
    const at = (name: string) => vscode.Uri.parse(`kept-names:/a/${name}.kft.md`);
    const user = '```kft\nuse run from "source.kft.md"\ntwice = run * 2\n```\n';
    const source = files.put(at('source'), '```kft\nrun = 3 ft\n```\n');
    files.put(at('user'), user, { isProtected: true });
    const system = vscode.workspace.registerFileSystemProvider('kept-names', files);
    const notebook = await show(source);
    const cell = notebook.cellAt(0);
    const said = await renamed(cell.document, positionOf(cell, 'run'), 'way').then(
      () => '',
      (error: Error) => error.message,
    );
    includes(said, 'user.kft.md is read-only and uses this name, so nothing was renamed');
    equal(cell.document.getText(), 'run = 3 ft', 'the cell');
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    system.dispose();
  });

  it('is saved under another name on a press of the button', async () => {
    const files = new MemoryFiles();
    const uri = files.put(vscode.Uri.parse('kept-copy:/a/kept.kft.md'), sheet, { isProtected: true });
    const system = vscode.workspace.registerFileSystemProvider('kept-copy', files);
    await show(uri);
    const asked: string[] = [];
    const { executeCommand } = vscode.commands;
    const watched = (command: string, ...rest: unknown[]) => {
      asked.push(command);
      return command === 'workbench.action.files.saveAs' ? Promise.resolve() : executeCommand(command, ...rest);
    };
    Object.assign(vscode.commands, { executeCommand: watched });
    try {
      await heardWhile(() => executeCommand('kilofoot.changeInput', { name: 'run', value: '100' }), 'Save As…');
    } finally {
      Object.assign(vscode.commands, { executeCommand });
    }
    ok(asked.includes('workbench.action.files.saveAs'), `the command was not called: ${asked}`);
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    system.dispose();
  });
});
