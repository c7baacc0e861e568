import MarkdownIt from 'markdown-it';
import { extend } from '../../src/renderer/activate';

/** Markdown as a notebook renders it, with what the cell or its output has beside the text. */
export function rendered(markdown: string, metadata?: object): string {
  const engine = new MarkdownIt({ html: true });
  extend(engine);
  return engine.render(markdown, { outputItem: { metadata } }).trim();
}
