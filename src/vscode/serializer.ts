import * as vscode from 'vscode';
import {
  type CellOrigin,
  type FileOrigin,
  FilePositions,
  linksOf,
  readSheet,
  type SheetCell,
  type SheetFile,
  SheetSession,
  writeSheet,
} from '../core';
import { LineIndex } from '../text';
import { liveMetadata } from './live-prose';
import { languageId } from './names';
import { notebookOutputs, present } from './presentation';
import { sameBytes } from './same-bytes';

/** What rides along with an open sheet so that it is written back as it was read. Plain JSON. */
export interface SheetMetadata {
  readonly origin: FileOrigin;
  readonly editable: boolean;
  /** Problems of the file itself, each with its line. */
  readonly notices: readonly string[];
}

/**
 * Where a cell came from, from its metadata. It stands there as JSON in one string: the editor compares what is in the
 * metadata by identity, and would take an object for changed when anything beside it changes.
 */
export const originIn = (metadata: vscode.NotebookCellData['metadata']): CellOrigin | undefined =>
  typeof metadata?.origin === 'string' ? JSON.parse(metadata.origin) : undefined;

export const emptyOrigin: FileOrigin = { tail: '', lineEnd: '\n', byteOrderMark: false };

/** The files that were last written here, which tell a change of somebody else's from one of ours. */
const recent: Uint8Array[] = [];
const mostRecent = 16;

function remember(bytes: Uint8Array): Uint8Array {
  recent.push(bytes);
  recent.splice(0, recent.length - mostRecent);
  return bytes;
}

/** True for what the editor itself wrote to a file not long ago. */
export const isOurs = (bytes: Uint8Array): boolean => recent.some((known) => sameBytes(known, bytes));

/** Reads and writes sheets for the editor. Results come with the cells, so that a sheet opens with them in place. */
export class SheetSerializer implements vscode.NotebookSerializer {
  deserializeNotebook(bytes: Uint8Array): vscode.NotebookData {
    return notebookFrom(readSheet(bytes), new TextDecoder().decode(bytes));
  }

  serializeNotebook(data: vscode.NotebookData): Uint8Array {
    const metadata = data.metadata as Partial<SheetMetadata> | undefined;
    const cells = data.cells.map(sheetCell);
    if (metadata?.editable === false && !unchanged(cells)) {
      throw new Error(
        vscode.l10n.t(
          'This file was opened for reading only, so its changes were not saved and the file is as it was. Reopen it with the text editor, mend what the notice names, and open it as a sheet again.',
        ),
      );
    }
    return remember(writeSheet(cells, metadata?.origin ?? emptyOrigin));
  }
}

/** The bytes that a notebook would be saved as now. */
export function bytesOfNotebook(notebook: vscode.NotebookDocument): Uint8Array {
  const cells = notebook.getCells().map(({ kind, document, metadata }) => {
    const cell = new vscode.NotebookCellData(kind, document.getText(), document.languageId);
    cell.metadata = metadata;
    return cell;
  });
  const data = new vscode.NotebookData(cells);
  data.metadata = notebook.metadata;
  return new SheetSerializer().serializeNotebook(data);
}

/** The notebook of a sheet that was read; `text` serves to tell the lines of notices. */
export function notebookFrom(file: SheetFile, text: string): vscode.NotebookData {
  const session = new SheetSession();
  session.update(file.cells.map((cell, index) => ({ ...cell, id: String(index) })));
  // Where the file lies is not known here, and neither are the files beside it: results follow when it is shown.
  const namesFiles = file.cells.some((_, index) => linksOf(session, String(index)).length > 0);
  const data = new vscode.NotebookData(
    file.cells.map((cell, index) => {
      const made = new vscode.NotebookCellData(...cellShape(cell));
      const live = cell.kind === 'prose' && !namesFiles ? liveMetadata(session, String(index)) : undefined;
      made.metadata = { ...(cell.origin && { origin: JSON.stringify(cell.origin) }), ...(live && { live }) };
      if (cell.kind === 'calculation' && file.editable && !namesFiles) {
        const presentation = present(session, String(index));
        made.outputs = notebookOutputs(presentation);
        made.executionSummary = { success: !presentation.failed };
      }
      return made;
    }),
  );
  const lines = new LineIndex(text);
  const newer = session.newerFormat;
  const told = [...file.notices, ...(newer ? [new FilePositions(file).inFile(0, newer, Number)] : [])];
  const notices = told.map((notice) =>
    vscode.l10n.t('Line {0}: {1}', lines.at(notice.span.start).line, notice.message),
  );
  data.metadata = { origin: file.origin, editable: file.editable, notices } satisfies SheetMetadata;
  return data;
}

const frontMatter = /^---\n[\s\S]*?^(---|\.\.\.)\s*$/m;

/** Front matter is prose in the file; here it is a YAML cell, which reads as what it is. */
function cellShape({ kind, text }: SheetCell): [vscode.NotebookCellKind, string, string] {
  if (kind === 'calculation') {
    return [vscode.NotebookCellKind.Code, text, languageId];
  }
  const whole = frontMatter.exec(text);
  return whole?.index === 0 && whole[0].trimEnd() === text.trimEnd()
    ? [vscode.NotebookCellKind.Code, text, 'yaml']
    : [vscode.NotebookCellKind.Markup, text, 'markdown'];
}

function sheetCell(cell: vscode.NotebookCellData): SheetCell {
  return {
    kind: cell.kind === vscode.NotebookCellKind.Code && cell.languageId === languageId ? 'calculation' : 'prose',
    text: cell.value.replaceAll('\r\n', '\n'),
    origin: originIn(cell.metadata),
  };
}

const unchanged = (cells: readonly SheetCell[]): boolean => cells.every(({ text, origin }) => origin?.text === text);
