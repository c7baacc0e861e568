import * as vscode from 'vscode';
import { linksOf } from '../core';
import type { OpenSheets } from './open-sheets';

const tooltips = { sheet: vscode.l10n.t('Open the sheet'), table: vscode.l10n.t('Open the file of rows') } as const;

/** Leads from `use "…"` and `schedule "….csv"` to the files. */
export class SheetLinks implements vscode.DocumentLinkProvider {
  constructor(private readonly sheets: OpenSheets) {}

  provideDocumentLinks(document: vscode.TextDocument): vscode.DocumentLink[] {
    return this.sheets.cells(document).flatMap(({ sheet, cell }) =>
      linksOf(sheet.session, cell.id).map(({ span, file, what }) => {
        const link = new vscode.DocumentLink(cell.range(span), vscode.Uri.joinPath(sheet.uri, '..', file));
        link.tooltip = tooltips[what];
        return link;
      }),
    );
  }
}
