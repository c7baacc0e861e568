import * as vscode from 'vscode';
import { equal, until } from './expect';
import { MemoryFiles } from './memory-files';
import { fileInWorkspace, replace, show, shown, writeFile } from './sheets';

const fenced = (text: string) => `\`\`\`kft\n${text}\n\`\`\`\n`;
const problemsOf = (cell: vscode.NotebookCell) =>
  vscode.languages.getDiagnostics(cell.document.uri).map(({ message }) => message);
const closeAll = () => vscode.commands.executeCommand('workbench.action.closeAllEditors');

describe('a file that a sheet names', () => {
  it('is missed when it is deleted or renamed, and taken again when it is back', async () => {
    const source = await writeFile('named/source.kft.md', fenced('supply = 208 V'));
    const notebook = await show(
      await writeFile('named/user.kft.md', fenced('use supply from "source.kft.md"\nflow = supply / 13 Ω')),
    );
    const cell = notebook.cellAt(0);
    const isWell = () => shown(cell, 'text/plain').includes('16 A') && problemsOf(cell).length === 0;
    const isMissed = () => problemsOf(cell).some((message) => message.includes('is not there'));
    await until('the result', isWell);
    await vscode.workspace.fs.delete(source);
    await until('what is missed', isMissed);
    await until('its result to go', () => !shown(cell, 'text/plain').includes('16 A'));
    await writeFile('named/source.kft.md', fenced('supply = 208 V'));
    await until('the file that is back', isWell);
    await vscode.workspace.fs.rename(source, fileInWorkspace('named/moved.kft.md'));
    await until('what is missed after a rename', isMissed);
    await replace(cell, 'source.kft.md', 'moved.kft.md');
    await until('the file under its new name', isWell);
    equal(await notebook.save(), true, 'saved');
    await closeAll();
  });

  it('gives the rows of a schedule, follows the file, and names a bad row', async () => {
    const csv = (load: string) => `tag,load\nP1,${load}\nP2,1.5 kVA\n`;
    const rows = await writeFile('named/rows.csv', csv('9.2 kVA'));
    const notebook = await show(
      await writeFile('named/rows.kft.md', fenced('panel = schedule "rows.csv"\ntotal = sum(panel.load)')),
    );
    const cell = notebook.cellAt(0);
    const shows = (total: string) => shown(cell, 'text/plain').includes(total) && problemsOf(cell).length === 0;
    await until('the total', () => shows('10.7 kVA'));
    await writeFile('named/rows.csv', csv('3.5 kVA'));
    await until('the total of the changed file', () => shows('5 kVA'));
    await writeFile('named/rows.csv', csv('nine kVA'));
    // A file that is written anew may be read while it is empty; what counts is what is told in the end.
    await until('the bad row', () => problemsOf(cell).some((message) => /rows\.csv.*\b2\b/.test(message)));
    await vscode.workspace.fs.delete(rows);
    await until('the file that is gone', () => problemsOf(cell).some((message) => message.includes('is not there')));
    await writeFile('named/rows.csv', csv('4.5 kVA'));
    await until('the file that is back', () => shows('6 kVA'));
    const typed = await vscode.workspace.openTextDocument(rows);
    const edit = new vscode.WorkspaceEdit();
    edit.replace(rows, new vscode.Range(1, 3, 1, 4), '5');
    await vscode.workspace.applyEdit(edit);
    await until('what is typed in its editor', () => shows('7 kVA'));
    equal(typed.isDirty, true, 'the rows were saved');
    await vscode.window.showTextDocument(typed);
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    await until('what is on the disk', () => shows('6 kVA'));
    await closeAll();
  });

  it('is followed outside of the workspace, in files that are on no disk', async () => {
    const files = new MemoryFiles();
    const at = (name: string) => vscode.Uri.parse(`kept-beside:/a/${name}`);
    files.put(at('source.kft.md'), fenced('supply = 208 V'));
    files.put(at('lists/rows.csv'), 'tag,load\nP1,9.2 kVA\n');
    const uri = files.put(
      at('user.kft.md'),
      fenced(
        'use supply from "source.kft.md"\nflow = supply / 13 Ω\npanel = schedule "lists/rows.csv"\ntotal = sum(panel.load)',
      ),
    );
    const system = vscode.workspace.registerFileSystemProvider('kept-beside', files);
    const notebook = await show(uri);
    const cell = notebook.cellAt(0);
    const shows = (...parts: string[]) => parts.every((part) => shown(cell, 'text/plain').includes(part));
    await until('results', () => shows('16 A', '9.2 kVA'));
    files.put(at('source.kft.md'), fenced('supply = 260 V'));
    await until('the changed sheet', () => shows('20 A'));
    files.put(at('lists/rows.csv'), 'tag,load\nP1,3 kVA\nP2,4 kVA\n');
    await until('the changed rows', () => shows('7 kVA'));
    files.delete(at('lists/rows.csv'));
    await until('the rows that are gone', () => problemsOf(cell).some((message) => message.includes('is not there')));
    equal(notebook.isDirty, false, 'dirty');
    await closeAll();
    system.dispose();
  });
});
