import * as vscode from 'vscode';
import { definitionAt, type Place, referencesAt } from '../core';
import { cellId, type OpenSheet, type OpenSheets } from './open-sheets';
import { Positions } from './positions';

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
    const sheet = this.sheets.withDocument(document);
    sheet?.update();
    const offset = new Positions(document).offset(position);
    return sheet ? find(sheet.session, cellId({ document }), offset).flatMap((place) => location(sheet, place)) : [];
  }
}

function location(sheet: OpenSheet, { cell, span }: Place): vscode.Location[] {
  const there = sheet.notebook.getCells().find((candidate) => cellId(candidate) === cell)?.document;
  return there ? [new vscode.Location(there.uri, new Positions(there).range(span))] : [];
}
