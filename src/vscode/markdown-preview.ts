import { previewHtml, SheetSession } from '../core';
import { liveExpression } from '../renderer';

type InlineRule = (
  tokens: { readonly content: string }[],
  index: number,
  options: never,
  environment: unknown,
  renderer: never,
) => string;

/** What is used of the Markdown engine that the editor's preview hands in. */
interface MarkdownEngine {
  readonly options: { highlight?: ((code: string, language: string, attributes: string) => string) | null };
  readonly renderer: { readonly rules: { code_inline?: InlineRule } };
  readonly utils: { escapeHtml(text: string): string };
}

/** What a live value of a document reads, by its expression; undefined for an expression without a value. */
export type PreviewValues = (document: unknown) => ReadonlyMap<string, string>;

/**
 * Colours calculation cells in the editor's Markdown preview, and shows values where prose has code spans that begin
 * with `=`; every other language and all other code stays the preview's own affair.
 */
export function extendMarkdownIt<Engine extends MarkdownEngine>(engine: Engine, valuesOf: PreviewValues): Engine {
  const before = engine.options.highlight;
  engine.options.highlight = (code, language, attributes) => {
    if (language.split(/\s/)[0] !== 'kft') {
      return before?.(code, language, attributes) ?? '';
    }
    const session = new SheetSession();
    session.update([{ id: 'cell', kind: 'calculation', text: code.replaceAll('\r\n', '\n') }]);
    return previewHtml(session, 'cell');
  };
  showLiveValues(engine, valuesOf);
  return engine;
}

/** What has no value stays the code that it is. */
function showLiveValues({ renderer: { rules }, utils }: MarkdownEngine, valuesOf: PreviewValues): void {
  const before = rules.code_inline;
  rules.code_inline = (tokens, index, options, environment, renderer) => {
    const { content } = tokens[index];
    const expression = liveExpression(content);
    const value = expression && valuesOf((environment as Environment | undefined)?.currentDocument).get(expression);
    if (expression !== undefined && value) {
      return `<span class="kilofoot-live" title="= ${utils.escapeHtml(expression)}">${utils.escapeHtml(value)}</span>`;
    }
    return before?.(tokens, index, options, environment, renderer) ?? `<code>${utils.escapeHtml(content)}</code>`;
  };
}

/** What the preview hands its rules; the document is absent where a text alone is rendered. */
interface Environment {
  readonly currentDocument?: unknown;
}
