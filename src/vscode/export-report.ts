import * as vscode from 'vscode';
import {
  buildReport,
  evaluateSheet,
  folderOf,
  type ReportFormat,
  reportFormats,
  reportInput,
  wayInTree,
} from '../core';
import type { EditedSheet } from './edited-sheet';
import type { OpenSheets } from './open-sheets';
import { sheetInFront } from './sheet-in-front';
import { tickOff } from './walkthrough';
import { writeWhole } from './whole-file';
import { writeApart } from './write-apart';

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

const isGiven = (handed: unknown): handed is Given =>
  typeof handed === 'object' && handed !== null && 'format' in handed;

/** Asks for a format and a file, writes the report of a sheet, and opens it. */
export class ReportExport {
  constructor(
    private readonly extension: vscode.Uri,
    private readonly sheets: OpenSheets,
  ) {}

  /** The sheet is the file that a menu was opened on, else the one in front, as a notebook or as text. */
  async run(first: Given | vscode.Uri = {}, second?: unknown): Promise<void> {
    if (first instanceof vscode.Uri) {
      // A menu hands over the list of all that is selected, too.
      await this.exportSheet(await this.sheetOf(first), isGiven(second) ? second : {});
    } else {
      await this.exportSheet(sheetInFront(this.sheets), first);
    }
  }

  /** A file that is open nowhere is read, and shown nowhere. */
  private async sheetOf(file: vscode.Uri): Promise<EditedSheet | undefined> {
    const open = [...this.sheets.all()].find(({ uri }) => uri.toString() === file.toString());
    return open ?? this.sheets.ofText(await vscode.workspace.openTextDocument(file));
  }

  private async exportSheet(sheet: EditedSheet | undefined, given: Given): Promise<void> {
    sheet?.update();
    if (!sheet?.bytes()) {
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

  /** True when the file was written; else it was stopped, or what is wrong was told. */
  private async write(sheet: EditedSheet, format: ReportFormat, target: vscode.Uri): Promise<boolean> {
    const title = vscode.l10n.t('Exporting {0}', nameOf(target));
    const options = { location: vscode.ProgressLocation.Notification, title, cancellable: true };
    try {
      return await vscode.window.withProgress(options, async (progress, stop) => {
        await this.whenRead(sheet);
        const { tableFiles, files, severities } = sheet.session;
        const put = () =>
          buildReport(
            reportInput(
              evaluateSheet(sheet.bytes()!, { tableFiles, severities, ...(files && { files }) }),
              files,
              wayBetween(target, sheet.uri),
            ),
          );
        let document = put();
        if (sheet.isWaiting) {
          await this.whenRead(sheet); // Now its pictures are asked for, too.
          document = put();
        }
        let shown = 0;
        const bytes = await writeApart(
          document,
          format,
          this.extension,
          ({ doing, share }) => {
            progress.report({ message: doing, increment: 100 * (share - shown) });
            shown = share;
          },
          stop,
        );
        if (bytes) {
          await writeWhole(target, bytes);
        }
        return bytes !== undefined;
      });
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

  /** Files that the sheet names are read when it first asks for them. Lets the notification show, too. */
  private async whenRead(sheet: EditedSheet): Promise<void> {
    const until = Date.now() + longestWait;
    do {
      await new Promise((resolve) => setTimeout(resolve, 20));
      sheet.update();
    } while (sheet.isWaiting && Date.now() < until);
  }
}

/** The way from the folder of one file to that of another; null where they lie in different systems or disks. */
function wayBetween(from: vscode.Uri, to: vscode.Uri): string | null {
  const disk = ({ path }: vscode.Uri) => /^\/[a-z]:/i.exec(path)?.[0].toLowerCase();
  return from.scheme === to.scheme && from.authority === to.authority && disk(from) === disk(to)
    ? folderOf(wayInTree(to.path, from.path))
    : null;
}

/** In milliseconds. A file that is not read by then is told of in the report as one that is missing. */
const longestWait = 10_000;

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

/** Text opens in the editor, and a paper in its own program; one on a server or on no disk is downloaded from the Explorer. */
async function offerToOpen(target: vscode.Uri, format: ReportFormat): Promise<void> {
  const isText = format === 'md' || format === 'csv';
  const isHere = target.scheme === 'file' && !vscode.env.remoteName;
  const open = isText || isHere ? vscode.l10n.t('Open') : vscode.l10n.t('Show in Explorer');
  const chosen = await vscode.window.showInformationMessage(vscode.l10n.t('{0} is written.', nameOf(target)), open);
  if (chosen !== open) {
    return;
  }
  if (!isText && !isHere) {
    await vscode.commands.executeCommand('revealInExplorer', target);
  } else if (isText || !(await vscode.env.openExternal(target))) {
    await vscode.commands.executeCommand('vscode.open', target);
  }
}

const nameOf = (uri: vscode.Uri): string => uri.path.split('/').at(-1) ?? uri.path;
