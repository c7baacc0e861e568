import * as vscode from 'vscode';
import { highlightsAt } from '../core';
import type { OpenSheets } from './open-sheets';

/** Marks the other places of the name at the cursor. */
export class SheetHighlights implements vscode.DocumentHighlightProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideDocumentHighlights(document: vscode.TextDocument, position: vscode.Position): vscode.DocumentHighlight[] {
    const spot = this.sheets.spot(document, position);
    return spot
      ? highlightsAt(spot.session, spot.cell.id, spot.offset).map(
          ({ span, defines }) =>
            new vscode.DocumentHighlight(
              spot.cell.range(span),
              defines ? vscode.DocumentHighlightKind.Write : vscode.DocumentHighlightKind.Read,
            ),
        )
      : [];
  }
}
