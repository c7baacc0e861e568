import * as vscode from 'vscode';
import { readTableFile, type TableFile, tableFileEnding } from '../core';
import { FileChanges } from './file-changes';
import { Positions } from './positions';
import { codeWithPage } from './reference-pages';

/**
 * The workspace's own tables: files in a sheet's folder that hold for the sheets there. What is wrong with one shows in
 * Problems at its place, and the table is not taken.
 */
export class WorkspaceTables implements vscode.Disposable {
  private readonly problems = vscode.languages.createDiagnosticCollection('kilofoot-tables');
  private readonly folders = new Map<string, readonly TableFile[]>();
  private readonly changes = new FileChanges(`*${tableFileEnding}`);
  private readonly read = new vscode.EventEmitter<void>();
  /** Fires when the tables of a folder were read, for the first time or again. */
  readonly onDidRead = this.read.event;

  constructor() {
    this.changes.onDidDelete((file) => this.problems.delete(file));
    this.changes.onDidChange((file) => void this.readFolder(vscode.Uri.joinPath(file, '..')));
  }

  /** The tables for a sheet as far as they are read; the first question starts the reading. */
  for(sheet: vscode.Uri): readonly TableFile[] {
    const folder = vscode.Uri.joinPath(sheet, '..');
    const known = this.folders.get(folder.toString());
    if (!known && sheet.scheme !== 'untitled') {
      this.folders.set(folder.toString(), none);
      this.changes.follow(vscode.Uri.joinPath(folder, 'any'));
      void this.readFolder(folder);
    }
    return known ?? none;
  }

  dispose(): void {
    this.problems.dispose();
    this.changes.dispose();
    this.read.dispose();
  }

  private async readFolder(folder: vscode.Uri): Promise<void> {
    const { fs } = vscode.workspace;
    const entries = await fs.readDirectory(folder).then(
      (found) => found,
      () => [], // A folder that cannot be listed brings no tables.
    );
    const names = entries.map(([name]) => name).filter((name) => name.endsWith(tableFileEnding));
    const files: TableFile[] = [];
    for (const name of names.sort()) {
      const uri = vscode.Uri.joinPath(folder, name);
      const text = new TextDecoder().decode(await fs.readFile(uri));
      const result = await readTableFile(text, name);
      const found = 'file' in result ? [] : result.diagnostics;
      const positions = new Positions(text);
      if ('file' in result) {
        files.push(result.file);
      }
      this.problems.set(
        uri,
        found.map(({ code, span, message }) => {
          const said = vscode.l10n.t('{0} The table was not taken.', message);
          const made = new vscode.Diagnostic(positions.range(span), said);
          made.source = 'kilofoot';
          made.code = codeWithPage(code);
          return made;
        }),
      );
    }
    if (files.length > 0 || (this.folders.get(folder.toString())?.length ?? 0) > 0) {
      this.folders.set(folder.toString(), files);
      this.read.fire();
    }
  }
}

const none: readonly TableFile[] = [];
