import * as vscode from 'vscode';
import { documentSymbols, type SheetSymbol, type SymbolKind } from '../core';
import type { PlacedCell } from './edited-sheet';
import type { OpenSheets } from './open-sheets';

const kinds: Readonly<Record<SymbolKind, vscode.SymbolKind>> = {
  input: vscode.SymbolKind.Property,
  value: vscode.SymbolKind.Variable,
  record: vscode.SymbolKind.Object,
  function: vscode.SymbolKind.Function,
  table: vscode.SymbolKind.Array,
  check: vscode.SymbolKind.Boolean,
  field: vscode.SymbolKind.Field,
};

/** The names and checks of a document's cells, for the outline, the breadcrumbs and going to a symbol. */
export class SheetOutline implements vscode.DocumentSymbolProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideDocumentSymbols(document: vscode.TextDocument): vscode.DocumentSymbol[] {
    return this.sheets
      .cells(document)
      .flatMap(({ sheet, cell }) => documentSymbols(sheet.session, cell.id).map((symbol) => toEditor(symbol, cell)));
  }
}

function toEditor(
  { name, detail, kind, span, nameSpan, fields }: SheetSymbol,
  cell: PlacedCell,
): vscode.DocumentSymbol {
  const made = new vscode.DocumentSymbol(name, detail, kinds[kind], cell.range(span), cell.range(nameSpan));
  made.children = fields.map((field) => toEditor(field, cell));
  return made;
}
