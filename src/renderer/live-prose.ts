import { type MarkdownEngine, metadataOf } from './markdown-engine';

/** Has code spans that begin with `=` show their values. */
export function showLiveValues(engine: MarkdownEngine): void {
  const before = engine.renderer.rules.code_inline;
  engine.renderer.rules.code_inline = (tokens, index, options, env, self) => {
    const plain = () => before?.(tokens, index, options, env, self) ?? self.renderToken(tokens, index, options);
    const expression = liveExpression(tokens[index].content);
    const { live } = metadataOf(env);
    // A span that was typed since the last evaluation has no entry and stays as it is written.
    const found = expression !== undefined && live?.find(([known]) => known === expression);
    if (!found) {
      return plain();
    }
    const { escapeHtml } = engine.utils;
    const [, value] = found;
    return value === undefined
      ? `${plain()} (no value)`
      : `<span class="kilofoot-live" title="= ${escapeHtml(found[0])}">${escapeHtml(value)}</span>`;
  };
}

/** The expression of a code span that begins with `=`, spaces and line ends as single spaces; undefined for any other. */
export const liveExpression = (code: string): string | undefined =>
  /^\s*=/.test(code) ? code.replace(/^\s*=/, '').replace(/\s+/g, ' ').trim() : undefined;
