import * as vscode from 'vscode';

interface Kept {
  bytes: Uint8Array;
  changed: number;
  isProtected: boolean;
}

/** Files that are nowhere but in memory, as those of a virtual workspace. Folders are there as soon as a file is in them. */
export class MemoryFiles implements vscode.FileSystemProvider {
  private readonly emitter = new vscode.EventEmitter<vscode.FileChangeEvent[]>();
  readonly onDidChangeFile = this.emitter.event;
  private readonly files = new Map<string, Kept>();
  private clock = 1;

  /** Puts a file in place as another program would. */
  put(uri: vscode.Uri, content: string | Uint8Array, { isProtected = false } = {}): vscode.Uri {
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    const type = this.files.has(uri.path) ? vscode.FileChangeType.Changed : vscode.FileChangeType.Created;
    this.files.set(uri.path, { bytes, changed: ++this.clock, isProtected });
    this.emitter.fire([{ type, uri }]);
    return uri;
  }

  has(uri: vscode.Uri): boolean {
    return this.files.has(uri.path);
  }

  text(uri: vscode.Uri): string {
    return new TextDecoder('utf-8', { ignoreBOM: true }).decode(this.readFile(uri));
  }

  watch(): vscode.Disposable {
    return new vscode.Disposable(() => {}); // Every change is told of, watched or not.
  }

  stat(uri: vscode.Uri): vscode.FileStat {
    const file = this.files.get(uri.path);
    if (file) {
      const { bytes, changed, isProtected } = file;
      const permissions = isProtected ? { permissions: vscode.FilePermission.Readonly } : {};
      return { type: vscode.FileType.File, ctime: 0, mtime: changed, size: bytes.length, ...permissions };
    }
    if (uri.path !== '/' && !this.below(uri).length) {
      throw vscode.FileSystemError.FileNotFound(uri);
    }
    return { type: vscode.FileType.Directory, ctime: 0, mtime: 0, size: 0 };
  }

  readDirectory(uri: vscode.Uri): [string, vscode.FileType][] {
    const entries = this.below(uri).map(([name, ...rest]): [string, vscode.FileType] => [
      name,
      rest.length > 0 ? vscode.FileType.Directory : vscode.FileType.File,
    ]);
    return [...new Map(entries)];
  }

  createDirectory(): void {}

  readFile(uri: vscode.Uri): Uint8Array {
    const file = this.files.get(uri.path);
    if (!file) {
      throw vscode.FileSystemError.FileNotFound(uri);
    }
    return file.bytes;
  }

  writeFile(uri: vscode.Uri, bytes: Uint8Array): void {
    if (this.files.get(uri.path)?.isProtected) {
      throw vscode.FileSystemError.NoPermissions(uri);
    }
    this.put(uri, bytes);
  }

  delete(uri: vscode.Uri): void {
    this.files.delete(uri.path);
    this.emitter.fire([{ type: vscode.FileChangeType.Deleted, uri }]);
  }

  rename(from: vscode.Uri, to: vscode.Uri): void {
    this.writeFile(to, this.readFile(from));
    this.delete(from);
  }

  /** The paths below a folder, in parts. */
  private below(folder: vscode.Uri): string[][] {
    const start = folder.path.replace(/\/?$/, '/');
    return [...this.files.keys()]
      .filter((path) => path.startsWith(start))
      .map((path) => path.slice(start.length).split('/'));
  }
}
