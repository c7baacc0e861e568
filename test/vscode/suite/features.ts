import * as vscode from 'vscode';
import { equal, includes, ok, until } from './expect';
import { cellWith, codeOf, fileInWorkspace, positionOf, renamed, show, shown, writeFile } from './sheets';

const fenced = (text: string) => `\`\`\`kft\n${text}\n\`\`\`\n`;

const ask = <T>(command: string, ...rest: unknown[]) => vscode.commands.executeCommand<T>(command, ...rest);

/** The text that each place marks, with the document's own line ends. */
const textAt = (document: vscode.TextDocument, ranges: readonly vscode.Range[]) =>
  ranges.map((range) => document.getText(range));

describe('rename', () => {
  it('reaches all cells, the prose and closed sheets', async () => {
    const closed = await writeFile('rename/closed.kft.md', fenced('use run from "open.kft.md"\nx = run * 2'));
    const text = `${fenced('run = 3 ft')}\nThe run is \`= run in m\`.\n\n${fenced('y = run * 2')}`;
    const notebook = await show(await writeFile('rename/open.kft.md', text));
    const first = notebook.cellAt(0);
    await until('results', () => shown(notebook.cellAt(2), 'text/plain').includes('6'));
    const edit = await renamed(first.document, positionOf(first, 'run', 1), 'way');
    ok(await vscode.workspace.applyEdit(edit), 'the edit was refused');
    equal(
      notebook.getCells().map((cell) => cell.document.getText()),
      ['way = 3 ft', 'The run is `= way in m`.', 'y = way * 2'],
      'the cells',
    );
    const other = await vscode.workspace.openTextDocument(closed);
    includes(other.getText(), 'use way from "open.kft.md"\nx = way * 2');
    await until('the result', () => shown(notebook.cellAt(2), 'text/plain').includes('way'));
    await other.save();
  });

  it('says why a name cannot be taken', async () => {
    const notebook = await show(await writeFile('rename/refused.kft.md', fenced('a = 3\nb = a')));
    const cell = notebook.cellAt(0);
    const said = await renamed(cell.document, positionOf(cell, 'a ='), 'b').then(
      () => '',
      (error: Error) => String(error.message ?? error),
    );
    includes(said, '`b` is defined already');
  });
});

describe('the features of the language in a cell', () => {
  it('outline, fold, select and format it', async () => {
    const notebook = await show(
      await writeFile(
        'features.kft.md',
        fenced('load=3 A\nk = circuit\n   load: load\n   voltage: 120 V\ncheck load < 4 A "fine"'),
      ),
    );
    const cell = notebook.cellAt(0);
    const { document } = cell;
    const { uri } = document;
    const symbols = await ask<vscode.DocumentSymbol[]>('vscode.executeDocumentSymbolProvider', uri);
    equal(
      symbols.map(({ name, detail }) => `${name} ${detail}`),
      ['load 3 A', 'k ', 'fine yes'],
      'the outline',
    );
    equal(
      symbols[1].children.map(({ name }) => name),
      ['load', 'voltage'],
      'the fields',
    );
    const folds = await ask<vscode.FoldingRange[]>('vscode.executeFoldingRangeProvider', uri);
    ok(
      folds.some(({ start, end }) => start === 1 && end === 3),
      `no fold for the form: ${JSON.stringify(folds)}`,
    );
    const [selection] = await ask<vscode.SelectionRange[]>('vscode.executeSelectionRangeProvider', uri, [
      positionOf(cell, 'voltage', 2),
    ]);
    const grown: string[] = [];
    for (let range: vscode.SelectionRange | undefined = selection; range; range = range.parent) {
      grown.push(document.getText(range.range));
    }
    ok(grown.includes('voltage: 120 V'), `the field is none of ${JSON.stringify(grown)}`);
    const edits = await ask<vscode.TextEdit[]>('vscode.executeFormatDocumentProvider', uri, {
      tabSize: 2,
      insertSpaces: true,
    });
    const edit = new vscode.WorkspaceEdit();
    edit.set(uri, edits);
    await vscode.workspace.applyEdit(edit);
    equal(
      document.getText(),
      'load = 3 A\nk = circuit\n  load: load\n  voltage: 120 V\ncheck load < 4 A "fine"',
      'the formatted cell',
    );
    await ask('workbench.action.files.revert');
  });

  it('highlights, colours, signatures and links', async () => {
    const notebook = await show(
      await writeFile(
        'features2.kft.md',
        fenced('input run = 3 ft\nx = run + run\nc = resistance(12 AWG Cu, run)\nuse a from "kiln.kft.md"'),
      ),
    );
    const cell = notebook.cellAt(0);
    const { uri } = cell.document;
    const highlights = await ask<vscode.DocumentHighlight[]>(
      'vscode.executeDocumentHighlights',
      uri,
      positionOf(cell, 'run +', 1),
    );
    equal(
      highlights.map(({ kind }) => kind),
      [2, 1, 1, 1],
      'kinds of highlights',
    );
    const legend = await ask<vscode.SemanticTokensLegend>('vscode.provideDocumentSemanticTokensLegend', uri);
    const tokens = await ask<vscode.SemanticTokens>('vscode.provideDocumentSemanticTokens', uri);
    ok(legend.tokenTypes.includes('conductor') && tokens.data.length >= 5 * 8, 'too few tokens');
    const help = await ask<vscode.SignatureHelp>(
      'vscode.executeSignatureHelpProvider',
      uri,
      positionOf(cell, ', run', 2),
    );
    includes(help.signatures[0].label, 'resistance(conductor');
    equal(help.activeParameter, 1, 'the active parameter');
    const links = await ask<vscode.DocumentLink[]>('vscode.executeLinkProvider', uri);
    equal(
      links.map(({ target }) => target?.toString()),
      [fileInWorkspace('kiln.kft.md').toString()],
      'links',
    );
  });
});

describe('a sheet that is open as text', () => {
  const text = `---\ntitle: T\n---\n\n# T\n\n  ${'```kft'}\n  x = 3 V\n  y = 2 A\n  z = x + y\n  ${'```'}\n\nprose x\n\n${fenced('c = 12 AWG Cu THHN\nw = x * y\nq = 12 AWG C')}`;
  let document: vscode.TextDocument;
  const at = (part: string, by = 0) => document.positionAt(document.getText().indexOf(part) + by);

  before(async () => {
    document = await vscode.workspace.openTextDocument(await writeFile('text/sheet.kft.md', text));
    equal(document.languageId, 'markdown', 'its language');
    await vscode.window.showTextDocument(document);
  });

  it('marks problems in its fences', async () => {
    const problem = await until('a problem', () =>
      vscode.languages.getDiagnostics(document.uri).find((found) => codeOf(found) !== 'unused-name'),
    );
    equal(document.getText(problem.range), 'x + y', 'the marked text');
    equal(problem.range.start.line, 9, 'its line');
  });

  it('tells of conductors and names, and of nothing in the prose', async () => {
    const hovers = (part: string, by = 0) =>
      ask<vscode.Hover[]>('vscode.executeHoverProvider', document.uri, at(part, by));
    const [conductor] = await hovers('12 AWG Cu THHN', 8);
    includes((conductor.contents[0] as vscode.MarkdownString).value, '1.98 Ω/kft');
    equal(document.getText(conductor.range), '12 AWG Cu THHN', 'the hovered text');
    const [name] = await hovers('x * y');
    includes((name.contents[0] as vscode.MarkdownString).value, '3 V');
    equal((await hovers('prose x', 6)).length, 0, 'hovers in the prose');
  });

  it('tells the same of a conductor as a notebook does, in a schedule too', async () => {
    const rows = 'p = schedule\n  | tag | conductor |\n  | --- | --- |\n  | P1 | 12 AWG Cu THHN |';
    const notebook = await show(
      await writeFile('text/same.kft.md', `${fenced('c = 12 AWG Cu THHN')}\n${fenced(rows)}`),
    );
    const pages = await Promise.all(
      [document.uri, ...notebook.getCells().map((cell) => cell.document.uri)].map(async (uri) => {
        const place = (await vscode.workspace.openTextDocument(uri)).getText().indexOf('12 AWG Cu THHN') + 8;
        const [hover] = await ask<vscode.Hover[]>(
          'vscode.executeHoverProvider',
          uri,
          (await vscode.workspace.openTextDocument(uri)).positionAt(place),
        );
        return (hover.contents[0] as vscode.MarkdownString).value;
      }),
    );
    equal([pages[1] === pages[0], pages[2] === pages[0]], [true, true], 'the same page');
    await vscode.window.showTextDocument(document);
  });

  it('completes, leads to definitions, outlines, formats and renames', async () => {
    const { items } = await ask<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      document.uri,
      at('AWG C\n', 5),
    );
    ok(
      items.some(({ label }) => label === 'Cu'),
      'no word `Cu`',
    );
    const snippets = async (place: vscode.Position) => {
      const found = await ask<vscode.CompletionList>('vscode.executeCompletionItemProvider', document.uri, place);
      return found.items
        .filter(({ insertText }) => insertText instanceof vscode.SnippetString)
        .map(({ label }) => label);
    };
    ok((await snippets(at('w = x'))).includes('schedule'), 'no snippet where a statement begins');
    equal((await snippets(at('AWG C\n', 5))).includes('schedule'), false, 'a snippet behind a size');
    const [place] = await ask<vscode.Location[]>('vscode.executeDefinitionProvider', document.uri, at('x * y'));
    equal([place.range.start.line, document.getText(place.range)], [7, 'x'], 'the definition');
    const symbols = await ask<vscode.DocumentSymbol[]>('vscode.executeDocumentSymbolProvider', document.uri);
    const names = symbols.flatMap(({ name, children }) => [name, ...children.map((child) => child.name)]);
    ok(names.includes('w') && names.includes('z'), `the outline lacks w or z: ${names}`);
    const hints = await ask<vscode.InlayHint[]>(
      'vscode.executeInlayHintProvider',
      document.uri,
      new vscode.Range(0, 0, document.lineCount, 0),
    );
    equal(
      hints.map(({ label }) => label),
      ['= 6 W'],
      'results at line ends',
    );
    const edit = await renamed(document, at('x = 3'), 'volts');
    const [[uri, edits]] = edit.entries();
    equal(uri.toString(), document.uri.toString(), 'the file');
    equal(
      textAt(
        document,
        edits.map(({ range }) => range),
      ),
      ['x', 'x', 'x'],
      'what is renamed',
    );
  });

  it('offers fixes inside a fence', async () => {
    const sheet = await vscode.workspace.openTextDocument(
      await writeFile('text/fix.kft.md', `# T\n\n${fenced('check 3 A < 4 A “fine”')}`),
    );
    await vscode.window.showTextDocument(sheet);
    const problem = await until('a problem', () => vscode.languages.getDiagnostics(sheet.uri)[0]);
    const actions = await ask<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      sheet.uri,
      problem.range,
      'source.fixAll.kilofoot',
    );
    ok(actions[0]?.edit, `no action fixes all: ${JSON.stringify(actions.map(({ title }) => title))}`);
    ok(await vscode.workspace.applyEdit(actions[0].edit), 'the fix was refused');
    includes(sheet.getText(), 'check 3 A < 4 A "fine"');
    await ask('workbench.action.files.revert');
    await ask('workbench.action.closeAllEditors');
  });
});

describe('a rename', () => {
  it('leads from a cell of the example to all its uses', async () => {
    const notebook = await show(fileInWorkspace('kiln.kft.md'));
    const cell = cellWith(notebook, 'run = 62 ft');
    const edit = await renamed(cell.document, positionOf(cell, 'run = 62', 1), 'one_way');
    ok(edit.size >= 2, 'only one cell is changed');
  });
});
