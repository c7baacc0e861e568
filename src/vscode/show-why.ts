import * as vscode from 'vscode';
import { askedName, type ListedValue, uncertaintyBudget, valuesOf, why } from '../core';
import type { EditedSheet } from './edited-sheet';
import { schemes } from './names';
import type { OpenSheets } from './open-sheets';
import { sheetInFront } from './sheet-in-front';
import { bringToFront } from './show-sheet';
import type { Entry } from './values-view';
import { tickOff } from './walkthrough';

/** Also the folder of its pages, by which the editor knows their language and wraps their lines. */
const scheme = schemes.why;

/** What a test or a keybinding may hand the command, to be asked nothing. */
interface Given {
  readonly name: string;
}

/** The chain behind a value, back to readings, nameplates, tables and assumptions, as a text beside the sheet. */
export class WhyPages implements vscode.TextDocumentContentProvider, vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<vscode.Uri>();
  readonly onDidChange = this.changed.event;
  /** The sheet that each page is about. */
  private readonly asked = new Map<string, { readonly sheet: EditedSheet; readonly name: string }>();
  private readonly registered: readonly vscode.Disposable[];

  constructor(
    private readonly sheets: OpenSheets,
    evaluated: vscode.Event<void>,
  ) {
    const { workspace } = vscode;
    this.registered = [
      this.changed,
      workspace.registerTextDocumentContentProvider(scheme, this),
      evaluated(() => {
        for (const page of this.asked.keys()) {
          this.changed.fire(vscode.Uri.parse(page));
        }
      }),
      workspace.onDidCloseTextDocument(({ uri }) => this.asked.delete(uri.toString())),
    ];
  }

  dispose(): void {
    for (const one of this.registered) {
      one.dispose();
    }
  }

  provideTextDocumentContent(page: vscode.Uri): string {
    const asked = this.asked.get(page.toString());
    const { program } = asked?.sheet.session ?? {};
    const chain = asked && program && why(program, asked.name);
    if (!asked || !program || !chain) {
      return vscode.l10n.t('No value has this name any more.');
    }
    const budget = uncertaintyBudget(program, asked.name);
    return budget ? `${chain}\n\n${budget}\n` : `${chain}\n`;
  }

  async show(target?: Entry | Given | vscode.NotebookCell): Promise<void> {
    const sheet = target && 'sheet' in target ? target.sheet : sheetInFront(this.sheets);
    sheet?.update();
    if (!sheet) {
      await vscode.window.showInformationMessage(vscode.l10n.t('Open a sheet first: the chain is that of its values.'));
      return;
    }
    const name = nameOf(target);
    const wanted = name ?? this.atCursor() ?? (await pickName(sheet));
    if (wanted === undefined) {
      return;
    }
    const page = vscode.Uri.from({ scheme, path: `/${scheme}/${wanted}`, query: sheet.uri.toString() });
    this.asked.set(page.toString(), { sheet, name: wanted });
    this.changed.fire(page);
    const document = await vscode.workspace.openTextDocument(page);
    tickOff('sourceShown');
    await vscode.window.showTextDocument(document, { viewColumn: await this.columnFor(sheet), preview: true });
  }

  /** Where another chain is shown already, else below the sheet, so that both can be read. */
  private async columnFor(sheet: EditedSheet): Promise<vscode.ViewColumn> {
    const isChain = ({ input }: vscode.Tab) => input instanceof vscode.TabInputText && input.uri.scheme === scheme;
    const shown = vscode.window.tabGroups.all.find(({ activeTab }) => activeTab && isChain(activeTab));
    if (shown) {
      return shown.viewColumn;
    }
    await bringToFront(sheet);
    await vscode.commands.executeCommand('workbench.action.newGroupBelow');
    return vscode.ViewColumn.Active;
  }

  private atCursor(): string | undefined {
    const { activeTextEditor: editor } = vscode.window;
    const spot = editor && this.sheets.spot(editor.document, editor.selection.active);
    return spot && askedName(spot.session, spot.cell.id, spot.offset);
  }
}

function nameOf(target: Entry | Given | vscode.NotebookCell | undefined): string | undefined {
  if (target && 'sheet' in target) {
    return target.kind === 'value' ? target.value.name : undefined;
  }
  return target && 'name' in target ? target.name : undefined;
}

async function pickName({ session }: EditedSheet): Promise<string | undefined> {
  const values = session.calculations().flatMap((cell) => valuesOf(session, cell));
  // What is computed has the longer chain, and stands first.
  const rank = ({ origin }: ListedValue) => Number(origin === 'given' || origin === 'input' || origin === 'measured');
  const picks = values
    .sort((a, b) => rank(a) - rank(b))
    .map(({ name, text, fields }) => ({
      label: name,
      description: text || fields.map((field) => `${field.name} ${field.text}`).join(', '),
    }));
  const title = vscode.l10n.t('Show Why');
  return (await vscode.window.showQuickPick(picks, { title, placeHolder: vscode.l10n.t('Which value?') }))?.label;
}
