import * as vscode from 'vscode';
import { equal, ok, until } from './expect';
import { heardWhile } from './hear';
import { MemoryFiles } from './memory-files';
import { fileInWorkspace, replace, show, shown, writeFile } from './sheets';

const sheet = (amps: number, more = '') => `\`\`\`kft\nx = ${amps} A\n\`\`\`\n\n\`\`\`kft\ny = 2 * x\n\`\`\`\n${more}`;

const onDisk = async (uri: vscode.Uri) => new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
const closeIt = () => vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');

describe('a sheet whose file another program', () => {
  before(async () => {
    // All at once and first: of a file that comes and goes in one moment the editor is told nothing.
    for (const name of ['changed', 'both-changed', 'digit', 'typed', 'anew']) {
      await writeFile(`disk/${name}.kft.md`, sheet(3));
    }
  });

  const opened = async (name: string): Promise<[vscode.Uri, vscode.NotebookDocument]> => {
    const uri = fileInWorkspace(`disk/${name}.kft.md`);
    const notebook = await show(uri);
    await until('results', () => shown(notebook.cellAt(1), 'text/plain').includes('6 A'));
    return [uri, notebook];
  };

  it('changes shows the new text with its results', async () => {
    const [, notebook] = await opened('changed');
    await writeFile('disk/changed.kft.md', sheet(4, '\nAdded.\n'));
    await until(
      'the new results',
      () => notebook.cellCount === 3 && shown(notebook.cellAt(1), 'text/plain').includes('8 A'),
    );
    equal(notebook.isDirty, false, 'dirty');
    await closeIt();
  });

  it('changes while something is not saved keeps both texts until a person chooses', async () => {
    const [uri, notebook] = await opened('both-changed');
    await replace(notebook.cellAt(0), '3', '5');
    await heardWhile(async (heard) => {
      await writeFile('disk/both-changed.kft.md', sheet(4, '\nAdded.\n'));
      await heard.hears('both-changed.kft.md was changed by another program', 'save yours under another name');
    });
    // The editor itself says so too when it refuses the save; its words are proved in the page.
    equal(await notebook.save(), false, 'saved over the other one’s text');
    equal(await onDisk(uri), sheet(4, '\nAdded.\n'), 'the file');
    equal([notebook.isDirty, notebook.cellAt(0).document.getText()], [true, 'x = 5 A'], 'the sheet');
    await until('its result', () => shown(notebook.cellAt(1), 'text/plain').includes('10 A'));
    await closeIt();
  });

  it('changes by a digit while something is not saved is told of, and our own saves are not', async () => {
    const [, notebook] = await opened('digit');
    const said = await heardWhile(async (heard) => {
      await replace(notebook.cellAt(0), '3', '5');
      ok(await notebook.save(), 'the save was refused');
      await replace(notebook.cellAt(0), '5', '7');
      await writeFile('disk/digit.kft.md', sheet(4));
      await heard.hears('digit.kft.md was changed by another program');
    });
    equal(said.length, 1, 'messages');
    await closeIt();
  });

  it('deletes stays as it is, says so, and is written again on a press of the button', async () => {
    // In files of our own: what the suite deletes on the disk counts as deleted in the editor where that runs in a page.
    const files = new MemoryFiles();
    const uri = files.put(vscode.Uri.parse('kept-gone:/a/gone.kft.md'), sheet(3));
    const system = vscode.workspace.registerFileSystemProvider('kept-gone', files);
    const notebook = await show(uri);
    await until('results', () => shown(notebook.cellAt(1), 'text/plain').includes('6 A'));
    await heardWhile(async (heard) => {
      files.delete(uri);
      await heard.hears('gone.kft.md was deleted or moved by another program.', 'save it to write the file again');
    }, 'Save');
    await until('the file that is written again', () => files.has(uri));
    equal(files.text(uri), sheet(3), 'the file');
    ok(!notebook.isClosed, 'the sheet was closed');
    await closeIt();
    system.dispose();
  });

  it('deletes while something is not saved keeps what was typed, and says so', async () => {
    const [uri, notebook] = await opened('typed');
    await replace(notebook.cellAt(0), '3', '5');
    await heardWhile(async (heard) => {
      await vscode.workspace.fs.delete(uri);
      await heard.hears('typed.kft.md was deleted or moved by another program.');
    });
    equal(notebook.cellAt(0).document.getText(), 'x = 5 A', 'the cell');
    ok(await notebook.save(), 'the save was refused');
    equal(await onDisk(uri), sheet(5), 'the file');
    await closeIt();
  });

  it('writes anew by deleting it first says nothing', async () => {
    const [uri, notebook] = await opened('anew');
    const said = await heardWhile(async () => {
      await vscode.workspace.fs.delete(uri);
      await writeFile('disk/anew.kft.md', sheet(4));
      await until('the new result', () => shown(notebook.cellAt(1), 'text/plain').includes('8 A'));
      await new Promise((resolve) => setTimeout(resolve, 700)); // For nothing to come there is nothing to await.
    });
    equal(said, [], 'messages');
    await closeIt();
  });
});
