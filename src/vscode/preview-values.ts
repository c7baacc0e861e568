import * as vscode from 'vscode';
import { liveExpression } from '../renderer';
import type { PreviewValues } from './markdown-preview';
import type { OpenSheets } from './open-sheets';

const none: ReadonlyMap<string, string> = new Map();

/**
 * The live values of sheets that the Markdown preview shows. `again` fires when files that sheets name were read: the
 * preview knows only of its own document, and is asked to render anew.
 */
export function previewValues(
  sheets: OpenSheets,
  again: vscode.Event<void>,
): { readonly values: PreviewValues; readonly watching: vscode.Disposable } {
  let isUsed = false;
  const values: PreviewValues = (uri) => {
    const document = vscode.workspace.textDocuments.find((open) => open.uri.toString() === String(uri));
    const sheet = document && sheets.ofText(document);
    sheet?.update();
    if (!document || !sheet || sheet.isWaiting) {
      isUsed ||= sheet !== undefined;
      return none;
    }
    isUsed = true;
    const live = sheet.proseIn().flatMap(({ id }) => sheet.session.liveValues(id));
    return new Map(
      live.flatMap(({ expression, text }): [string, string][] =>
        text === undefined ? [] : [[liveExpression(`=${expression}`)!, text]],
      ),
    );
  };
  const watching = again(() => {
    if (isUsed) {
      void vscode.commands.executeCommand('markdown.preview.refresh');
    }
  });
  return { values, watching };
}
