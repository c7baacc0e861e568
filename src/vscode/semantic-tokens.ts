import * as vscode from 'vscode';
import { semanticTokens, tokenModifiers, tokenTypes } from '../core';
import type { OpenSheets } from './open-sheets';

/** Colours names by where their values come from. */
export class SheetTokens implements vscode.DocumentSemanticTokensProvider {
  static readonly legend = new vscode.SemanticTokensLegend([...tokenTypes], [...tokenModifiers]);

  constructor(
    private readonly sheets: OpenSheets,
    /** Fires when an edit elsewhere may have changed what a name is. */
    readonly onDidChangeSemanticTokens: vscode.Event<void>,
  ) {}

  provideDocumentSemanticTokens(document: vscode.TextDocument): vscode.SemanticTokens {
    const builder = new vscode.SemanticTokensBuilder(SheetTokens.legend);
    for (const { sheet, cell } of this.sheets.cells(document)) {
      for (const { span, type, modifiers } of semanticTokens(sheet.session, cell.id)) {
        builder.push(cell.range(span), type, modifiers);
      }
    }
    return builder.build();
  }
}
