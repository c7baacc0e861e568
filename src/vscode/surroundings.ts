import * as vscode from 'vscode';
import type { SheetSession } from '../core';
import type { Severity } from '../text';
import { settings } from './names';
import type { WorkspaceFiles } from './workspace-files';
import type { WorkspaceTables } from './workspace-tables';

/** What bears on a sheet's results beside its text: a person's settings, the folder's tables, the files it names. */
export class Surroundings {
  private readonly told = new WeakMap<SheetSession, number>();

  constructor(
    private readonly tables: WorkspaceTables,
    readonly files: WorkspaceFiles,
  ) {}

  /** Tells a session how things stand for a file. False when it was told the same before. */
  tell(session: SheetSession, file: vscode.Uri): boolean {
    const configuration = vscode.workspace.getConfiguration(settings.section, file);
    const severities = configuration.get<Record<string, Severity | 'off'>>(settings.severities, {});
    const tableFiles = this.tables.for(file);
    const same =
      this.told.get(session) === this.files.generation &&
      session.tableFiles === tableFiles &&
      JSON.stringify(session.severities) === JSON.stringify(severities);
    this.told.set(session, this.files.generation);
    session.severities = severities;
    session.tableFiles = tableFiles;
    session.files = this.files.for(file);
    return !same;
  }
}
