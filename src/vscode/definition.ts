import type * as vscode from 'vscode';
import { definedNameAt, definitionAt, referencesAcross } from '../core';
import { locationOf } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { locationInFile, locationsIn, sheetsWithWord } from './sheet-files';
import type { WorkspaceFiles } from './workspace-files';

/** Leads from a name to where it is defined, in this sheet or the one it is taken from, and to where it is used, in whichever sheet. */
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

  async provideReferences(document: vscode.TextDocument, position: vscode.Position): Promise<vscode.Location[]> {
    const spot = this.sheets.spot(document, position);
    const name = spot && definedNameAt(spot.session, spot.cell.id, spot.offset);
    if (!spot || name === undefined) {
      return [];
    }
    const { uri } = spot.sheet;
    const reached = await sheetsWithWord(this.sheets, uri, name);
    const found = referencesAcross(reached, { file: uri.path, cell: spot.cell.id, offset: spot.offset });
    return found.flatMap(({ file, cell, spans }) =>
      locationsIn(reached.find((sheet) => sheet.file === file)!, cell, spans),
    );
  }
}
