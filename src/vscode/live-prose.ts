import * as vscode from 'vscode';
import type { LiveValue, SheetSession } from '../core';
import { type LiveMetadata, liveExpression } from '../renderer';
import { cellId, type OpenSheet } from './open-sheets';

/** An edit that meets one of somebody else's is refused, and then made again so many times, so long apart. */
const attempts = 20;
const pause = 50;

/** What a prose cell's metadata is to hold; undefined for a cell without live values. */
export function liveMetadata(session: SheetSession, cell: string): LiveMetadata | undefined {
  const live = session.liveValues(cell);
  return live.length === 0 ? undefined : live.map(entry);
}

const entry = ({ expression, text }: LiveValue): LiveMetadata[number] => {
  const key = liveExpression(`=${expression}`)!;
  return text === undefined ? [key] : [key, text];
};

/** Keeps the values that rendered prose shows in step with the sheet: one edit at a time, and none without a change. */
export class LiveProseCells {
  private readonly due = new Map<OpenSheet, Set<vscode.NotebookCell>>();

  /** Looks at cells whose values may have changed. */
  show(sheet: OpenSheet, cells: readonly vscode.NotebookCell[]): void {
    const prose = cells.filter(({ kind }) => kind === vscode.NotebookCellKind.Markup);
    const due = this.due.get(sheet);
    if (due) {
      for (const cell of prose) {
        due.add(cell);
      }
    } else if (prose.length > 0) {
      this.due.set(sheet, new Set(prose));
      void this.write(sheet).finally(() => this.due.delete(sheet));
    }
  }

  private async write(sheet: OpenSheet): Promise<void> {
    const due = this.due.get(sheet)!;
    for (let attempt = 0; attempt < attempts && due.size > 0 && !sheet.notebook.isClosed; attempt += 1) {
      const cells = [...due];
      due.clear();
      const edits = cells.flatMap((cell) => editOf(sheet.session, cell) ?? []);
      if (edits.length === 0) {
        continue;
      }
      const edit = new vscode.WorkspaceEdit();
      edit.set(sheet.notebook.uri, edits);
      const isDone = await vscode.workspace.applyEdit(edit).then(
        (applied) => applied,
        () => false,
      );
      if (!isDone) {
        for (const cell of cells) {
          due.add(cell);
        }
        await new Promise((resolve) => setTimeout(resolve, pause));
      }
    }
  }
}

/** What brings a cell's metadata up to date; undefined where it is, or where the cell was deleted. */
function editOf(session: SheetSession, cell: vscode.NotebookCell): vscode.NotebookEdit | undefined {
  const { live: before, ...others } = cell.metadata;
  const live = liveMetadata(session, cellId(cell));
  return cell.index < 0 || JSON.stringify(before) === JSON.stringify(live)
    ? undefined
    : vscode.NotebookEdit.updateCellMetadata(cell.index, { ...others, ...(live && { live }) });
}
