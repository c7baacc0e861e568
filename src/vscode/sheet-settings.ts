import * as vscode from 'vscode';
import type { SheetSession } from '../core';
import type { Severity } from '../text';
import { settings } from './names';
import type { WorkspaceTables } from './workspace-tables';

/** Tells a session what a person set for a file, and which tables its folder brings. */
export function configure(session: SheetSession, file: vscode.Uri, tables: WorkspaceTables): void {
  const configuration = vscode.workspace.getConfiguration(settings.section, file);
  session.severities = configuration.get<Record<string, Severity | 'off'>>(settings.severities, {});
  session.tableFiles = tables.for(file);
}
