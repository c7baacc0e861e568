import * as vscode from 'vscode';
import { SheetCompletions } from './completion';
import { SheetDefinitions } from './definition';
import { SheetFolding } from './folding';
import { SheetFormatting } from './formatting';
import { SheetHighlights } from './highlights';
import { SheetHovers } from './hover';
import { SheetInlayHints } from './inlay-hints';
import { SheetLinks } from './links';
import { languageId } from './names';
import type { OpenSheets } from './open-sheets';
import { SheetOutline } from './outline';
import { SchedulePastes } from './paste-edits';
import { QuickFixes } from './quick-fixes';
import { SheetRenames } from './rename';
import { SheetSelections } from './selection-ranges';
import { SheetTokens } from './semantic-tokens';
import { SheetSignatures } from './signature-help';
import type { WorkspaceFiles } from './workspace-files';

/** Cells of notebooks, and sheets that are shown as text. */
const selector: vscode.DocumentSelector = [
  { language: languageId },
  { language: 'markdown', pattern: '**/*.{kft,kft.md}' },
];

/** Registers what the editor can tell and do while a sheet is written. `evaluated` fires when results are new. */
export function registerLanguageFeatures(
  sheets: OpenSheets,
  files: WorkspaceFiles,
  evaluated: vscode.Event<void>,
): vscode.Disposable[] {
  const { languages } = vscode;
  const definitions = new SheetDefinitions(sheets, files);
  const formatting = new SheetFormatting(sheets);
  return [
    languages.registerHoverProvider(selector, new SheetHovers(sheets)),
    languages.registerCompletionItemProvider(selector, new SheetCompletions(sheets), ...SheetCompletions.triggers),
    languages.registerSignatureHelpProvider(selector, new SheetSignatures(sheets), ...SheetSignatures.triggers),
    languages.registerDefinitionProvider(selector, definitions),
    languages.registerReferenceProvider(selector, definitions),
    languages.registerDocumentHighlightProvider(selector, new SheetHighlights(sheets)),
    languages.registerRenameProvider(selector, new SheetRenames(sheets)),
    languages.registerDocumentSymbolProvider(selector, new SheetOutline(sheets)),
    languages.registerFoldingRangeProvider(selector, new SheetFolding(sheets)),
    languages.registerSelectionRangeProvider(selector, new SheetSelections(sheets)),
    languages.registerDocumentFormattingEditProvider(selector, formatting),
    languages.registerDocumentRangeFormattingEditProvider(selector, formatting),
    languages.registerDocumentSemanticTokensProvider(selector, new SheetTokens(sheets, evaluated), SheetTokens.legend),
    languages.registerInlayHintsProvider(selector, new SheetInlayHints(sheets, evaluated)),
    languages.registerDocumentLinkProvider(selector, new SheetLinks(sheets)),
    languages.registerCodeActionsProvider(selector, new QuickFixes(sheets), {
      providedCodeActionKinds: QuickFixes.kinds,
    }),
    ...SchedulePastes.register(selector, sheets),
  ];
}
