import * as vscode from 'vscode';
import type { SheetMetadata } from './serializer';

/** Says once what is wrong with a file that was opened, and keeps one that cannot be edited from being edited. */
export class Notices {
  private readonly told = new WeakSet<vscode.NotebookDocument>();

  async tell({ notebook }: vscode.NotebookEditor): Promise<void> {
    const { notices = [], editable = true } = notebook.metadata as Partial<SheetMetadata>;
    if (notices.length === 0 || this.told.has(notebook)) {
      return;
    }
    this.told.add(notebook);
    if (!editable && vscode.window.activeNotebookEditor?.notebook === notebook) {
      // The editor offers no call for this, only a command for the editor in front.
      await vscode.commands.executeCommand('workbench.action.files.setActiveEditorReadonlyInSession');
    }
    const name = notebook.uri.path.split('/').at(-1);
    const asText = vscode.l10n.t('Open as Text');
    const answer = await vscode.window.showWarningMessage(`${name}: ${notices.join(' ')}`, asText);
    if (answer === asText) {
      await vscode.commands.executeCommand('vscode.openWith', notebook.uri, 'default');
    }
  }
}
