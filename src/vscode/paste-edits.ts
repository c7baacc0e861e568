import * as vscode from 'vscode';
import { isSpreadsheet, type PastedSchedule, pastedSchedule } from '../core';
import type { OpenSheets } from './open-sheets';
import { lineOfItsOwn } from './paste-schedule';

/** What VS Code has had since 1.97, of which the types for the oldest that we run in know nothing. */
interface PasteApi {
  readonly DocumentDropOrPasteEditKind?: { readonly Empty: PasteKind };
  readonly DocumentPasteEdit: new (text: vscode.SnippetString, title: string, kind: PasteKind) => PasteEdit;
  readonly languages: {
    registerDocumentPasteEditProvider(
      selector: vscode.DocumentSelector,
      provider: SchedulePastes,
      about: { readonly providedPasteEditKinds: readonly PasteKind[]; readonly pasteMimeTypes: readonly string[] },
    ): vscode.Disposable;
  };
}

interface PasteKind {
  append(...parts: string[]): PasteKind;
}

interface PasteEdit {
  additionalEdit?: vscode.WorkspaceEdit;
}

const api = vscode as unknown as PasteApi;

/** Makes a schedule of spreadsheet cells that are pasted on a line of their own; plain text is one choice away. */
export class SchedulePastes {
  private constructor(
    private readonly sheets: OpenSheets,
    private readonly kind: PasteKind,
  ) {}

  /** Nothing where the editor is too old for it: there the command does it. */
  static register(selector: vscode.DocumentSelector, sheets: OpenSheets): vscode.Disposable[] {
    const kind = api.DocumentDropOrPasteEditKind?.Empty.append('kilofoot', 'schedule');
    return kind
      ? [
          api.languages.registerDocumentPasteEditProvider(selector, new SchedulePastes(sheets, kind), {
            providedPasteEditKinds: [kind],
            pasteMimeTypes: [plain],
          }),
        ]
      : [];
  }

  async provideDocumentPasteEdits(
    document: vscode.TextDocument,
    ranges: readonly vscode.Range[],
    data: vscode.DataTransfer,
  ): Promise<PasteEdit[]> {
    const text = await data.get(plain)?.asString();
    const spot = text && ranges.length === 1 ? this.sheets.spot(document, ranges[0].start) : undefined;
    if (!text || !spot || !isSpreadsheet(spot.session, text)) {
      return [];
    }
    const made = pastedSchedule(spot.session, text);
    const { range, before, after } = lineOfItsOwn(document, ranges[0]);
    if ('problem' in made || before || after) {
      return [];
    }
    // The name is selected, for a better one to be typed.
    const snippet = new vscode.SnippetString().appendPlaceholder(made.name).appendText(` ${made.text}`);
    const edit = new api.DocumentPasteEdit(snippet, vscode.l10n.t('Paste as Schedule'), this.kind);
    if (made.notes.length > 0) {
      tellOncePasted(document, made);
    }
    if (!range.start.isEqual(ranges[0].start)) {
      edit.additionalEdit = new vscode.WorkspaceEdit();
      edit.additionalEdit.delete(document.uri, range.with({ end: ranges[0].start }));
    }
    return [edit];
  }
}

/** Tells what to look at in a schedule, if it is what the document is changed by next. */
function tellOncePasted(document: vscode.TextDocument, { text, notes }: PastedSchedule): void {
  const waiting = vscode.workspace.onDidChangeTextDocument((change) => {
    if (change.document === document && change.contentChanges.length > 0) {
      waiting.dispose();
      if (change.contentChanges.some((one) => one.text.replaceAll('\r\n', '\n').includes(text))) {
        void vscode.window.showWarningMessage(notes.join(' '));
      }
    }
  });
}

const plain = 'text/plain';
