import * as vscode from 'vscode';
import { inlayHints } from '../core';
import { languageId, settings } from './names';
import type { OpenSheets } from './open-sheets';

/** Shows results at line ends: where a sheet is open as text, or everywhere, or nowhere, as a person set it. */
export class SheetInlayHints implements vscode.InlayHintsProvider {
  constructor(
    private readonly sheets: OpenSheets,
    readonly onDidChangeInlayHints: vscode.Event<void>,
  ) {}

  provideInlayHints(document: vscode.TextDocument, range: vscode.Range): vscode.InlayHint[] {
    const wanted = vscode.workspace
      .getConfiguration(settings.section, document.uri)
      .get<string>(settings.lineEnds, 'asText');
    if (wanted === 'never' || (wanted === 'asText' && document.languageId === languageId)) {
      return []; // A notebook shows its results under the cells already.
    }
    return this.sheets.cells(document).flatMap(({ sheet, cell }) =>
      inlayHints(sheet.session, cell.id).flatMap(({ offset, text }) => {
        const { end } = cell.range({ start: offset, end: offset });
        if (!range.contains(end)) {
          return [];
        }
        const hint = new vscode.InlayHint(end, text);
        hint.paddingLeft = true;
        return [hint];
      }),
    );
  }
}
