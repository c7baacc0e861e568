import * as vscode from 'vscode';
import { type CompletionKind, completionsAt, nearbyWanted } from '../core';
import { nearbyOf } from './nearby';
import type { OpenSheets } from './open-sheets';

const kinds: Readonly<Record<CompletionKind, vscode.CompletionItemKind>> = {
  file: vscode.CompletionItemKind.File,
  name: vscode.CompletionItemKind.Variable,
  field: vscode.CompletionItemKind.Field,
  function: vscode.CompletionItemKind.Function,
  parameter: vscode.CompletionItemKind.Property,
  unit: vscode.CompletionItemKind.Unit,
  word: vscode.CompletionItemKind.EnumMember,
  keyword: vscode.CompletionItemKind.Keyword,
  snippet: vscode.CompletionItemKind.Snippet,
};

/** Offers what may stand at the cursor. */
export class SheetCompletions implements vscode.CompletionItemProvider {
  static readonly triggers = ['.', ' ', ':', '"', '/'];

  constructor(private readonly sheets: OpenSheets) {}

  async provideCompletionItems(
    document: vscode.TextDocument,
    position: vscode.Position,
  ): Promise<vscode.CompletionItem[]> {
    const spot = this.sheets.spot(document, position);
    if (!spot) {
      return [];
    }
    const wanted = nearbyWanted(spot.session, spot.cell.id, spot.offset);
    const nearby = wanted && (await nearbyOf(this.sheets, spot.sheet.uri, wanted));
    return completionsAt(spot.session, spot.cell.id, spot.offset, nearby).map((found, index) => {
      const item = new vscode.CompletionItem(found.label, kinds[found.kind]);
      item.detail = found.detail;
      item.documentation = found.page === undefined ? undefined : new vscode.MarkdownString(found.page);
      item.insertText = found.kind === 'snippet' ? new vscode.SnippetString(found.text) : found.text;
      item.range = spot.cell.range(found.replaces);
      item.sortText = String(index).padStart(4, '0');
      return item;
    });
  }
}
