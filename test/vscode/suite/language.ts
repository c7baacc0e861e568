import * as vscode from 'vscode';
import { equal, includes, ok, until } from './expect';
import { cellWith, codeOf, fileInWorkspace, positionOf, replace, show, shown, writeFile } from './sheets';

async function hoverText(cell: vscode.NotebookCell, part: string, by = 0): Promise<string> {
  const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
    'vscode.executeHoverProvider',
    cell.document.uri,
    positionOf(cell, part, by),
  );
  return hovers
    .flatMap(({ contents }) => contents.map((content) => (content as vscode.MarkdownString).value))
    .join('\n');
}

const problemsOf = (cell: vscode.NotebookCell) => vscode.languages.getDiagnostics(cell.document.uri);

describe('the language in the editor', () => {
  it('marks a problem at its exact place, and takes the mark away when it is mended', async () => {
    const notebook = await show(await writeFile('mismatch.kft.md', '```kft\nx = 3 V\ny = 2 A\nz = x + y\n```\n'));
    const cell = notebook.cellAt(0);
    const problem = await until('a problem', () => problemsOf(cell)[0]);
    equal(problem.severity, vscode.DiagnosticSeverity.Error, 'severity');
    equal(problem.source, 'kilofoot', 'source');
    equal(cell.document.getText(problem.range), 'x + y', 'the marked text');
    await until('the cell to be marked as failed', () => cell.executionSummary?.success === false);
    includes(shown(cell, 'text/plain'), 'x = 3 V');
    await replace(cell, 'x + y', 'x * y');
    await until('no problem', () => problemsOf(cell).length === 0);
    await until('the result', () => shown(cell, 'text/plain').includes('6 W'));
  });

  it('marks an undersized conductor in the example', async () => {
    const notebook = await show(fileInWorkspace('kiln.kft.md'));
    const cell = cellWith(notebook, 'existing = circuit');
    const problem = await until('a problem', () =>
      problemsOf(cell).find((found) => codeOf(found) === 'undersized-conductor'),
    );
    equal(cell.document.getText(problem.range), '12 AWG Cu THHN', 'the marked text');
  });

  it('offers fixes for it, and a fix mends it', async () => {
    const notebook = await show(fileInWorkspace('kiln.kft.md'));
    const cell = cellWith(notebook, 'existing = circuit');
    const problem = await until('a problem', () =>
      problemsOf(cell).find((found) => codeOf(found) === 'undersized-conductor'),
    );
    // Only a cell in view has the kind of model that code actions are asked of.
    const editor = vscode.window.activeNotebookEditor;
    editor?.revealRange(new vscode.NotebookRange(cell.index, cell.index + 1), vscode.NotebookEditorRevealType.AtTop);
    await new Promise((resolve) => setTimeout(resolve, 1000));
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      cell.document.uri,
      problem.range,
    );
    const fix = actions.find(({ title, edit }) => edit && title.includes('10 AWG'));
    ok(fix?.edit, `no fix names 10 AWG: ${actions.map(({ title }) => title)}`);
    equal(fix.isPreferred ?? false, false, 'a change of conductor is preferred');
    ok(await vscode.workspace.applyEdit(fix.edit), 'the fix was refused');
    await until('the problem to go', () => !problemsOf(cell).some((found) => codeOf(found) === 'undersized-conductor'));
    await vscode.commands.executeCommand('workbench.action.files.revert');
  });

  it('tells of a conductor under the pointer, with its tables', async () => {
    const notebook = await show(fileInWorkspace('kiln.kft.md'));
    const text = await hoverText(cellWith(notebook, 'left_on_reel ='), '12 AWG', 1);
    for (const part of ['12 AWG Cu stranded', '1.98 Ω/kft', 'Ω/km', '20 °C', '14 AWG', '10 AWG', 'Table 8', '310.16']) {
      includes(text, part);
    }
  });

  it('tells of a name and of a function', async () => {
    const notebook = await show(fileInWorkspace('kiln.kft.md'));
    const cell = cellWith(notebook, 'current = supply');
    includes(await hoverText(cell, 'current =', 1), '17.4');
    includes(await hoverText(cellWith(notebook, 'left_on_reel ='), 'conductor_length', 1), 'conductor_length');
  });

  it('completes fields of a form, units and conductor words', async () => {
    const text = '```kft\nc = circuit\n  load: 3 A\n  vol\nx = 3 k\ny = 12 AWG C\n```\n';
    const notebook = await show(await writeFile('complete.kft.md', text));
    const cell = notebook.cellAt(0);
    const labels = async (part: string) => {
      const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
        'vscode.executeCompletionItemProvider',
        cell.document.uri,
        positionOf(cell, part, part.length),
      );
      return items.map(({ label }) => (typeof label === 'string' ? label : label.label));
    };
    ok((await labels('vol')).includes('voltage'), 'no field `voltage`');
    ok((await labels('3 k')).includes('kW'), 'no unit `kW`');
    ok((await labels('AWG C')).includes('Cu'), 'no word `Cu`');
    ok(!(await labels('AWG C')).includes('schedule'), 'a snippet in the middle of a line');
  });

  it('leads to a definition in another cell', async () => {
    const notebook = await show(fileInWorkspace('kiln.kft.md'));
    const cell = cellWith(notebook, 'length: run');
    const [place] = await vscode.commands.executeCommand<vscode.Location[]>(
      'vscode.executeDefinitionProvider',
      cell.document.uri,
      positionOf(cell, 'length: run', 9),
    );
    equal(place?.uri.toString(), cellWith(notebook, 'run = 62 ft').document.uri.toString(), 'the cell');
    equal(cellWith(notebook, 'run = 62 ft').document.getText(place.range), 'run', 'the name');
  });
});
