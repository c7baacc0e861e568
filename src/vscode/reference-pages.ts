import * as vscode from 'vscode';
import { explain, explainable } from '../core';
import { commands, schemes } from './names';

const scheme = schemes.page;

/** What is made known of a problem's code: the code itself, and a link that opens its page. */
export const codeWithPage = (code: string): { value: string; target: vscode.Uri } => ({
  value: code,
  target: vscode.Uri.parse(`command:${commands.explain}?${encodeURIComponent(JSON.stringify([code]))}`),
});

/** The code of a problem that the editor lists. */
export const codeOf = ({ code }: vscode.Diagnostic): string | number | undefined =>
  typeof code === 'object' ? code.value : code;

/**
 * The reference pages of lints, problems and functions, as `kilofoot explain` tells them. They are made here from the
 * definitions, so nothing is fetched and they are those of the version that runs.
 */
export class ReferencePages implements vscode.TextDocumentContentProvider {
  static register(): vscode.Disposable {
    const pages = new ReferencePages();
    return vscode.Disposable.from(
      vscode.workspace.registerTextDocumentContentProvider(scheme, pages),
      vscode.commands.registerCommand(commands.explain, (name?: unknown) => pages.show(name)),
    );
  }

  provideTextDocumentContent({ path }: vscode.Uri): string {
    const explanation = explain(path.replace(/^\/|\.md$/g, ''));
    return 'page' in explanation ? explanation.page : explanation.problem;
  }

  private async show(given: unknown): Promise<void> {
    const name = typeof given === 'string' ? given : await pickName();
    if (name === undefined) {
      return;
    }
    const page = vscode.Uri.from({ scheme, path: `/${name}.md` });
    try {
      await vscode.commands.executeCommand('markdown.showPreview', page);
    } catch {
      await vscode.window.showTextDocument(page, { preview: true }); // The editor's Markdown support is turned off.
    }
  }
}

async function pickName(): Promise<string | undefined> {
  const picks = explainable().map(({ name, summary }) => ({ label: name, detail: summary }));
  const picked = await vscode.window.showQuickPick(picks, {
    title: vscode.l10n.t('Explain'),
    placeHolder: vscode.l10n.t('Which function, warning or problem?'),
    matchOnDetail: true,
  });
  return picked?.label;
}
