import * as vscode from 'vscode';
import { equal, ok, until } from './expect';
import { measured } from './report';
import { replace, show, shown, writeFile } from './sheets';

const cells = 500;
const large = Array.from(
  { length: cells },
  (_, i) => `\`\`\`kft\n${i === 0 ? 'x0 = 3 A' : `x${i} = x${i - 1} + 1 A`}\n\`\`\`\n`,
).join('\n');

/** Of how many cells the editor was told something while something ran: outputs, marks of a run, metadata, problems. */
async function traffic(notebook: vscode.NotebookDocument, doing: () => Promise<void>) {
  const metadata = new Set<number>();
  const problems = new Set<string>();
  const listed = vscode.languages.onDidChangeDiagnostics(({ uris }) => {
    for (const uri of uris.filter(({ path }) => path === notebook.uri.path)) {
      problems.add(uri.toString());
    }
  });
  const outputs = new Set<number>();
  const marks = new Set<number>();
  const watch = vscode.workspace.onDidChangeNotebookDocument((change) => {
    if (change.notebook === notebook) {
      for (const { cell, outputs: put, executionSummary, metadata: told } of change.cellChanges) {
        if (told) {
          metadata.add(cell.index);
        }
        if (put) {
          outputs.add(cell.index);
        } else if (executionSummary) {
          marks.add(cell.index);
        }
      }
    }
  });
  const start = performance.now();
  await doing();
  const ms = Math.round(performance.now() - start);
  await new Promise((resolve) => setTimeout(resolve, 300)); // What would come late, comes now.
  watch.dispose();
  listed.dispose();
  return { ms, outputs: outputs.size, marks: marks.size, metadata: metadata.size, problems: problems.size };
}

const allRun = (notebook: vscode.NotebookDocument) =>
  until('the run', () => notebook.getCells().every((cell) => cell.executionSummary?.success), 60_000);

describe('a sheet of 500 cells', () => {
  let notebook: vscode.NotebookDocument;
  let last: vscode.NotebookCell;
  const report: Record<string, number> = {};

  before(() => {
    measured.cells500 = report;
  });

  it('opens with its results, and nothing is sent a second time', async function () {
    this.timeout(150_000);
    const uri = await writeFile('large.kft.md', large);
    const start = performance.now();
    notebook = await vscode.workspace.openNotebookDocument(uri);
    report.openMs = Math.round(performance.now() - start);
    equal(notebook.cellCount, cells, 'number of cells');
    last = notebook.cellAt(cells - 1);
    ok(shown(last, 'text/plain').includes('502'), 'the sheet opened without its results');
    const seen = await traffic(notebook, async () => void (await show(uri)));
    report.showMs = seen.ms;
    equal(seen.outputs, 0, 'outputs sent again');
    await until('the first result', () => shown(notebook.cellAt(0), 'text/plain').includes('x0 = 3 A'));
  });

  it('runs all without sending an output that is there', async function () {
    this.timeout(150_000);
    const seen = await traffic(notebook, async () => {
      await vscode.commands.executeCommand('notebook.execute');
      await allRun(notebook);
    });
    report.runAllMs = seen.ms;
    equal(seen.outputs, 0, 'outputs sent again');
  });

  it('stops on Stop, shows what it showed, and runs all again', async function () {
    this.timeout(150_000);
    const seen = await traffic(notebook, async () => {
      const begun = new Promise<void>((resolve) => {
        const watch = vscode.workspace.onDidChangeNotebookDocument(() => {
          watch.dispose();
          resolve();
        });
      });
      const run = vscode.commands.executeCommand('notebook.execute');
      await begun;
      await vscode.commands.executeCommand('notebook.cancelExecution');
      await run;
    });
    const ran = () => notebook.getCells().filter((cell) => cell.executionSummary?.success).length;
    ok(ran() > 0 && ran() < cells, `${ran()} cells ran`);
    equal(seen.outputs, 0, 'outputs sent again');
    ok(shown(last, 'text/plain').includes('502'), 'the last result is gone');
    equal(notebook.isDirty, false, 'dirty');
    await vscode.commands.executeCommand('notebook.execute');
    equal(ran(), cells, 'cells that ran the second time');
  });

  it('refreshes what an edit changes and speaks of no other cell', async function () {
    this.timeout(150_000);
    const times: number[] = [];
    for (const value of ['2', '3', '4', '5', '6']) {
      const old = /\+ (\d)/.exec(last.document.getText())![1];
      let typed = 0;
      const seen = await traffic(notebook, async () => {
        const start = performance.now();
        const typing = replace(last, `+ ${old}`, `+ ${value}`);
        await until('the text', () => last.document.getText().includes(`+ ${value} A`), 60_000);
        typed = performance.now() - start;
        await until('the edited cell', () => shown(last, 'text/plain').includes(`${501 + Number(value)}`), 60_000);
        await typing;
      });
      const { outputs, marks, metadata, problems } = seen;
      equal([outputs, marks, metadata], [1, 1, 0], 'cells that were spoken of');
      ok(problems <= 1, `${problems} cells got problems anew`);
      times.push(seen.ms);
      report.textArrivesMs = Math.round(typed);
    }
    report.oneEditMs = times.sort((a, b) => a - b)[2];
    await traffic(notebook, async () => {
      await replace(last, '+ 6', '+ 1');
      await until('the edit taken back', () => shown(last, 'text/plain').includes('502'));
    });
    const all = await traffic(notebook, async () => {
      await replace(notebook.cellAt(0), '3', '4');
      await until('the last dependant', () => shown(last, 'text/plain').includes('503'), 60_000);
    });
    report.allDependantsMs = all.ms;
    equal(all.outputs, cells, 'outputs sent');
    equal(all.marks, 1, 'cells marked as run');
  });

  it('runs all no slower than cells that do nothing', async function () {
    this.timeout(150_000);
    // A kernel of the suite's own: what the editor itself takes for as many cells with one output each.
    const trivial = vscode.notebooks.createNotebookController('trivial', 'kilofoot-sheet', 'Trivial');
    trivial.executeHandler = (run) => {
      for (const cell of run) {
        const execution = trivial.createNotebookCellExecution(cell);
        execution.start();
        const item = vscode.NotebookCellOutputItem.text('done', 'text/plain');
        void execution.replaceOutput([new vscode.NotebookCellOutput([item])]);
        execution.end(true);
      }
    };
    const extension = vscode.extensions.getExtension('kilofoot.kilofoot')!.id;
    const select = (id: string) => vscode.commands.executeCommand('notebook.selectKernel', { id, extension });
    try {
      await select('trivial');
      const seen = await traffic(notebook, async () => {
        await vscode.commands.executeCommand('notebook.execute');
        await until('the run', () => notebook.getCells().every((cell) => shown(cell, 'text/plain') === 'done'), 60_000);
        await allRun(notebook);
      });
      report.trivialRunAllMs = seen.ms;
      ok(seen.outputs > 0, 'the trivial kernel did not run');
    } finally {
      await select('kilofoot');
      trivial.dispose();
    }
  });
});
