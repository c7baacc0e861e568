import * as vscode from 'vscode';
import { renamableAt, renameAt } from '../core';
import type { OpenSheets } from './open-sheets';
import { sheetsWithWord } from './sheet-files';
import { isWriteProtected } from './write-protection';

/** Renames a name in all cells and live values of its sheet and in every sheet that shares it, as one change. */
export class SheetRenames implements vscode.RenameProvider {
  constructor(private readonly sheets: OpenSheets) {}

  prepareRename(
    document: vscode.TextDocument,
    position: vscode.Position,
  ): { range: vscode.Range; placeholder: string } {
    const spot = this.sheets.spot(document, position);
    const found = spot && renamableAt(spot.session, spot.cell.id, spot.offset);
    if (!spot || !found || 'problem' in found) {
      throw new Error(
        found && 'problem' in found ? found.problem : vscode.l10n.t('There is no name here that could be changed.'),
      );
    }
    return { range: spot.cell.range(found.span), placeholder: found.name };
  }

  async provideRenameEdits(
    document: vscode.TextDocument,
    position: vscode.Position,
    newName: string,
  ): Promise<vscode.WorkspaceEdit | undefined> {
    const spot = this.sheets.spot(document, position);
    const old = spot && renamableAt(spot.session, spot.cell.id, spot.offset);
    if (!spot || !old) {
      return undefined;
    }
    const { uri } = spot.sheet;
    const reached = 'problem' in old ? [] : await sheetsWithWord(this.sheets, uri, old.name);
    const result =
      'problem' in old ? old : renameAt(reached, { file: uri.path, cell: spot.cell.id, offset: spot.offset }, newName);
    if ('problem' in result) {
      throw new Error(result.problem);
    }
    const touched = new Set(result.edits.map(({ file }) => file));
    for (const file of touched) {
      // The editor would change such a file in memory alone, and the sheets would no longer fit together.
      if (await isWriteProtected(uri.with({ path: file }))) {
        const name = file.split('/').at(-1) ?? file;
        throw new Error(
          vscode.l10n.t(
            '{0} is read-only and uses this name, so nothing was renamed. Let it be written to first.',
            name,
          ),
        );
      }
    }
    const edit = new vscode.WorkspaceEdit();
    const byDocument = new Map<string, [vscode.Uri, vscode.TextEdit[]]>();
    for (const { file, cell, edits } of result.edits) {
      const [target, made] = reached.find((sheet) => sheet.file === file)!.textEdits(cell, edits);
      const known = byDocument.get(target.toString());
      byDocument.set(target.toString(), [target, [...(known?.[1] ?? []), ...made]]);
    }
    for (const [target, edits] of byDocument.values()) {
      edit.set(target, edits);
    }
    return edit;
  }
}
