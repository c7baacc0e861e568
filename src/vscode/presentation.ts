import * as vscode from 'vscode';
import type { SheetSession } from '../core';
import { type Block, type MarkdownExtras, toMarkdown, toText } from '../display';

/** What a cell shows, ready for the editor. */
export interface Presentation {
  readonly markdown: string;
  /** What our extension of the Markdown renderer adds to it. */
  readonly extras: MarkdownExtras;
  /** The same for copying and for screen readers. */
  readonly text: string;
  /** True when the cell has an error or a check that did not pass. */
  readonly failed: boolean;
}

export const nothing: Presentation = { markdown: '', extras: { drawings: [], tables: [] }, text: '', failed: false };

/** A calculation cell's results as they stand in its session; prose shows nothing. */
export function present(session: SheetSession, cell: string): Presentation {
  const blocks = session.outputs(cell);
  const failed =
    session.diagnostics(cell).some((diagnostic) => diagnostic.severity === 'error') ||
    session.results(cell).some((result) => result.kind === 'check' && result.verdict !== 'yes');
  if (blocks.length === 0) {
    return failed ? { ...nothing, failed } : nothing;
  }
  let made = written.get(blocks);
  if (!made) {
    const extras: MarkdownExtras = { drawings: [], tables: [] };
    made = { markdown: toMarkdown(blocks, extras), extras, text: toText(blocks) };
    written.set(blocks, made);
  }
  return { ...made, failed };
}

/** Blocks stay the same objects until their cell's results change, and writing them out costs more than comparing. */
const written = new WeakMap<readonly Block[], Omit<Presentation, 'failed'>>();

/** One output: typeset for reading, with its plain twin. */
export function notebookOutputs({ markdown, extras, text }: Presentation): vscode.NotebookCellOutput[] {
  if (!text && !markdown) {
    return [];
  }
  const { text: item } = vscode.NotebookCellOutputItem;
  return [new vscode.NotebookCellOutput([item(markdown, 'text/markdown'), item(text, 'text/plain')], { extras })];
}

/** What a cell of the editor shows at the moment; empty when it shows nothing. */
export function shownMarkdown(cell: vscode.NotebookCell): string {
  const item = cell.outputs.flatMap((output) => output.items).find((candidate) => candidate.mime === 'text/markdown');
  return item ? new TextDecoder().decode(item.data) : '';
}
