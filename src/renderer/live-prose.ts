import type MarkdownIt from 'markdown-it';

type MarkdownEngine = InstanceType<typeof MarkdownIt>;

/** What an open sheet tells of a prose cell beside its text: each live expression, with its value where it has one. */
export type LiveMetadata = readonly (readonly [expression: string, value?: string])[];

/** What the notebook hands an extension of its Markdown renderer. */
interface RendererContext {
  getRenderer(id: string): Promise<{ extendMarkdownIt?(extend: (engine: MarkdownEngine) => void): void } | undefined>;
}

/** What the Markdown renderer hands its rules; `metadata` is the prose cell's own. */
interface Environment {
  readonly outputItem?: { readonly metadata?: { readonly live?: LiveMetadata } };
}

/** Called by the notebook: has its Markdown renderer show values where prose has code spans that begin with `=`. */
export async function activate(context: RendererContext): Promise<void> {
  const markdown = await context.getRenderer('vscode.markdown-it-renderer');
  markdown?.extendMarkdownIt?.(showLiveValues);
}

function showLiveValues(engine: MarkdownEngine): void {
  const before = engine.renderer.rules.code_inline;
  engine.renderer.rules.code_inline = (tokens, index, options, env, self) => {
    const plain = () => before?.(tokens, index, options, env, self) ?? self.renderToken(tokens, index, options);
    const expression = liveExpression(tokens[index].content);
    const live = (env as Environment | undefined)?.outputItem?.metadata?.live;
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
