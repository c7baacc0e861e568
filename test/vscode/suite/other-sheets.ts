import * as vscode from 'vscode';
import { equal, includes, until } from './expect';
import { cellWith, positionOf, replace, show, shown, writeFile } from './sheets';

const fenced = (text: string) => `\`\`\`kft\n${text}\n\`\`\`\n`;

describe('a sheet that takes names from another one', () => {
  it('shows what stands there, follows the file on the disk, and then what is typed in its editor', async () => {
    const file = await writeFile('shared/meters.kft.md', `# Shared\n\n${fenced('supply = 208 V')}`);
    const text = fenced('use supply from "meters.kft.md"\nflow = supply / 13 Ω');
    const notebook = await show(await writeFile('shared/kiln.kft.md', text));
    await vscode.window.showNotebookDocument(notebook, { preview: false }); // Else the other one takes its tab.
    const cell = notebook.cellAt(0);
    await until('the result', () => shown(cell, 'text/plain').includes('16 A'));
    equal(vscode.languages.getDiagnostics(cell.document.uri).length, 0, 'problems');
    equal(notebook.isDirty, false, 'dirty after opening');
    await vscode.workspace.fs.writeFile(file, new TextEncoder().encode(`# Shared\n\n${fenced('supply = 260 V')}`));
    await until('the file as it was written', () => shown(cell, 'text/plain').includes('20 A'));
    const other = await show(file);
    await replace(cellWith(other, 'supply ='), '260', '130');
    await until('what was typed there', () => shown(cell, 'text/plain').includes('10 A'));
    await replace(cellWith(other, 'supply ='), '130', '260');
    await until('what was taken back there', () => shown(cell, 'text/plain').includes('20 A'));
  });

  it('leads to the definition there, and to each use in both', async () => {
    const file = await writeFile('shared/far.kft.md', `# Far\n\n${fenced('a = 1\nsupply = 208 V')}`);
    const notebook = await show(
      await writeFile('shared/near.kft.md', fenced('use supply from "far.kft.md"\nflow = supply / 13 Ω')),
    );
    const cell = notebook.cellAt(0);
    await until('the result', () => shown(cell, 'text/plain').includes('16 A'));
    const definition = async () => {
      const [place] = await vscode.commands.executeCommand<vscode.Location[]>(
        'vscode.executeDefinitionProvider',
        cell.document.uri,
        positionOf(cell, 'supply /', 1),
      );
      return place;
    };
    const uses = async () => {
      const places = await vscode.commands.executeCommand<vscode.Location[]>(
        'vscode.executeReferenceProvider',
        cell.document.uri,
        positionOf(cell, 'supply /', 1),
      );
      return places.map(({ uri, range }) => `${uri.path.split('/').at(-1)} ${range.start.line}`).sort();
    };
    const closed = await definition();
    equal(await uses(), ['far.kft.md 4', 'near.kft.md 0', 'near.kft.md 1'], 'the uses, with the other file closed');
    equal([closed.uri.toString(), closed.range.start.line], [file.toString(), 4], 'the place in the closed file');
    const other = await show(file);
    const open = await definition();
    equal(open.uri.toString(), cellWith(other, 'supply =').document.uri.toString(), 'the cell of the open one');
    equal(open.range.start.line, 1, 'its line');
    equal(await uses(), ['far.kft.md 1', 'near.kft.md 0', 'near.kft.md 1'], 'the uses, with both open');
  });

  it('is helped to the names of files near it, and of what stands in them', async () => {
    await writeFile('named/meters.kft.md', fenced('pocket = meter(reading: 1 %)\nsupply = 208 V'));
    await writeFile('named/loads.csv', 'load\n3 A\n');
    const text = fenced('use  from "meters.kft.md"\nuse supply from ""\nrows = schedule ""');
    const notebook = await show(await writeFile('named/sheet.kft.md', text));
    const cell = notebook.cellAt(0);
    const labels = async (line: number, character: number) => {
      const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
        'vscode.executeCompletionItemProvider',
        cell.document.uri,
        new vscode.Position(line, character),
      );
      const { Variable, File } = vscode.CompletionItemKind; // The editor adds words and snippets of its own.
      return items.filter(({ kind }) => kind === Variable || kind === File).map(({ label }) => label);
    };
    equal(await labels(0, 4), ['pocket', 'supply'], 'names');
    includes((await labels(1, 17)).join(), 'meters.kft.md');
    includes((await labels(2, 17)).join(), 'loads.csv');
  });

  it('says what is wrong when the other sheet is not there', async () => {
    const notebook = await show(await writeFile('shared/lost.kft.md', fenced('use supply from "gone.kft.md"')));
    const { uri } = notebook.cellAt(0).document;
    const [problem] = await until('a problem', () => {
      const found = vscode.languages.getDiagnostics(uri);
      return found.length > 0 && found;
    });
    includes(problem.message, 'is not there');
  });
});
