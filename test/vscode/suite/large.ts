import * as vscode from 'vscode';
import { equal, until } from './expect';
import { measured } from './report';
import { replace, show, shown, writeFile } from './sheets';

const cells = 500;

describe('a sheet of 500 cells', () => {
  it('opens, runs and follows an edit; the times are reported', async function () {
    this.timeout(150_000);
    const lines = Array.from({ length: cells }, (_, i) => (i === 0 ? 'x0 = 3 A' : `x${i} = x${i - 1} + 1 A`));
    const uri = await writeFile('large.kft.md', lines.map((line) => `\`\`\`kft\n${line}\n\`\`\`\n`).join('\n'));
    const start = performance.now();
    const notebook = await vscode.workspace.openNotebookDocument(uri);
    const opened = performance.now();
    equal(notebook.cellCount, cells, 'number of cells');
    const last = notebook.cellAt(cells - 1);
    await until('results', () => shown(last, 'text/plain').includes('502'));
    await show(uri);
    const visible = performance.now();
    await vscode.commands.executeCommand('notebook.execute');
    await until('the run', () => notebook.getCells().every((cell) => cell.executionSummary?.success), 60_000);
    const run = performance.now();
    await replace(last, '+ 1', '+ 2');
    await until('the edited cell', () => shown(last, 'text/plain').includes('503'), 60_000);
    const edited = performance.now();
    await replace(notebook.cellAt(0), '3', '4');
    await until('the last dependant', () => shown(last, 'text/plain').includes('504'), 60_000);
    measured.cells500 = {
      openMs: Math.round(opened - start),
      showMs: Math.round(visible - opened),
      runAllMs: Math.round(run - visible),
      oneEditedMs: Math.round(edited - run),
      allDependantsMs: Math.round(performance.now() - edited),
    };
  });
});
