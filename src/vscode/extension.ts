import * as vscode from 'vscode';
import { Cautions } from './cautions';
import { changeInput } from './change-input';
import { tellOfChanged } from './changed-elsewhere';
import { CheckTests } from './check-tests';
import { SheetController } from './controller';
import { copyResult } from './copy-result';
import { tellOfDeleted } from './deleted-sheets';
import { SheetDiagnostics } from './diagnostics';
import { ReportExport } from './export-report';
import { FileChanges } from './file-changes';
import { registerLanguageFeatures } from './language-features';
import { extendMarkdownIt } from './markdown-preview';
import { commands, notebookType, settings } from './names';
import { newSheet } from './new-sheet';
import { Notices } from './notices';
import { OpenSheets } from './open-sheets';
import { OutOfDateMarks } from './out-of-date';
import { pasteAsSchedule } from './paste-schedule';
import { previewValues } from './preview-values';
import { Quiet } from './quiet';
import { ReferencePages } from './reference-pages';
import { runCases } from './run-cases';
import { SheetSerializer } from './serializer';
import { showSheet } from './show-sheet';
import { WhyPages } from './show-why';
import { Surroundings } from './surroundings';
import { followTexts } from './text-documents';
import { typedText } from './typed-text';
import { ValuesView } from './values-view';
import { followForWalkthrough } from './walkthrough';
import { WorkspaceFiles } from './workspace-files';
import { WorkspaceTables } from './workspace-tables';
import { writeResultsIntoSheet } from './write-results';

/** Registers everything but what waits for a first sheet (`activate.ts`). Gives the Markdown preview its colours. */
export function start(context: vscode.ExtensionContext) {
  const tables = new WorkspaceTables();
  const changes = new FileChanges('*.{kft,md,csv,tsv,png,jpg,jpeg,svg}');
  const files: WorkspaceFiles = new WorkspaceFiles(tables, changes, (file) => sheets.typed(file) ?? typedText(file));
  const sheets = new OpenSheets(new Surroundings(tables, files));
  const diagnostics = new SheetDiagnostics();
  const controller = new SheetController(context.extension.id, sheets, (sheet, changed) =>
    diagnostics.publish(sheet, changed),
  );
  const evaluated = new Quiet();
  const { notebooks } = vscode;
  const cautions = new Cautions(sheets, controller.onDidShow);
  const values = new ValuesView(sheets, evaluated.event);
  const preview = previewValues(sheets, files.onDidRead);
  const why = new WhyPages(sheets, evaluated.event);
  const checks = new CheckTests(sheets, evaluated.event);
  const marks = new OutOfDateMarks(sheets, controller);
  context.subscriptions.push(
    tables,
    changes,
    files,
    tellOfDeleted(changes),
    tellOfChanged(changes),
    evaluated,
    controller.onDidShow(() => evaluated.hasHappened()),
    cautions,
    marks,
    diagnostics,
    controller,
    notebooks.registerNotebookCellStatusBarItemProvider(notebookType, marks),
    notebooks.registerNotebookCellStatusBarItemProvider(notebookType, cautions),
    ...registerLanguageFeatures(sheets, files, evaluated.event),
    values,
    checks,
    vscode.commands.registerCommand(commands.copyResult, (target, form) => copyResult(sheets, target, form)),
    ...followForWalkthrough(),
    why,
    ReferencePages.register(),
    preview.watching,
    vscode.commands.registerCommand(commands.showWhy, (target) => why.show(target)),
    vscode.commands.registerCommand(commands.showSheet, () => showSheet(sheets)),
    vscode.commands.registerCommand(commands.changeInput, (target) => changeInput(sheets, target)),
    vscode.commands.registerCommand(commands.runCases, (file) => runCases(sheets, file)),
    vscode.commands.registerCommand(commands.pasteAsSchedule, (given) => pasteAsSchedule(sheets, given)),
    vscode.commands.registerCommand(commands.newSheet, newSheet),
    vscode.commands.registerCommand(commands.showCautions, () => cautions.show()),
    vscode.commands.registerCommand(commands.exportReport, (first, second) =>
      new ReportExport(context.extensionUri, sheets).run(first, second),
    ),
    vscode.commands.registerCommand(commands.writeResults, () => writeResultsIntoSheet(sheets)),
    vscode.commands.registerCommand(commands.refresh, () => {
      const notebook = vscode.window.activeNotebookEditor?.notebook;
      if (notebook) {
        controller.show(notebook, { always: true });
      }
    }),
    ...followSheets(sheets, controller, diagnostics, { tables, files }),
    ...followTexts(
      sheets,
      tables,
      files,
      (sheet) => {
        diagnostics.publishText(sheet);
        evaluated.hasHappened();
      },
      (document) => diagnostics.forgetText(document),
    ),
  );
  return {
    extendMarkdownIt: <Engine extends Parameters<typeof extendMarkdownIt>[0]>(engine: Engine) =>
      extendMarkdownIt(engine, preview.values),
    serializer: new SheetSerializer(),
    checks: checks.controller,
    values,
  };
}

/** Keeps problems and results in step with what is typed, opened and closed. */
function followSheets(
  sheets: OpenSheets,
  controller: SheetController,
  diagnostics: SheetDiagnostics,
  { tables, files }: { readonly tables: WorkspaceTables; readonly files: WorkspaceFiles },
): vscode.Disposable[] {
  const notices = new Notices();
  const due = new Map<vscode.NotebookDocument, ReturnType<typeof setTimeout>>();
  const refreshSoon = (notebook: vscode.NotebookDocument) => {
    clearTimeout(due.get(notebook));
    due.set(
      notebook,
      setTimeout(() => {
        due.delete(notebook);
        controller.show(notebook);
      }),
    );
  };
  const refreshAll = () => {
    for (const { notebook } of sheets.all()) {
      refreshSoon(notebook);
    }
  };
  const opened = (notebook: vscode.NotebookDocument) => {
    if (sheets.of(notebook)) {
      controller.show(notebook);
    }
  };
  const seen = (editors: readonly vscode.NotebookEditor[]) => {
    for (const editor of editors.filter(({ notebook }) => sheets.of(notebook))) {
      void controller.attach(editor);
      void notices.tell(editor);
    }
  };
  const { window, workspace } = vscode;
  workspace.notebookDocuments.forEach(opened);
  seen(window.visibleNotebookEditors);
  return [
    workspace.onDidOpenNotebookDocument(opened),
    window.onDidChangeVisibleNotebookEditors(seen),
    workspace.onDidChangeNotebookDocument(({ notebook, contentChanges, cellChanges }) => {
      if (!sheets.of(notebook)) {
        return;
      }
      for (const change of cellChanges.filter(({ outputs }) => outputs)) {
        controller.outputsChanged(change.cell);
      }
      if (contentChanges.length > 0 || cellChanges.some(({ document }) => document)) {
        files.touched(notebook.uri);
        refreshSoon(notebook);
      }
    }),
    workspace.onDidChangeConfiguration((change) => {
      if (change.affectsConfiguration(settings.section)) {
        refreshAll();
      }
    }),
    tables.onDidRead(refreshAll),
    files.onDidRead(refreshAll),
    workspace.onDidCloseNotebookDocument((notebook) => {
      clearTimeout(due.get(notebook));
      sheets.forget(notebook);
      files.touched(notebook.uri);
      controller.forget(notebook);
      diagnostics.forget(notebook);
    }),
  ];
}
