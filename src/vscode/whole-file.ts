import * as vscode from 'vscode';

/** Where writing can stop midway. Elsewhere another extension takes the whole content in one call. */
const disks = ['file', 'vscode-remote'];

/**
 * Beside the target first and then in its place, so that no half of a file is left where one was before. A file system of
 * another extension that renames nothing gets it in place at once.
 */
export async function writeWhole(target: vscode.Uri, bytes: Uint8Array): Promise<void> {
  const { fs } = vscode.workspace;
  const beside = target.with({ path: `${target.path}.part` });
  try {
    await fs.writeFile(beside, bytes);
    await fs.rename(beside, target, { overwrite: true });
  } catch (error) {
    await fs.delete(beside).then(undefined, () => undefined); // It may not be there.
    if (disks.includes(target.scheme)) {
      throw error;
    }
    await fs.writeFile(target, bytes);
  }
}
