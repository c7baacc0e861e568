import * as vscode from 'vscode';
import { signatureAt } from '../core';
import type { OpenSheets } from './open-sheets';

/** Shows a function's parameters while its arguments are typed. */
export class SheetSignatures implements vscode.SignatureHelpProvider {
  static readonly triggers = ['(', ',', ':'];

  constructor(private readonly sheets: OpenSheets) {}

  provideSignatureHelp(document: vscode.TextDocument, position: vscode.Position): vscode.SignatureHelp | undefined {
    const spot = this.sheets.spot(document, position);
    const found = spot && signatureAt(spot.session, spot.cell.id, spot.offset);
    if (!found) {
      return undefined;
    }
    const signature = new vscode.SignatureInformation(found.label, found.summary);
    signature.parameters = found.parameters.map(
      ({ span, page }) =>
        new vscode.ParameterInformation(
          [span.start, span.end],
          page === '' ? undefined : new vscode.MarkdownString(page),
        ),
    );
    const help = new vscode.SignatureHelp();
    help.signatures = [signature];
    // One past the last marks none of them.
    help.activeParameter = found.active < 0 ? found.parameters.length : found.active;
    return help;
  }
}
