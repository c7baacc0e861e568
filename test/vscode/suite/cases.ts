import * as vscode from 'vscode';
import { equal, includes, ok } from './expect';
import { heardWhile } from './hear';
import { fileInWorkspace, show, writeFile } from './sheets';

const sheet = '```kft\ninput run = 85 ft from 5 ft to 400 ft "one way"\ntwice = run * 2\n```\n';
const namesIn = async (folder: string) =>
  (await vscode.workspace.fs.readDirectory(fileInWorkspace(folder))).map(([name]) => name).sort();

type Task = Parameters<typeof vscode.window.withProgress>[1];

/** Runs the cases of a file; a press on Cancel comes once so many batches are done. Gives what the progress said. */
async function run(cases: vscode.Uri, { batches = Number.POSITIVE_INFINITY, press = '' } = {}) {
  const { withProgress } = vscode.window;
  const progressed: string[] = [];
  const stop = new vscode.CancellationTokenSource();
  Object.assign(vscode.window, {
    withProgress: (options: vscode.ProgressOptions, task: Task) => {
      ok(options.cancellable, 'it cannot be stopped');
      return withProgress.call(vscode.window, options, (shown) => {
        const report = (step: { message?: string }) => {
          progressed.push(step.message ?? '');
          if (progressed.length === batches) {
            stop.cancel();
          }
          shown.report(step);
        };
        return task({ report }, stop.token);
      });
    },
  });
  try {
    const said = await heardWhile(() => vscode.commands.executeCommand('kilofoot.runCases', cases), press);
    return { progressed, said };
  } finally {
    Object.assign(vscode.window, { withProgress });
  }
}

describe('running cases', () => {
  before(async () => {
    await show(await writeFile('cases/a.kft.md', sheet));
  });

  it('tells how far it is, and stopped midway leaves no file and none that is half written', async () => {
    const rows = Array.from({ length: 450 }, (_, i) => `${5 + (i % 300)}\n`).join('');
    const cases = await writeFile('cases/many.csv', `run\n${rows}`);
    const stopped = await run(cases, { batches: 2 });
    equal(stopped.progressed, ['100 of 450', '200 of 450'], 'the progress');
    equal(stopped.said, ['Stopped after 200 of 450 cases. Nothing was written.'], 'what is told');
    equal(await namesIn('cases'), ['a.kft.md', 'many.csv'], 'the files');
    const whole = await run(cases);
    equal(whole.progressed.at(-1), '450 of 450', 'the progress');
    equal(whole.said, ['450 cases are run: many.results.csv is written.'], 'what is told');
    const results = fileInWorkspace('cases/many.results.csv');
    const before = new TextDecoder().decode(await vscode.workspace.fs.readFile(results));
    equal(before.trimEnd().split('\n').length, 451, 'lines of results');
    await run(cases, { batches: 1, press: 'Replace' });
    equal(new TextDecoder().decode(await vscode.workspace.fs.readFile(results)), before, 'the results before');
  });

  it('leaves a file of results alone that nobody lets go', async () => {
    const cases = await writeFile('cases/kept.csv', 'run\n10\n');
    await writeFile('cases/kept.results.csv', 'mine\n');
    const { said } = await run(cases);
    equal(said, ['kept.results.csv is there already. Replace it?'], 'what is asked');
    const kept = await vscode.workspace.fs.readFile(fileInWorkspace('cases/kept.results.csv'));
    equal(new TextDecoder().decode(kept), 'mine\n', 'the file');
  });

  it('names a bad row in its place and runs the others', async () => {
    const { said } = await run(await writeFile('cases/bad.csv', 'run\n10\nten\n900\n20 m\n'));
    equal(said, ['4 cases are run, 2 of them with problems: bad.results.csv is written.'], 'what is told');
    const results = await vscode.workspace.fs.readFile(fileInWorkspace('cases/bad.results.csv'));
    const [, good, word, far, metric] = new TextDecoder().decode(results).split('\n');
    equal(good, '10,20,', 'the first row');
    includes(word, '`ten` is not defined');
    includes(far, 'outside 5 ft to 400 ft');
    ok(metric.startsWith('20 m,131.2'), `the last row: ${metric}`);
  });

  it('says what is wrong with the file itself, with the line', async () => {
    const broken = await run(await writeFile('cases/broken.csv', 'run\n10\n"20\n'));
    includes(broken.said.join(), 'line 3');
    const unknown = await run(await writeFile('cases/unknown.csv', 'way\n10\n'));
    includes(unknown.said.join(), 'unknown.csv');
    includes(unknown.said.join(), 'way');
    ok(!(await namesIn('cases')).some((name) => /^(broken|unknown)\.results/.test(name)), 'results were written');
  });
});
