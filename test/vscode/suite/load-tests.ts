import * as vscode from 'vscode';
import { virtualWorkspace } from '../virtual-files/files';

/** The tests for the window's folder; `describe` and `it` have to be there already. */
export function loadTests(): void {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  if (folder?.uri.toString() === virtualWorkspace) {
    require('./virtual-workspace');
  } else {
    require('./all');
  }
}
