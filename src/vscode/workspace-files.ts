import * as vscode from 'vscode';
import type { FolderFiles } from '../core';
import type { FileChanges } from './file-changes';
import type { WorkspaceTables } from './workspace-tables';

type Content = Uint8Array | { readonly problem: string };

/**
 * The files that sheets name: other sheets, rows in CSV. What is typed in an open editor goes before what was saved. The
 * session asks and cannot wait, so a file is read when it is first asked for, and the sheets are evaluated again.
 */
export class WorkspaceFiles implements vscode.Disposable {
  private readonly contents = new Map<string, Content>();
  private readonly loading = new Set<string>();
  /** The files that each sheet asked for. */
  private readonly asked = new Map<string, Set<string>>();
  private readonly trees = new Map<string, FolderFiles>();
  private readonly read = new vscode.EventEmitter<void>();
  /** Fires when a file that was asked for was read, for the first time or again, or was typed in. */
  readonly onDidRead = this.read.event;
  /** Goes up whenever a file that was asked for has other contents. */
  generation = 0;

  private readonly following: vscode.Disposable;

  constructor(
    private readonly tables: WorkspaceTables,
    private readonly changes: FileChanges,
    /** What is typed in an open editor; the same array until it changes. */
    private readonly typed: (file: vscode.Uri) => Uint8Array | undefined,
  ) {
    this.following = changes.onDidChange((file) => {
      if (this.contents.has(file.toString())) {
        void this.load(file);
      }
    });
  }

  /** True while a file that a sheet asked for is on its way, so that its results are not to be shown yet. */
  isAwaitedBy(sheet: vscode.Uri): boolean {
    const asked = this.asked.get(sheet.toString());
    return asked !== undefined && [...asked].some((file) => this.loading.has(file));
  }

  /** The folder tree that a sheet lies in; undefined for one that is in no folder. */
  for(sheet: vscode.Uri): FolderFiles | undefined {
    if (sheet.scheme === 'untitled') {
      return undefined;
    }
    let tree = this.trees.get(sheet.toString());
    if (!tree) {
      const root = rootOf(sheet);
      const asked = new Set<string>();
      this.asked.set(sheet.toString(), asked);
      tree = {
        path: sheet.path.slice(root.path.replace(/\/$/, '').length + 1),
        read: (path) => {
          const file = vscode.Uri.joinPath(root, path);
          asked.add(file.toString());
          return this.contentOf(file);
        },
        tableFiles: (folder) => this.tables.for(vscode.Uri.joinPath(root, folder, 'any')),
      };
      this.trees.set(sheet.toString(), tree);
    }
    return tree;
  }

  /** The address of a path in a sheet's folder tree. */
  addressOf(path: string, sheet: vscode.Uri): vscode.Uri {
    return vscode.Uri.joinPath(rootOf(sheet), path);
  }

  /** To be told when a file was typed in or its editor closed. */
  touched(file: vscode.Uri): void {
    if (this.contents.has(file.toString())) {
      this.changed();
    }
  }

  dispose(): void {
    this.following.dispose();
    this.read.dispose();
  }

  private contentOf(file: vscode.Uri): Content {
    const key = file.toString();
    const known = this.contents.get(key);
    if (known === undefined) {
      this.contents.set(key, { problem: 'is being read.' });
      this.changes.follow(file);
      void this.load(file);
    }
    return this.typed(file) ?? this.contents.get(key)!;
  }

  private async load(file: vscode.Uri): Promise<void> {
    const key = file.toString();
    this.loading.add(key);
    const content = await vscode.workspace.fs.readFile(file).then(
      (bytes): Content => bytes,
      (): Content => ({ problem: 'is not there, or cannot be read. Check the name and the folder.' }),
    );
    this.loading.delete(key);
    this.contents.set(key, content);
    this.changed();
  }

  private changed(): void {
    this.generation++;
    this.read.fire();
  }
}

/** The workspace's folder that a sheet lies in, else the sheet's own. */
const rootOf = (sheet: vscode.Uri): vscode.Uri =>
  vscode.workspace.getWorkspaceFolder(sheet)?.uri ?? vscode.Uri.joinPath(sheet, '..');
