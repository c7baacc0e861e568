import * as vscode from 'vscode';

/** A workspace with more entries than this is not searched to its end. */
const mostEntries = 20_000;

/** Files whose name fits. Walks the folders itself: a search provider is not there in every kind of workspace. */
export async function filesBelow(root: vscode.Uri, name: RegExp): Promise<vscode.Uri[]> {
  const found: vscode.Uri[] = [];
  const folders = [root];
  let entries = 0;
  for (const folder of folders) {
    const listed = await vscode.workspace.fs.readDirectory(folder).then(
      (list) => list,
      () => [], // A folder that cannot be listed holds nothing that could be named.
    );
    for (const [entry, type] of listed) {
      const uri = vscode.Uri.joinPath(folder, entry);
      if (type === vscode.FileType.Directory && !entry.startsWith('.') && entry !== 'node_modules') {
        folders.push(uri);
      } else if (name.test(entry) && type !== vscode.FileType.Directory) {
        found.push(uri);
      }
    }
    entries += listed.length;
    if (entries > mostEntries) {
      break;
    }
  }
  return found;
}
