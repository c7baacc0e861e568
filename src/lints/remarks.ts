import type { SyntaxTree } from '../language';

const remarksIn = new WeakMap<SyntaxTree, ReadonlyMap<number, string>>();

/** The comments on a statement's own lines, joined; read once a tree, because long sheets hold many. */
export function remarkOn(tree: SyntaxTree, statement: number): string {
  let remarks = remarksIn.get(tree);
  if (!remarks) {
    remarks = readRemarks(tree);
    remarksIn.set(tree, remarks);
  }
  return remarks.get(statement) ?? '';
}

function readRemarks(tree: SyntaxTree): Map<number, string> {
  const remarks = new Map<number, string>();
  for (const { span, text, statement } of tree.comments) {
    const node = tree.statements[statement];
    // One on a line above stands by itself.
    if (node !== undefined && text !== '' && span.start > tree.starts[node]) {
      const before = remarks.get(statement);
      remarks.set(statement, before === undefined ? text : `${before} ${text}`);
    }
  }
  return remarks;
}
