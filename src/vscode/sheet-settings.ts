import * as vscode from 'vscode';
import type { SheetSession } from '../core';
import type { Severity } from '../text';
import { settings } from './names';
import type { WorkspaceTables } from './workspace-tables';

/**
 * Tells a session what a person set for a file, and which tables its folder brings. False when it was told the same
 * before.
 */
export function configure(session: SheetSession, file: vscode.Uri, tables: WorkspaceTables): boolean {
  const configuration = vscode.workspace.getConfiguration(settings.section, file);
  const severities = configuration.get<Record<string, Severity | 'off'>>(settings.severities, {});
  const tableFiles = tables.for(file);
  const same = session.tableFiles === tableFiles && JSON.stringify(session.severities) === JSON.stringify(severities);
  session.severities = severities;
  session.tableFiles = tableFiles;
  return !same;
}
