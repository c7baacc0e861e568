import * as vscode from 'vscode';
import { equal, ok, until } from './expect';
import { heardWhile } from './hear';
import { replace, show, shown, writeFile } from './sheets';

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

  it('with conflict markers says so with the line, and what to do', async () => {
    const text = '# T\n\n<<<<<<< mine\nx = 3\n=======\nx = 4\n>>>>>>> theirs\n';
    const uri = await writeFile('told.kft.md', text);
    const said = await heardWhile(async (heard) => {
      await show(uri);
      await heard.hears(
        'told.kft.md: Line 3: ',
        'the marks of a merge that nobody settled',
        'Settle the merge in a text editor',
      );
    });
    equal(said.length, 1, 'messages');
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
    equal(new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)), text, 'the file');
  });
});

describe('a sheet of a later format', () => {
  it('is read and evaluated, says that it is one, and is changed nowhere but where a person types', async () => {
    const text = '---\ntitle: T\nformat: 2\n---\n\n```kft\nx=3 V\n```\n\n```kft\ny=x\n```\n';
    const uri = await writeFile('later.kft.md', text);
    let notebook!: vscode.NotebookDocument;
    await heardWhile(async (heard) => {
      notebook = await show(uri);
      await heard.hears(
        'later.kft.md: Line 3: This sheet is in format 2',
        'do not rely on these results',
        'Update Kilofoot',
      );
    });
    await until('its results', () => shown(notebook.cellAt(2), 'text/plain').includes('3 V'));
    const [problem] = vscode.languages.getDiagnostics(notebook.cellAt(0).document.uri);
    const { value, target } = problem.code as { value: string; target: vscode.Uri };
    equal([value, problem.range.start.line], ['newer-format', 2], 'the problem');
    equal(target.toString(true), 'command:kilofoot.explain?["newer-format"]', 'the link to its page');
    await heardWhile((heard) =>
      vscode.commands.executeCommand('kilofoot.writeResults').then(() => heard.hears('This sheet is in format 2')),
    );
    const edits = await vscode.commands.executeCommand<vscode.TextEdit[] | undefined>(
      'vscode.executeFormatDocumentProvider',
      notebook.cellAt(1).document.uri,
      { tabSize: 2, insertSpaces: true },
    );
    equal(edits ?? [], [], 'edits of the layout');
    await replace(notebook.cellAt(1), '3', '4');
    ok(await notebook.save(), 'the save was refused');
    const saved = new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
    equal(saved, text.replace('x=3', 'x=4'), 'the file');
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  });
});
