import * as vscode from 'vscode';
import { MemoryFiles } from '../suite/memory-files';
import { virtualFiles, virtualWorkspace } from './files';

/** A file system of another extension, in another host than ours where that runs in Node. */
export function activate({ subscriptions }: vscode.ExtensionContext): void {
  const files = new MemoryFiles();
  const root = vscode.Uri.parse(virtualWorkspace);
  for (const [name, content] of Object.entries(virtualFiles)) {
    files.put(vscode.Uri.joinPath(root, name), content);
  }
  subscriptions.push(vscode.workspace.registerFileSystemProvider(root.scheme, files, { isCaseSensitive: true }));
}
