import type * as vscode from 'vscode';
import { definitionAt, referencesAt } from '../core';
import { locationOf } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { locationInFile } from './sheet-files';
import type { WorkspaceFiles } from './workspace-files';

/** Leads from a name to where it is defined, in this sheet or the one it is taken from, and to where it is used. */
export class SheetDefinitions implements vscode.DefinitionProvider, vscode.ReferenceProvider {
  constructor(
    private readonly sheets: OpenSheets,
    private readonly files: WorkspaceFiles,
  ) {}

  async provideDefinition(document: vscode.TextDocument, position: vscode.Position): Promise<vscode.Location[]> {
    const spot = this.sheets.spot(document, position);
    const [place] = spot ? definitionAt(spot.session, spot.cell.id, spot.offset) : [];
    if (!spot || !place) {
      return [];
    }
    return place.file === undefined
      ? locationOf(spot.sheet, place)
      : locationInFile(this.sheets, this.files.addressOf(place.file, spot.sheet.uri), place);
  }

  provideReferences(document: vscode.TextDocument, position: vscode.Position): vscode.Location[] {
    const spot = this.sheets.spot(document, position);
    return spot
      ? referencesAt(spot.session, spot.cell.id, spot.offset).flatMap((place) => locationOf(spot.sheet, place))
      : [];
  }
}
