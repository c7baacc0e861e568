import * as vscode from 'vscode';
import {
  buildReport,
  evaluateSheet,
  type ReportFormat,
  reportFormats,
  reportInput,
  type WriteOptions,
  writeReport,
} from '../core';
import type { EditedSheet } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { sheetInFront } from './sheet-in-front';
import { tickOff } from './walkthrough';
import { writeWhole } from './whole-file';

/** Formats whose libraries this build holds, put in place by the build: a browser's host cannot read them from files. */
declare const REPORT_FORMATS_HERE: readonly ReportFormat[];

interface FormatPick extends vscode.QuickPickItem {
  readonly format: ReportFormat;
}

/** What a test or a keybinding may hand the command, to be asked nothing. */
interface Given {
  readonly format?: ReportFormat;
  readonly target?: vscode.Uri;
}

/** Asks for a format and a file, writes the report of the sheet in front, and opens it. */
export class ReportExport {
  constructor(
    private readonly extension: vscode.Uri,
    private readonly sheets: OpenSheets,
  ) {}

  async run(given: Given = {}): Promise<void> {
    const sheet = sheetInFront(this.sheets);
    const bytes = sheet?.bytes();
    if (!sheet || !bytes) {
      void vscode.window.showInformationMessage(
        sheet
          ? vscode.l10n.t('This file cannot be read as a sheet. Mend what its notice names, then export the report.')
          : vscode.l10n.t('Open a sheet first; its report is made from what is in front.'),
      );
      return;
    }
    const format = given.format ?? (await pickFormat());
    if (!format) {
      return;
    }
    if (!REPORT_FORMATS_HERE.includes(format)) {
      void vscode.window.showInformationMessage(
        vscode.l10n.t(
          '{0} reports are not made in the browser. Export as a web page and print it from there, or use VS Code on the desktop or `kilofoot run --format {1}`.',
          vscode.l10n.t(reportFormats[format].label),
          format,
        ),
      );
      return;
    }
    const target = given.target ?? (await pickTarget(sheet.uri, format));
    if (!target) {
      return;
    }
    if (target.toString() === sheet.uri.toString()) {
      void vscode.window.showErrorMessage(
        vscode.l10n.t('The report would replace the sheet itself. Choose another file.'),
      );
      return;
    }
    const written = await this.write(sheet, format, target);
    if (written) {
      tickOff('reportWritten');
    }
    if (written && !given.target) {
      await offerToOpen(target, format);
    }
  }

  /** True when the file was written; else what is wrong was told. */
  private async write(sheet: EditedSheet, format: ReportFormat, target: vscode.Uri): Promise<boolean> {
    const title = vscode.l10n.t('Exporting {0}', nameOf(target));
    const location = vscode.ProgressLocation.Notification;
    try {
      await vscode.window.withProgress({ location, title }, async (progress) => {
        const { tableFiles, files, severities } = sheet.session;
        const options: WriteOptions = {
          font: (name) => this.font(name),
          progress: (message) => progress.report({ message }),
        };
        await new Promise((resolve) => setTimeout(resolve)); // So that the notification shows before the work begins.
        const evaluation = evaluateSheet(sheet.bytes() ?? new Uint8Array(), {
          tableFiles,
          severities,
          ...(files && { files }),
        });
        const bytes = await writeReport(buildReport(reportInput(evaluation)), format, options);
        await writeWhole(target, bytes);
      });
      return true;
    } catch (error) {
      void vscode.window.showErrorMessage(
        vscode.l10n.t(
          '{0} was not written: {1}',
          nameOf(target),
          error instanceof Error ? error.message : String(error),
        ),
      );
      return false;
    }
  }

  private async font(name: string): Promise<Uint8Array> {
    return vscode.workspace.fs.readFile(vscode.Uri.joinPath(this.extension, 'dist', 'fonts', name));
  }
}

async function pickFormat(): Promise<ReportFormat | undefined> {
  const picks = (Object.keys(reportFormats) as ReportFormat[]).map((format): FormatPick => {
    const here = REPORT_FORMATS_HERE.includes(format);
    return {
      format,
      label: vscode.l10n.t(reportFormats[format].label),
      description: here ? `.${format}` : vscode.l10n.t('.{0} – not in the browser', format),
    };
  });
  const title = vscode.l10n.t('Export Report');
  return (await vscode.window.showQuickPick(picks, { title, placeHolder: vscode.l10n.t('Format') }))?.format;
}

/** Beside the sheet, under its name. */
async function pickTarget(sheet: vscode.Uri, format: ReportFormat): Promise<vscode.Uri | undefined> {
  const name = `${nameOf(sheet).replace(/\.kft(\.md)?$/, '')}.${format}`;
  const folder =
    sheet.scheme === 'untitled' ? vscode.workspace.workspaceFolders?.[0]?.uri : vscode.Uri.joinPath(sheet, '..');
  return vscode.window.showSaveDialog({
    title: vscode.l10n.t('Export Report'),
    ...(folder && { defaultUri: vscode.Uri.joinPath(folder, name) }),
    filters: { [vscode.l10n.t(reportFormats[format].label)]: [format] },
  });
}

async function offerToOpen(target: vscode.Uri, format: ReportFormat): Promise<void> {
  const open = vscode.l10n.t('Open');
  const chosen = await vscode.window.showInformationMessage(vscode.l10n.t('{0} is written.', nameOf(target)), open);
  if (chosen !== open) {
    return;
  }
  const outside = target.scheme === 'file' && !vscode.env.remoteName && format !== 'md' && format !== 'csv';
  if (!outside || !(await vscode.env.openExternal(target))) {
    await vscode.commands.executeCommand('vscode.open', target);
  }
}

const nameOf = (uri: vscode.Uri): string => uri.path.split('/').at(-1) ?? uri.path;
