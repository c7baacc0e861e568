import * as vscode from 'vscode';
import { equal, ok } from './expect';
import { show, shown, writeFile } from './sheets';

/** Opens bytes that are no good sheet, checks that nothing is evaluated, and that the file stays as it was. */
async function refuses(name: string, bytes: Uint8Array): Promise<vscode.NotebookDocument> {
  const uri = await writeFile(name, bytes);
  const notebook = await show(uri);
  for (const cell of notebook.getCells()) {
    equal(shown(cell, 'text/plain'), '', 'a result of a broken file');
  }
  equal(notebook.isDirty, false, 'dirty after opening');
  equal([...(await vscode.workspace.fs.readFile(uri))], [...bytes], 'the file after opening');
  return notebook;
}

const encode = (text: string) => new TextEncoder().encode(text);

describe('a broken file', () => {
  it('with conflict markers is not evaluated', async () => {
    const text = '```kft\n<<<<<<< mine\nx = 3\n=======\nx = 4\n>>>>>>> theirs\n```\n';
    const notebook = await refuses('conflict.kft.md', encode(text));
    ok(notebook.metadata.notices[0].startsWith('Line 2:'), `the notice has no line: ${notebook.metadata.notices}`);
  });

  it('that is not UTF-8 is not evaluated and its bytes are kept', async () => {
    const bytes = new Uint8Array([...encode('```kft\nx = 3 '), 0xb0, ...encode('C\n```\n')]);
    const notebook = await refuses('latin.kft.md', bytes);
    ok(notebook.metadata.notices.length > 0, 'there is no notice');
  });

  it('with an unclosed fence shows as text', async () => {
    await refuses('unclosed.kft.md', encode('# T\n\n```kft\nx = 3\n'));
  });

  it('that was changed all the same is not saved over', async () => {
    const bytes = new Uint8Array([...encode('text '), 0xff]);
    const notebook = await refuses('changed.kft.md', bytes);
    const edit = new vscode.WorkspaceEdit();
    const added = new vscode.NotebookCellData(vscode.NotebookCellKind.Markup, 'more', 'markdown');
    edit.set(notebook.uri, [vscode.NotebookEdit.insertCells(0, [added])]);
    if (await vscode.workspace.applyEdit(edit)) {
      const saved = await notebook.save().then(
        (done) => done,
        () => false,
      );
      equal(saved, false, 'the save went through');
    }
    equal([...(await vscode.workspace.fs.readFile(notebook.uri))], [...bytes], 'the file after saving');
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  });
});
