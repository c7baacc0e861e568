import * as vscode from 'vscode';
import { equal, ok, until } from './expect';
import { cellWith, cursorIn, fileInWorkspace, positionOf, renamed, show, shown, writeFile } from './sheets';

const fenced = (text: string) => `\`\`\`kft\n${text}\n\`\`\`\n`;
const ask = <T>(command: string, ...rest: unknown[]) => vscode.commands.executeCommand<T>(command, ...rest);
const textsOf = (notebook: vscode.NotebookDocument) => notebook.getCells().map((cell) => cell.document.getText());
const closeAll = () => ask('workbench.action.closeAllEditors');

/**
 * Undoes as a person whose cursor is in the cell. The host tells nothing of the cursor's way there, and an undo before
 * that goes nowhere: so it is asked again, until the first one that changes anything.
 */
async function undoOnce(cell: vscode.NotebookCell): Promise<void> {
  const changed = cell.document.getText();
  for (let i = 0; i < 20 && cell.document.getText() === changed; i++) {
    await cursorIn(cell);
    await ask('undo');
    for (let j = 0; j < 10 && cell.document.getText() === changed; j++) {
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
}

/** After one undo the sheet is as it was, and saves as the same bytes. */
async function isOneUndo(notebook: vscode.NotebookDocument, before: readonly string[], bytes: string): Promise<void> {
  ok(JSON.stringify(textsOf(notebook)) !== JSON.stringify(before), 'there is nothing to undo');
  await undoOnce(notebook.cellAt(0));
  await until('the undo', () => JSON.stringify(textsOf(notebook)) === JSON.stringify(before));
  await notebook.save();
  const saved = await vscode.workspace.fs.readFile(notebook.uri);
  equal(new TextDecoder('utf-8', { ignoreBOM: true }).decode(saved), bytes, 'the bytes that are saved');
  await closeAll();
}

describe('one undo takes back', () => {
  it('a change of an input', async () => {
    const text = `\uFEFF${fenced('input run = 85 ft from 5 ft to 400 ft "one way"  // odd   space')}\r\n${fenced('twice = run * 2')}`;
    const notebook = await show(await writeFile('undo/input.kft.md', text));
    await until('results', () => shown(notebook.cellAt(1), 'text/plain').includes('170 ft'));
    const before = textsOf(notebook);
    await ask('kilofoot.changeInput', { name: 'run', value: '100' });
    await until('the new result', () => shown(notebook.cellAt(1), 'text/plain').includes('200 ft'));
    await isOneUndo(notebook, before, text);
  });

  it('a schedule that was pasted, for it is one edit', async () => {
    const notebook = await show(await writeFile('undo/paste.kft.md', fenced('x = 1')));
    const { document } = notebook.cellAt(0);
    const editor = await cursorIn(notebook.cellAt(0));
    editor.selection = new vscode.Selection(0, 5, 0, 5);
    const edits: number[] = [];
    const watch = vscode.workspace.onDidChangeTextDocument(({ document: changed, contentChanges }) => {
      if (changed === document && contentChanges.length > 0) {
        edits.push(contentChanges.length);
      }
    });
    await ask('kilofoot.pasteAsSchedule', 'Tag\tLoad (kVA)\nP1\t9.2\nP2\t1.5\n');
    await until('its total', () => shown(notebook.cellAt(0), 'text/plain').includes('10.7'));
    watch.dispose();
    equal(edits, [1], 'edits');
    await ask('workbench.action.revertAndCloseActiveEditor');
  });

  it('a quick fix', async () => {
    // In the text: of a cell the host offers fixes only once it is drawn, which nothing tells.
    const text = fenced('check 3 A < 4 A “fine”');
    const document = await vscode.workspace.openTextDocument(await writeFile('undo/fix.kft.md', text));
    await vscode.window.showTextDocument(document);
    const problem = await until('a problem', () => vscode.languages.getDiagnostics(document.uri)[0]);
    let edit: vscode.WorkspaceEdit | undefined;
    for (let i = 0; i < 100 && !edit; i++) {
      // What the host asks for itself at the same time, for its light bulb, may cancel the question.
      const asked = ask<vscode.CodeAction[]>(
        'vscode.executeCodeActionProvider',
        document.uri,
        problem.range,
        'quickfix',
      );
      const actions = await Promise.resolve(asked).catch(() => []);
      edit = actions.find(({ title }) => !title.startsWith('Allow'))?.edit;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    ok(edit, 'no fix is offered');
    ok(await vscode.workspace.applyEdit(edit), 'the fix was refused');
    ok(document.getText().includes('check 3 A < 4 A "fine"'), 'the fix did not mend it');
    await ask('undo');
    await until('the undo', () => document.getText() === text);
    await ask('workbench.action.revertAndCloseActiveEditor');
  });

  it('a rename in two sheets and a closed one', async () => {
    const files = {
      'undo/one.kft.md': `${fenced('run = 3 ft')}\nThe run is \`= run in m\`.\n\n${fenced('y = run * 2')}`,
      'undo/two.kft.md': fenced('use run from "one.kft.md"\nx = run * 2'),
      'undo/closed.kft.md': fenced('use run from "one.kft.md"\nz = run * 3'),
    };
    for (const [name, text] of Object.entries(files)) {
      await writeFile(name, text);
    }
    const two = await vscode.workspace.openNotebookDocument(fileInWorkspace('undo/two.kft.md'));
    await vscode.window.showNotebookDocument(two, { preview: false });
    const one = await show(fileInWorkspace('undo/one.kft.md'));
    const cell = cellWith(one, 'run = 3');
    const before = [textsOf(one), textsOf(two)];
    const edit = await renamed(cell.document, positionOf(cell, 'run', 1), 'way');
    ok(await vscode.workspace.applyEdit(edit), 'the edit was refused');
    ok(textsOf(two)[0].includes('use way'), 'the other open sheet has the old name');
    const closed = await vscode.workspace.openTextDocument(fileInWorkspace('undo/closed.kft.md'));
    ok(closed.getText().includes('use way'), 'the closed sheet has the old name');
    await undoOnce(cell);
    await until('the undo', () => JSON.stringify([textsOf(one), textsOf(two)]) === JSON.stringify(before));
    await until('the undo in the closed sheet', () => closed.getText() === files['undo/closed.kft.md']);
    await closeAll();
  });
});
