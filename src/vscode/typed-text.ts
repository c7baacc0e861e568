import * as vscode from 'vscode';

const encoded = new WeakMap<vscode.TextDocument, { readonly version: number; readonly bytes: Uint8Array }>();

/** What is typed in a text editor of a file; the same array until it changes, undefined when none is open. */
export function typedText(file: vscode.Uri): Uint8Array | undefined {
  const address = file.toString();
  const document = vscode.workspace.textDocuments.find(({ uri }) => uri.toString() === address);
  if (!document) {
    return undefined;
  }
  const known = encoded.get(document);
  if (known?.version === document.version) {
    return known.bytes;
  }
  const bytes = new TextEncoder().encode(document.getText());
  encoded.set(document, { version: document.version, bytes });
  return bytes;
}
