import * as vscode from 'vscode';
import { caseHeading, caseLine, readRows, SheetCases } from '../core';
import type { EditedSheet } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { sheetInFront } from './sheet-in-front';
import { writeWhole } from './whole-file';

/** So many cases run before the editor gets to show how far they are and a person to stop them. */
const atOnce = 100;

type Rows = Exclude<ReturnType<typeof readRows>, { readonly problem: unknown }>;

/**
 * Runs the sheet in front for each row of a CSV and saves a row of results for each beside it. Stopped or failed, it
 * writes nothing. `given` is a file of cases that a test or a keybinding hands over.
 */
export async function runCases(sheets: OpenSheets, given?: vscode.Uri): Promise<void> {
  const sheet = sheetInFront(sheets);
  sheet?.update();
  const bytes = sheet?.bytes();
  if (!sheet || !bytes) {
    await vscode.window.showInformationMessage(
      vscode.l10n.t('Open a sheet first: it is run for each row of a CSV of its inputs.'),
    );
    return;
  }
  const file = given ?? (await pickCases(sheet));
  if (!file) {
    return;
  }
  const target = resultsOf(file);
  try {
    const opened = await openCases(sheet, bytes, file);
    if ('problem' in opened) {
      await vscode.window.showErrorMessage(opened.problem);
    } else if (await mayWrite(target)) {
      await runAll(opened.cases, opened.rows, target);
    }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    await vscode.window.showErrorMessage(vscode.l10n.t('{0} was not written: {1}', nameOf(target), reason));
  }
}

async function openCases(
  sheet: EditedSheet,
  bytes: Uint8Array,
  file: vscode.Uri,
): Promise<{ readonly cases: SheetCases; readonly rows: Rows['rows'] } | { readonly problem: string }> {
  const read = readRows(nameOf(file), await vscode.workspace.fs.readFile(file));
  if ('problem' in read) {
    return { problem: read.problem.message };
  }
  const { files, tableFiles } = sheet.session;
  const cases = SheetCases.open(bytes, read.head.texts, { tableFiles, ...(files && { files }) });
  return 'problem' in cases ? { problem: `${nameOf(file)}: ${cases.problem}` } : { cases, rows: read.rows };
}

async function runAll(cases: SheetCases, rows: Rows['rows'], target: vscode.Uri): Promise<void> {
  const lines = [caseHeading(cases)];
  let bad = 0;
  const title = vscode.l10n.t('Running cases');
  const options = { location: vscode.ProgressLocation.Notification, title, cancellable: true };
  const isDone = await vscode.window.withProgress(options, async (progress, stop) => {
    for (let at = 0; at < rows.length; at += atOnce) {
      await new Promise((resolve) => setTimeout(resolve)); // Lets a Stop through.
      if (stop.isCancellationRequested) {
        return false;
      }
      const batch = rows.slice(at, at + atOnce);
      const outcomes = cases.run(batch.map(({ texts }) => texts));
      bad += outcomes.filter(({ problems }) => problems.length > 0).length;
      lines.push(...outcomes.map(caseLine));
      progress.report({
        increment: (100 * batch.length) / rows.length,
        message: vscode.l10n.t('{0} of {1}', lines.length - 1, rows.length),
      });
    }
    await writeWhole(target, new TextEncoder().encode(lines.join('')));
    return true;
  });
  if (isDone) {
    const file = nameOf(target);
    void offerToOpen(
      target,
      bad === 0
        ? vscode.l10n.t('{0} cases are run: {1} is written.', rows.length, file)
        : vscode.l10n.t('{0} cases are run, {1} of them with problems: {2} is written.', rows.length, bad, file),
    );
  } else {
    void vscode.window.showInformationMessage(
      vscode.l10n.t('Stopped after {0} of {1} cases. Nothing was written.', lines.length - 1, rows.length),
    );
  }
}

async function offerToOpen(target: vscode.Uri, message: string): Promise<void> {
  const open = vscode.l10n.t('Open');
  if ((await vscode.window.showInformationMessage(message, open)) === open) {
    await vscode.commands.executeCommand('vscode.open', target);
  }
}

async function pickCases(sheet: EditedSheet): Promise<vscode.Uri | undefined> {
  const [file] =
    (await vscode.window.showOpenDialog({
      title: vscode.l10n.t('Cases to Run'),
      openLabel: vscode.l10n.t('Run'),
      filters: { [vscode.l10n.t('Comma-separated values')]: ['csv', 'tsv'] },
      ...(sheet.uri.scheme !== 'untitled' && { defaultUri: vscode.Uri.joinPath(sheet.uri, '..') }),
    })) ?? [];
  return file;
}

/** True when there is no such file yet, or a person lets it be replaced. */
async function mayWrite(target: vscode.Uri): Promise<boolean> {
  const isThere = await vscode.workspace.fs.stat(target).then(
    () => true,
    () => false,
  );
  const replace = vscode.l10n.t('Replace');
  const message = vscode.l10n.t('{0} is there already. Replace it?', nameOf(target));
  return !isThere || (await vscode.window.showWarningMessage(message, { modal: true }, replace)) === replace;
}

/** `runs.csv` gives `runs.results.csv` beside it. */
const resultsOf = (cases: vscode.Uri): vscode.Uri =>
  cases.with({ path: `${cases.path.replace(/\.[^./]*$/, '')}.results.csv` });

const nameOf = (uri: vscode.Uri): string => uri.path.split('/').at(-1) ?? uri.path;
