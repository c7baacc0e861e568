import * as vscode from 'vscode';

/**
 * Tells of files that come, change and go: everywhere in the workspace, and in those folders outside of it that hold a
 * file which somebody follows. A sheet may be open without its folder, or lie in no workspace at all.
 */
export class FileChanges implements vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<vscode.Uri>();
  private readonly deleted = new vscode.EventEmitter<vscode.Uri>();
  /** Fires for a file that is new, has other contents, or is gone. */
  readonly onDidChange = this.changed.event;
  readonly onDidDelete = this.deleted.event;
  private readonly folders = new Set<string>();
  private readonly watchers: vscode.Disposable[] = [this.changed, this.deleted];

  /** `names` is a glob of file names. */
  constructor(private readonly names: string) {
    this.watch(`**/${names}`);
  }

  follow(file: vscode.Uri): void {
    const folder = vscode.Uri.joinPath(file, '..');
    const isWatched = file.scheme === 'untitled' || vscode.workspace.getWorkspaceFolder(file) !== undefined;
    if (!isWatched && !this.folders.has(folder.toString())) {
      this.folders.add(folder.toString());
      this.watch(new vscode.RelativePattern(folder, this.names));
    }
  }

  dispose(): void {
    for (const one of this.watchers) {
      one.dispose();
    }
  }

  private watch(pattern: vscode.GlobPattern): void {
    const watcher = vscode.workspace.createFileSystemWatcher(pattern);
    const tell = (file: vscode.Uri) => this.changed.fire(file);
    this.watchers.push(
      watcher,
      watcher.onDidCreate(tell),
      watcher.onDidChange(tell),
      watcher.onDidDelete((file) => {
        this.deleted.fire(file);
        tell(file);
      }),
    );
  }
}
