/// <reference lib="dom" />
import { showDrawings, themedDrawings } from './drawings';
import { showLiveValues } from './live-prose';
import type { MarkdownEngine } from './markdown-engine';
import { type MarkdownRenderer, showWhereNotTrusted } from './not-trusted';
import { makeTablesSortable, sortableStyle, sortOnPress } from './sortable-tables';

/** What the notebook hands an extension of its Markdown renderer. */
interface RendererContext {
  readonly workspace?: { readonly isTrusted: boolean };
  getRenderer(id: string): Promise<MarkdownRenderer | undefined>;
}

/**
 * Called by the notebook: has its Markdown renderer show live values in prose, and in outputs drawings and tables that can
 * be sorted.
 */
export async function activate(context: RendererContext): Promise<void> {
  const markdown = await context.getRenderer('vscode.markdown-it-renderer');
  markdown?.extendMarkdownIt?.((engine) => {
    extend(engine);
    showWhereNotTrusted(markdown, engine, () => context.workspace?.isTrusted);
  });
  if (markdown) {
    addStyle(`${themedDrawings}\n${sortableStyle}`);
    sortOnPress(document);
  }
}

export function extend(engine: MarkdownEngine): void {
  showLiveValues(engine);
  showDrawings(engine);
  makeTablesSortable(engine);
}

/** The Markdown renderer copies templates of this class into the tree of each output. */
function addStyle(text: string): void {
  const style = document.createElement('style');
  style.textContent = text;
  const template = document.createElement('template');
  template.classList.add('markdown-style');
  template.content.append(style);
  document.head.append(template);
}
