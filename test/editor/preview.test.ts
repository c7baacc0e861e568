import assert from 'node:assert/strict';
import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { previewHtml } from '../../src/core';
import { extendMarkdownIt } from '../../src/vscode/markdown-preview';
import { roughCell } from '../language/syntax/cell-arbitraries';
import { cells } from './marked-cells';

const html = (text: string) => previewHtml(cells(text).session, '0');

const span = (kind: string, text: string) => `<span class="hljs-${kind}">${text}</span>`;

/** What a reader sees: the text without tags. */
const read = (page: string) =>
  page
    .replace(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');

describe('the Markdown preview', () => {
  it('colours names, numbers, units, conductors, texts, words and comments', () => {
    assert.equal(
      html('check x <= 3 A "t" // <b>\nx = resistance(12 AWG Cu, 3 ft) in Ω'),
      [
        `${span('keyword', 'check')} ${span('variable', 'x')} &lt;= ${span('number', '3 ')}${span('type', 'A')} `,
        `${span('string', '&quot;t&quot;')} ${span('comment', '// &lt;b&gt;')}\n`,
        `${span('variable', 'x')} = ${span('title function_', 'resistance')}(${span('symbol', '12 AWG Cu')}, `,
        `${span('number', '3 ')}${span('type', 'ft')}) ${span('keyword', 'in')} ${span('type', 'Ω')}`,
      ].join(''),
    );
  });

  it('changes no letter of any cell', () => {
    fc.assert(
      fc.property(roughCell, (text) => {
        const page = html(text.replaceAll('¦', ''));
        assert.equal(read(page), text.replaceAll('¦', ''));
      }),
      { numRuns: 150 },
    );
  });

  it('colours calculation cells alone, whatever their fence', () => {
    const engine = extendMarkdownIt(new MarkdownIt({ highlight: (code) => `own ${code.length}` }), () => new Map());
    const page = engine.render('```kft\nx = 3 A\n```\n\n~~~kft wide\ny = 4\n~~~\n\n```js\nz\n```\n');
    assert.match(page, /hljs-variable">x</);
    assert.match(page, /hljs-variable">y</);
    assert.match(page, /own 2/);
  });

  it('shows live values of the document that it renders, and leaves all other code as it is', () => {
    const values = new Map([['x in <A>', '3 A & more']]);
    const engine = extendMarkdownIt(new MarkdownIt(), (document) => (document === 'here' ? values : new Map()));
    const text = '`= x  in <A>`, `= y`, `x`';
    const plain = '<code>= y</code>, <code>x</code>';
    assert.equal(
      engine.renderInline(text, { currentDocument: 'here' }),
      `<span class="kilofoot-live" title="= x in &lt;A&gt;">3 A &amp; more</span>, ${plain}`,
    );
    assert.equal(engine.renderInline(text, {}), `<code>= x  in &lt;A&gt;</code>, ${plain}`);
  });
});
