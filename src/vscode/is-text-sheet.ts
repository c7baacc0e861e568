import type * as vscode from 'vscode';

/** The file endings of a sheet; a cell of a notebook has its notebook's. */
export const sheetFile = /\.kft(\.md)?$/;

/** A sheet's file that is open in a text editor. */
export const isTextSheet = (document: vscode.TextDocument): boolean =>
  document.languageId === 'markdown' &&
  document.uri.scheme !== 'vscode-notebook-cell' &&
  sheetFile.test(document.uri.path);
