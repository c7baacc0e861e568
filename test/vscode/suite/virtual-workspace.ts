import * as vscode from 'vscode';
import type { activate } from '../../../src/vscode/activate';
import { virtualFiles } from '../virtual-files/files';
import { equal, includes, ok, until } from './expect';
import { heardWhile } from './hear';
import { MemoryFiles } from './memory-files';
import { cellWith, extensionId, fileInWorkspace, positionOf, renamed, replace, show, shown, writeFile } from './sheets';

const ask = <T>(command: string, ...rest: unknown[]) => vscode.commands.executeCommand<T>(command, ...rest);
const textOf = async (name: string) =>
  new TextDecoder().decode(await vscode.workspace.fs.readFile(fileInWorkspace(name)));
const problemsOf = (uri: vscode.Uri) => vscode.languages.getDiagnostics(uri).map(({ message }) => message);

describe('a workspace that is on no disk', () => {
  let kiln: vscode.NotebookDocument;
  let draws: vscode.NotebookCell;
  let panel: vscode.NotebookCell;
  const shows = (cell: vscode.NotebookCell, ...parts: string[]) =>
    parts.every((part) => shown(cell, 'text/plain').includes(part));

  before(async () => {
    equal(
      vscode.workspace.workspaceFolders?.map(({ uri }) => uri.scheme),
      ['kept-workspace'],
      'the folders',
    );
    kiln = await show(fileInWorkspace('kiln.kft.md'));
    await vscode.window.showNotebookDocument(kiln, { preview: false });
    draws = cellWith(kiln, 'flow =');
    panel = cellWith(kiln, 'panel =');
  });

  it('opens a sheet with its results, from the sheet and the rows that it names', async () => {
    await until('results', () => shows(draws, '= 16 A') && shows(panel, '10.7 kVA'));
    equal(
      [draws, panel].flatMap(({ document }) => problemsOf(document.uri)),
      [],
      'problems',
    );
    equal(kiln.isDirty, false, 'dirty');
    const live = () => JSON.stringify(cellWith(kiln, 'It draws').metadata.live);
    await until('the value in prose', () => live()?.includes('16 A'));
    const extension = vscode.extensions.getExtension<ReturnType<typeof activate>>(extensionId);
    const { values } = await extension!.activate();
    const items = () =>
      values.getChildren().flatMap((group) => values.getChildren(group).map((entry) => values.getTreeItem(entry)));
    const lines = () => JSON.stringify(items().map(({ label, description }) => `${label} ${description}`));
    await until('values and checks', () => lines().includes('16 A') && lines().includes('breaker holds'));
  });

  it('takes the tables of a folder', async () => {
    const town = await show(fileInWorkspace('town/conduit.kft.md'));
    await until('the amended result', () => shows(town.cellAt(0), 'a = 18 A', 'local amendment 12'));
  });

  it('follows its files, and tells of a bad row until it is mended', async () => {
    await writeFile('lists/rows.csv', 'tag,load\nP1,nine kVA\nP2,2.5 kVA\n');
    await until('the bad row', () => problemsOf(panel.document.uri).some((one) => /rows\.csv.*\b2\b/.test(one)));
    await writeFile('lists/rows.csv', 'tag,load\nP1,9.2 kVA\nP2,2.5 kVA\n');
    await until('the changed rows', () => shows(panel, '11.7 kVA') && !problemsOf(panel.document.uri).length);
    await writeFile('shared/meters.kft.md', virtualFiles['shared/meters.kft.md'].replace('208', '260'));
    await until('the changed sheet', () => shows(draws, '= 20 A'));
    await writeFile('shared/meters.kft.md', virtualFiles['shared/meters.kft.md']);
    await until('the sheet as it was', () => shows(draws, '= 16 A'));
  });

  it('finds what is in closed sheets: definitions, names of files, and each use of a name to rename it', async () => {
    const { uri } = draws.document;
    const at = positionOf(draws, 'supply /', 1);
    const [place] = await ask<vscode.Location[]>('vscode.executeDefinitionProvider', uri, at);
    equal([place.uri.toString(), place.range.start.line], [`${fileInWorkspace('shared/meters.kft.md')}`, 3], 'place');
    const uses = await ask<vscode.Location[]>('vscode.executeReferenceProvider', uri, at);
    const files = new Set(uses.map((use) => use.uri.path.split('/').at(-1)));
    ok(uses.length >= 3 && files.has('meters.kft.md') && files.has('kiln.kft.md'), `uses in ${[...files]}`);
    const inQuotes = positionOf(draws, 'shared/', 0);
    const { items } = await ask<vscode.CompletionList>('vscode.executeCompletionItemProvider', uri, inQuotes);
    includes(items.map(({ label }) => String(label)).join(), 'town/conduit.kft.md');
    ok(await vscode.workspace.applyEdit(await renamed(draws.document, at, 'mains')), 'the rename was refused');
    await until('results', () => shows(draws, '= 16 A'));
    const meters = await vscode.workspace.openTextDocument(fileInWorkspace('shared/meters.kft.md'));
    equal([await meters.save(), await kiln.save()], [true, true], 'saved');
    includes(await textOf('shared/meters.kft.md'), 'mains = 208 V');
    includes(await textOf('kiln.kft.md'), 'use mains from "shared/meters.kft.md"');
    equal(kiln.isDirty, false, 'dirty');
  });

  it('saves a change of an input, and nothing else', async () => {
    const before = await textOf('kiln.kft.md');
    await show(kiln.uri); // The sheet that was renamed in is in front now.
    await ask('kilofoot.changeInput', { name: 'coil', value: '26' });
    await until('the new result', () => shows(draws, '= 8 A'));
    equal(await kiln.save(), true, 'saved');
    equal(await textOf('kiln.kft.md'), before.replace('13 Ω', '26 Ω'), 'the file');
    await replace(draws, '26', '13');
    await kiln.save();
  });

  it('runs cases, and writes their results beside them', async () => {
    await show(kiln.uri);
    const said = await heardWhile(() => ask('kilofoot.runCases', fileInWorkspace('cases.csv')));
    equal(said, ['3 cases are run, 1 of them with problems: cases.results.csv is written.'], 'what is told');
    const lines = (await textOf('cases.results.csv')).split('\n');
    includes(lines[1], '13,');
    includes(lines[3], 'outside 5 Ω to 40 Ω');
  });

  it('takes a report in each format that the host makes, and leaves no other file', async () => {
    const inNode = typeof process !== 'undefined' && process.versions?.node !== undefined;
    const formats = ['html', 'md', 'csv', 'xlsx', ...(inNode ? ['pdf', 'docx'] : [])];
    for (const format of formats) {
      await show(kiln.uri);
      await ask('kilofoot.exportReport', { format, target: fileInWorkspace(`out/kiln.${format}`) });
    }
    const entries = await vscode.workspace.fs.readDirectory(fileInWorkspace('out'));
    equal(entries.map(([name]) => name).sort(), formats.map((format) => `kiln.${format}`).sort(), 'the files');
    includes(await textOf('out/kiln.md'), '11.7');
    includes(await textOf('out/kiln.html'), 'Kiln');
  });

  it('writes where nothing can be renamed, and then leaves no other file either', async () => {
    const files = new (class extends MemoryFiles {
      override rename(from: vscode.Uri): void {
        throw vscode.FileSystemError.NoPermissions(from);
      }
    })();
    const system = vscode.workspace.registerFileSystemProvider('kept-unmoved', files);
    const target = files.put(vscode.Uri.parse('kept-unmoved:/out/kiln.md'), 'before');
    await show(kiln.uri);
    await ask('kilofoot.exportReport', { format: 'md', target });
    includes(files.text(target), '# Kiln');
    equal(files.readDirectory(vscode.Uri.joinPath(target, '..')), [['kiln.md', vscode.FileType.File]], 'the files');
    system.dispose();
  });

  it('answers in a sheet that is open as text', async () => {
    await ask('workbench.action.closeAllEditors');
    const document = await vscode.workspace.openTextDocument(fileInWorkspace('kiln.kft.md'));
    const { uri } = document;
    await vscode.window.showTextDocument(document);
    const at = document.positionAt(document.getText().indexOf('flow ='));
    const words = async () => {
      const hovers = await ask<vscode.Hover[]>('vscode.executeHoverProvider', uri, at);
      return hovers
        .flatMap(({ contents }) => contents.map((one) => (typeof one === 'string' ? one : one.value)))
        .join();
    };
    // The files that it names are read when it first asks for them.
    for (let i = 0; i < 100 && !(await words()).includes('16 A'); i++) {
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    includes(await words(), '16 A');
  });
});
