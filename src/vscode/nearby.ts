import * as vscode from 'vscode';
import { type Nearby, type NearbyWanted, namedValuesIn, pathInTree, wayInTree } from '../core';
import { filesBelow } from './files-below';
import type { OpenSheets } from './open-sheets';

const endings = { sheet: /\.kft(\.md)?$/, table: /\.(csv|tsv)$/i } as const;

/** What completion asks of the files near a sheet: their names as the sheet would write them, or the names in one. */
export async function nearbyOf(sheets: OpenSheets, sheet: vscode.Uri, wanted: NearbyWanted): Promise<Nearby> {
  if (sheet.scheme === 'untitled') {
    return {}; // It lies in no folder yet.
  }
  if ('namesIn' in wanted) {
    const way = pathInTree(wanted.namesIn, sheet.path);
    if ('problem' in way) {
      return {};
    }
    const file = sheet.with({ path: `/${way.path}` });
    const bytes = sheets.typed(file) ?? (await vscode.workspace.fs.readFile(file).then(undefined, () => undefined));
    return bytes ? { names: namedValuesIn(bytes) } : {};
  }
  const root = vscode.workspace.getWorkspaceFolder(sheet)?.uri ?? vscode.Uri.joinPath(sheet, '..');
  const found = await filesBelow(root, endings[wanted.what]);
  const others = found.filter(({ path }) => path !== sheet.path);
  return { files: others.map(({ path }) => wayInTree(path, sheet.path)) };
}
