import assert from 'node:assert/strict';
import MarkdownIt from 'markdown-it';
import { extend } from '../../src/renderer/activate';
import type { MarkdownEngine } from '../../src/renderer/markdown-engine';
import {
  type MarkdownRenderer,
  type OutputItem,
  showWhereNotTrusted,
  withoutForeignHtml,
} from '../../src/renderer/not-trusted';

const item = (text: string, metadata?: object): OutputItem => ({ metadata, text: () => text });
const ofSheet = { origin: '{}' };

function engine(): MarkdownEngine {
  const made = new MarkdownIt({ html: true });
  extend(made);
  return made;
}

const shownWith = (text: string, metadata: object = ofSheet): string =>
  withoutForeignHtml(engine(), item(text, metadata)).trim();

/** What the page holds after a cell was shown there by a renderer that fails, or by one that does not. */
async function page(given: OutputItem, { isTrusted = false, fails = true, before = [] as OutputItem[] } = {}) {
  const preview = { innerHTML: '' };
  const element = { shadowRoot: { getElementById: (id: string) => (id === 'preview' ? preview : null) } };
  const renderer: MarkdownRenderer = {
    renderOutputItem: (shown) => {
      if (fails) {
        throw new TypeError('(void 0) is not a function'); // The very words of VS Code 1.100.
      }
      preview.innerHTML = `cleaned ${shown.text()}`;
    },
  };
  showWhereNotTrusted(renderer, engine(), () => isTrusted);
  for (const one of [...before, given]) {
    await renderer.renderOutputItem!(one, element as unknown as HTMLElement);
  }
  return preview.innerHTML.trim();
}

describe('a sheet in a workspace that is not trusted', () => {
  it('is shown where the renderer of the editor fails, also a cell that was just made in it', async () => {
    assert.equal(await page(item('It draws **16 A**.', ofSheet)), '<p>It draws <strong>16 A</strong>.</p>');
    assert.equal(await page(item('new', {}), { before: [item('old', ofSheet)] }), '<p>new</p>');
    assert.equal(await page(item('out', { extras: { drawings: [], tables: [] } })), '<p>out</p>');
  });

  it('is left to the renderer where that one works', async () => {
    assert.equal(await page(item('a', ofSheet), { fails: false }), 'cleaned a');
  });

  it('is all that is mended: other notebooks and other failures stay as they are', async () => {
    await assert.rejects(page(item('a', {})), TypeError);
    await assert.rejects(page(item('a', ofSheet), { isTrusted: true }), TypeError);
  });

  it('runs nothing that is written in it', () => {
    for (const text of [
      '<img src=x onerror="steal()">',
      'Here: <img src=x onerror="steal()"> and <a href="javascript:steal()">there</a>',
      '<script>\nsteal()\n</script>',
      '<details onclick="steal()">\n',
      '<!-- -->\n<svg onload=steal()>',
    ]) {
      assert.doesNotMatch(shownWith(text), /<(?!\/?p>)/, text);
    }
    assert.equal(shownWith('[go](javascript:steal())'), '<p>[go](javascript:steal())</p>');
    assert.match(
      shownWith('<b>a</b> &lt;script&gt; <b onclick=x>'),
      /^<p><b>a<\/b> &lt;script&gt; &lt;b onclick=x&gt;<\/p>$/,
    );
  });

  it('folds long steps, draws, and shows live values as elsewhere', () => {
    assert.equal(
      shownWith('<details><summary>a &lt; b</summary>\n\n1\n\n</details>'),
      '<details><summary>a &lt; b</summary>\n<p>1</p>\n</details>',
    );
    assert.match(shownWith('`= i`', { ...ofSheet, live: [['i', '<3 A']] }), />&lt;3 A<\/span>/);
  });
});
