import { previewHtml, SheetSession } from '../core';

/** What is used of the Markdown engine that the editor's preview hands in. */
interface MarkdownEngine {
  readonly options: { highlight?: ((code: string, language: string, attributes: string) => string) | null };
}

/** Colours calculation cells in the editor's Markdown preview; every other language stays the preview's own affair. */
export function extendMarkdownIt<Engine extends MarkdownEngine>(engine: Engine): Engine {
  const before = engine.options.highlight;
  engine.options.highlight = (code, language, attributes) => {
    if (language.split(/\s/)[0] !== 'kft') {
      return before?.(code, language, attributes) ?? '';
    }
    const session = new SheetSession();
    session.update([{ id: 'cell', kind: 'calculation', text: code.replaceAll('\r\n', '\n') }]);
    return previewHtml(session, 'cell');
  };
  return engine;
}
