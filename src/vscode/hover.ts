import * as vscode from 'vscode';
import { type Hover, hoverAt } from '../core';
import type { PlacedCell } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { tickOff } from './walkthrough';

/** Shows what core tells of the conductor, name, function or unit under the pointer. */
export class SheetHovers implements vscode.HoverProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideHover(document: vscode.TextDocument, position: vscode.Position): vscode.Hover | undefined {
    const spot = this.sheets.spot(document, position);
    const found = spot && hoverAt(spot.session, spot.cell.id, spot.offset);
    if (found) {
      tickOff('sourceShown');
      return shownAt(found, spot.cell);
    }
    return this.inProse(document, position);
  }

  /** What core tells of a live value. */
  private inProse(document: vscode.TextDocument, position: vscode.Position): vscode.Hover | undefined {
    const sheet = this.sheets.withDocument(document);
    for (const cell of sheet?.proseIn(document) ?? []) {
      const offset = cell.offset(position);
      const found = offset === undefined ? undefined : sheet?.session.proseHover(cell.id, offset);
      if (found) {
        return shownAt(found, cell);
      }
    }
    return undefined;
  }
}

const shownAt = ({ markdown, span }: Hover, cell: PlacedCell): vscode.Hover =>
  new vscode.Hover(new vscode.MarkdownString(markdown), cell.range(span));
