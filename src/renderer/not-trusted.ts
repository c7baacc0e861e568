/// <reference lib="dom" />
import { isOurs, type MarkdownEngine } from './markdown-engine';

/** A cell's prose or output, as the notebook hands it to a renderer. */
export interface OutputItem {
  readonly metadata?: unknown;
  text(): string;
}

/** What the notebook's Markdown renderer gives those that extend it. */
export interface MarkdownRenderer {
  renderOutputItem?(item: OutputItem, element: HTMLElement, signal?: AbortSignal): unknown;
  extendMarkdownIt?(extend: (engine: MarkdownEngine) => void): void;
}

/**
 * Has sheets show in a workspace that is not trusted where VS Code's own renderer fails there: that of 1.100 was bundled
 * without its cleaner of HTML, and each Markdown cell and output of any notebook stays blank. Ours are rendered again,
 * with what is written as HTML shown as it is written. Nothing is changed where the renderer does its work.
 */
export function showWhereNotTrusted(
  renderer: MarkdownRenderer,
  engine: MarkdownEngine,
  isTrusted: () => boolean | undefined,
): void {
  const before = renderer.renderOutputItem;
  /** A web view shows one notebook; a prose cell that was just made does not tell by itself whose it is. */
  let isSheet = false;
  renderer.renderOutputItem = async (item, element, signal) => {
    isSheet ||= isOurs(item.metadata);
    try {
      await before?.call(renderer, item, element, signal);
    } catch (error) {
      const shown = element.shadowRoot?.getElementById('preview');
      if (!shown || !isSheet || isTrusted() !== false) {
        throw error;
      }
      shown.innerHTML = withoutForeignHtml(engine, item);
    }
  };
}

/** Markdown as HTML that only the engine and its extensions made. */
export function withoutForeignHtml(engine: MarkdownEngine, item: OutputItem): string {
  const { rules } = engine.renderer;
  const { html_block, html_inline } = rules;
  rules.html_block = rules.html_inline = (tokens, index) => harmless(engine.utils.escapeHtml(tokens[index].content));
  try {
    return engine.render(item.text(), { outputItem: item });
  } finally {
    Object.assign(rules, { html_block, html_inline });
  }
}

/** Gives escaped HTML its character references back, and the tags that only fold or mark text, without attributes. */
const harmless = (escaped: string): string =>
  escaped
    .replace(/&amp;(#?\w+;)/g, '&$1')
    .replace(/&lt;(\/?(?:details|summary|br|sub|sup|b|i|strong|em|kbd|code) *\/?)&gt;/gi, '<$1>');
