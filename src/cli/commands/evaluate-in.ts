import { evaluateSheet, folderOf, type SheetEvaluation } from '../../core';
import type { FolderTree } from '../folder-tree';

/** Evaluates a sheet with the files of its tree; again when it asks for tables of folders that were not read yet. */
export async function evaluateIn(tree: FolderTree, bytes: Uint8Array): Promise<SheetEvaluation> {
  let evaluation: SheetEvaluation;
  tree.tableFiles(folderOf(tree.path));
  do {
    await tree.readTables();
    evaluation = evaluateSheet(bytes, { tableFiles: tree.tableFiles(folderOf(tree.path)), files: tree });
  } while (tree.wantsTables);
  return evaluation;
}
