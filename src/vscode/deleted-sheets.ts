import * as vscode from 'vscode';
import type { FileChanges } from './file-changes';
import { isTextSheet } from './is-text-sheet';
import { notebookType } from './names';
import { bytesOfNotebook } from './serializer';

/** Programs that write a file anew delete it first, so a file counts as gone when it has been for so long. */
const patience = 500;

type Open = vscode.NotebookDocument | vscode.TextDocument;

/** Says of a sheet that is open that its file is gone: the editor only strikes its name through, and would let it go. */
export function tellOfDeleted(changes: FileChanges): vscode.Disposable {
  const follow = ({ uri, notebookType: type }: vscode.NotebookDocument) => {
    if (type === notebookType) {
      changes.follow(uri);
    }
  };
  vscode.workspace.notebookDocuments.forEach(follow);
  return vscode.Disposable.from(
    vscode.workspace.onDidOpenNotebookDocument(follow),
    changes.onDidDelete((file) => {
      if (openSheet(file)) {
        setTimeout(() => void tell(file), patience);
      }
    }),
  );
}

async function tell(file: vscode.Uri): Promise<void> {
  const isThere = await vscode.workspace.fs.stat(file).then(
    () => true,
    () => false,
  );
  const name = file.path.split('/').at(-1) ?? file.path;
  if (isThere || !openSheet(file)) {
    return;
  }
  const save = vscode.l10n.t('Save');
  const message = vscode.l10n.t(
    '{0} was deleted or moved by another program. What you see here is all that is left of it: save it to write the file again.',
    name,
  );
  const isChosen = (await vscode.window.showWarningMessage(message, save)) === save;
  const open = openSheet(file);
  if (isChosen && open) {
    await (open.isDirty ? open.save() : vscode.workspace.fs.writeFile(file, bytesOf(open))); // Saves nothing unchanged.
  }
}

const bytesOf = (open: Open): Uint8Array =>
  'notebookType' in open ? bytesOfNotebook(open) : new TextEncoder().encode(open.getText());

/** The sheet of a file in a tab; undefined once the tab is closed, though the editor may hold it a while longer. */
function openSheet(file: vscode.Uri): Open | undefined {
  const address = file.toString();
  const inTab = vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .some(
      ({ input }) =>
        (input instanceof vscode.TabInputNotebook || input instanceof vscode.TabInputText) &&
        input.uri.toString() === address,
    );
  const { notebookDocuments, textDocuments } = vscode.workspace;
  const isIt = ({ uri }: Open) => uri.toString() === address;
  return inTab
    ? (notebookDocuments.find((open) => open.notebookType === notebookType && isIt(open)) ??
        textDocuments.find((open) => isTextSheet(open) && isIt(open)))
    : undefined;
}
