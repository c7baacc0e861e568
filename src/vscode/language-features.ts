import * as vscode from 'vscode';
import { SheetCompletions } from './completion';
import { SheetDefinitions } from './definition';
import { SheetHovers } from './hover';
import { languageId } from './names';
import type { OpenSheets } from './open-sheets';
import { QuickFixes } from './quick-fixes';

/** Cells of notebooks, and sheets that are shown as text. */
const selector: vscode.DocumentSelector = [
  { language: languageId },
  { language: 'markdown', pattern: '**/*.{kft,kft.md}' },
];

/** Registers what the editor can tell and do while a sheet is written. */
export function registerLanguageFeatures(sheets: OpenSheets): vscode.Disposable[] {
  const { languages } = vscode;
  const definitions = new SheetDefinitions(sheets);
  return [
    languages.registerHoverProvider(selector, new SheetHovers(sheets)),
    languages.registerCompletionItemProvider(selector, new SheetCompletions(sheets), ...SheetCompletions.triggers),
    languages.registerDefinitionProvider(selector, definitions),
    languages.registerReferenceProvider(selector, definitions),
    languages.registerCodeActionsProvider(selector, new QuickFixes(sheets), {
      providedCodeActionKinds: QuickFixes.kinds,
    }),
  ];
}
