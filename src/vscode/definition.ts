import type * as vscode from 'vscode';
import { definitionAt, referencesAt } from '../core';
import { locationOf } from './edited-sheet';
import type { OpenSheets } from './open-sheets';

/** Leads from a name to where it is defined and to where it is used, across the cells of a sheet. */
export class SheetDefinitions implements vscode.DefinitionProvider, vscode.ReferenceProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideDefinition(document: vscode.TextDocument, position: vscode.Position): vscode.Location[] {
    return this.places(document, position, definitionAt);
  }

  provideReferences(document: vscode.TextDocument, position: vscode.Position): vscode.Location[] {
    return this.places(document, position, referencesAt);
  }

  private places(
    document: vscode.TextDocument,
    position: vscode.Position,
    find: typeof referencesAt,
  ): vscode.Location[] {
    const spot = this.sheets.spot(document, position);
    return spot ? find(spot.session, spot.cell.id, spot.offset).flatMap((place) => locationOf(spot.sheet, place)) : [];
  }
}
