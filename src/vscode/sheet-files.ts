import * as vscode from 'vscode';
import { FilePositions, type LinkedSheet, type Place, pathInTree, readSheet, SheetSession } from '../core';
import type { Edit, Span } from '../text';
import { filesBelow } from './files-below';
import type { OpenSheet, OpenSheets } from './open-sheets';
import { Positions } from './positions';

/** A sheet of the workspace, open or not, with the way to write into it. */
export interface ReachableSheet extends LinkedSheet {
  /** The edits of one cell as the editor takes them, with the document they are for. */
  textEdits(cell: string, edits: readonly Edit[]): [vscode.Uri, vscode.TextEdit[]];
}

/** A place in another sheet's file: in its notebook where that is open, else in its text. */
export async function locationInFile(
  sheets: OpenSheets,
  uri: vscode.Uri,
  { cell, span }: Place,
): Promise<vscode.Location[]> {
  for (const sheet of sheets.all()) {
    const open = sheet.uri.toString() === uri.toString() ? sheet.cells()[Number(cell)] : undefined;
    const placed = open && sheet.placed(open.id);
    if (placed) {
      return [placed.location(span)];
    }
  }
  const text = await textOf(uri);
  const file = text === undefined ? undefined : asFile(uri, text);
  return file ? locationsIn(file, cell, [span]) : [];
}

/** Places of one cell where the editor shows them: in its own document, or in the text of the file. */
export function locationsIn(sheet: ReachableSheet, cell: string, spans: readonly Span[]): vscode.Location[] {
  const [uri, edits] = sheet.textEdits(
    cell,
    spans.map((span) => ({ span, newText: '' })),
  );
  return edits.map(({ range }) => new vscode.Location(uri, range));
}

/** Every sheet of the workspace that holds a word, and the sheet at `from` wherever it lies. */
export async function sheetsWithWord(sheets: OpenSheets, from: vscode.Uri, word: string): Promise<ReachableSheet[]> {
  const found = new Map<string, ReachableSheet>();
  for (const sheet of sheets.all()) {
    sheet.update();
    found.set(sheet.uri.toString(), asNotebook(sheet));
  }
  const folder = vscode.workspace.getWorkspaceFolder(from)?.uri ?? vscode.Uri.joinPath(from, '..');
  const files = from.scheme === 'untitled' ? [] : await filesBelow(folder, /\.kft(\.md)?$/);
  for (const uri of files.filter((file) => !found.has(file.toString()))) {
    const text = await textOf(uri);
    if (text?.includes(word)) {
      const sheet = asFile(uri, text);
      if (sheet) {
        found.set(uri.toString(), sheet);
      }
    }
  }
  return [...found.values()].filter(
    (sheet) => sheet.file === from.path || sheet.cells.some(({ text }) => text.includes(word)),
  );
}

function asNotebook(sheet: OpenSheet): ReachableSheet {
  return {
    ...pathsOf(sheet.uri),
    program: sheet.session.program,
    cells: sheet.cells(),
    textEdits: (cell, edits) => {
      const placed = sheet.placed(cell)!;
      return [placed.document.uri, placed.textEdits(edits)];
    },
  };
}

/** A sheet's path, and how it finds others. */
const pathsOf = (uri: vscode.Uri): Pick<ReachableSheet, 'file' | 'fileOf'> => ({
  file: uri.path,
  fileOf: (written) => {
    const way = pathInTree(written, uri.path);
    return 'problem' in way ? undefined : `/${way.path}`;
  },
});

/** A sheet by its text; undefined when nothing may be changed in it. */
function asFile(uri: vscode.Uri, text: string): ReachableSheet | undefined {
  const file = readSheet(new TextEncoder().encode(text));
  if (!file.editable) {
    return undefined;
  }
  const inFile = new FilePositions(file);
  const positions = new Positions(text);
  const session = new SheetSession();
  const cells = file.cells.map(({ kind, text: own }, index) => ({ id: String(index), kind, text: own }));
  session.update(cells);
  return {
    ...pathsOf(uri),
    program: session.program,
    cells,
    textEdits: (cell, edits) => [
      uri,
      positions.textEdits(edits.map((edit) => ({ ...edit, span: inFile.span(Number(cell), edit.span) }))),
    ],
  };
}

/** What a file holds now: what is typed where it is open as text, else what was saved. */
async function textOf(uri: vscode.Uri): Promise<string | undefined> {
  const open = vscode.workspace.textDocuments.find((document) => document.uri.toString() === uri.toString());
  if (open) {
    return open.getText().replaceAll('\r\n', '\n');
  }
  try {
    return new TextDecoder('utf-8', { fatal: true })
      .decode(await vscode.workspace.fs.readFile(uri))
      .replaceAll('\r\n', '\n');
  } catch {
    return undefined; // Gone, or no text: there is nothing in it to change.
  }
}
