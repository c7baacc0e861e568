import * as vscode from 'vscode';
import { selectionRangesAt } from '../core';
import type { OpenSheets } from './open-sheets';

/** Grows a selection by what belongs together. */
export class SheetSelections implements vscode.SelectionRangeProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideSelectionRanges(document: vscode.TextDocument, positions: vscode.Position[]): vscode.SelectionRange[] {
    return positions.map((position) => {
      const spot = this.sheets.spot(document, position);
      const spans = spot ? selectionRangesAt(spot.session, spot.cell.id, spot.offset) : [];
      const ranges = spans.map((span) => spot!.cell.range(span));
      return (
        ranges.reduceRight<vscode.SelectionRange | undefined>(
          (outer, range) => new vscode.SelectionRange(range, outer),
          undefined,
        ) ?? new vscode.SelectionRange(new vscode.Range(position, position))
      );
    });
  }
}
