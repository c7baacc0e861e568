import * as vscode from 'vscode';
import { isTextSheet, sheetFile } from './is-text-sheet';
import { commands, notebookType, transientCellMetadata } from './names';

/**
 * What the editor loads first, in any window. It only waits: all the rest runs when the first sheet is opened, a command
 * of ours called, or the Markdown preview shown.
 */
export function activate(context: vscode.ExtensionContext) {
  const { workspace } = vscode;
  const waiting: vscode.Disposable[] = [];
  let started: ReturnType<typeof import('./extension').start> | undefined;
  const start = () => {
    if (!started) {
      for (const one of waiting.splice(0)) {
        one.dispose();
      }
      started = (require('./extension') as typeof import('./extension')).start(context);
    }
    return started;
  };
  const serializer = (): vscode.NotebookSerializer => start().serializer;
  context.subscriptions.push(
    workspace.registerNotebookSerializer(
      notebookType,
      {
        deserializeNotebook: (bytes, cancel) => serializer().deserializeNotebook(bytes, cancel),
        serializeNotebook: (data, cancel) => serializer().serializeNotebook(data, cancel),
      },
      { transientOutputs: true, transientCellMetadata },
    ),
    { dispose: () => waiting.splice(0).forEach((one) => void one.dispose()) },
  );
  const isSheet = (notebook: vscode.NotebookDocument) => notebook.notebookType === notebookType;
  if (workspace.notebookDocuments.some(isSheet) || workspace.textDocuments.some(isTextSheet)) {
    start();
  } else {
    waiting.push(
      workspace.onDidOpenNotebookDocument((notebook) => isSheet(notebook) && start()),
      workspace.onDidOpenTextDocument((document) => isTextSheet(document) && start()),
      ...Object.values(commands).map((id) =>
        vscode.commands.registerCommand(id, (...given) => {
          start(); // Registers the command itself in place of this one.
          return vscode.commands.executeCommand(id, ...given);
        }),
      ),
    );
    void readAhead();
  }
  return {
    extendMarkdownIt: <Engine extends Parameters<ReturnType<typeof start>['extendMarkdownIt']>[0]>(engine: Engine) =>
      start().extendMarkdownIt(engine),
    get checks() {
      return start().checks;
    },
    get values() {
      return start().values;
    },
  };
}

/** Where a folder of the window holds sheets, reads the rest while nothing is asked for: the first one opens sooner. */
async function readAhead(): Promise<void> {
  for (const { uri } of vscode.workspace.workspaceFolders ?? []) {
    const files = await vscode.workspace.fs.readDirectory(uri).then(
      (found) => found,
      () => [], // A folder that cannot be read now is no reason to do anything early.
    );
    if (files.some(([name]) => sheetFile.test(name))) {
      require('./extension');
      return;
    }
  }
}
