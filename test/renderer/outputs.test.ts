import assert from 'node:assert/strict';
import { SheetSession } from '../../src/core';
import { type MarkdownExtras, toMarkdown, toText } from '../../src/display';
import { rendered } from './rendered';

/** What a cell shows, as the notebook puts it below. */
function output(...lines: readonly string[]) {
  const session = new SheetSession();
  session.update([{ id: 'cell', kind: 'calculation', text: lines.join('\n') }]);
  const blocks = session.outputs('cell');
  const extras: MarkdownExtras = { drawings: [], tables: [] };
  const markdown = toMarkdown(blocks, extras);
  return { markdown, extras, text: toText(blocks), html: rendered(markdown, JSON.parse(JSON.stringify({ extras }))) };
}

const panel = [
  'panel = schedule',
  '  | tag   | phase | load    |',
  '  | ---   | ---   | ---     |',
  '  | oven  | A     | 3.6 kVA |',
  '  | urn   | B     | 1.4 kVA |',
  '  | sign  | C     |         |',
];

describe('what a notebook shows of an output', () => {
  it('draws the doubt that decides a check, told in words to those who do not see it', () => {
    const { html, text, extras } = output('i = 15.5 A ± 1 A', 'check i <= 16 A');
    assert.equal(extras.drawings.length, 1);
    const [svg] = html.match(/<svg[\s\S]*<\/svg>/) ?? [''];
    assert.match(svg, /role="img"/);
    const [, told] = /<desc>(.*?)<\/desc>/.exec(svg) ?? [];
    assert.match(told, /16 A/);
    assert.ok(
      text.replace(/\s+/g, ' ').includes(told.replace(/&gt;/g, '>').replace(/&lt;/g, '<')),
      'the text twin says the same',
    );
  });

  it('draws the loads of a panel by phase', () => {
    const { html } = output(...panel);
    assert.match(html, /<svg[\s\S]*<title>load by phase<\/title>/);
    // (3.6 − 5 / 3) / (5 / 3)
    assert.match(html, /<p><em>load by phase: unbalance 116 %, A lies furthest above the mean of 1\.667 kVA<\/em>/);
  });

  it('makes the headings of a schedule into buttons, and marks the totals that stay last', () => {
    const { html } = output(...panel);
    assert.equal(html.match(/<th[^>]*><button type="button" class="kf-sort">/g)?.length, 3);
    assert.match(html, /<tr class="kf-totals">\s*<td[^>]*>Total/);
    assert.equal(html.match(/kf-totals/g)?.length, 1);
  });

  it('leaves the tables of records and of prose as they are', () => {
    const { html } = output('r = (amps: 2 A, volts: 120 V)');
    assert.doesNotMatch(html, /kf-sort/);
    assert.doesNotMatch(rendered('| a |\n| --- |\n| 1 |'), /kf-sort/);
  });

  it('keeps images that are no drawings, and a drawing that is not there as its words', () => {
    assert.equal(rendered('![a](b.png)'), '<p><img src="b.png" alt="a"></p>');
    assert.equal(rendered('![words](kilofoot-drawing:3)'), '<p><img src="kilofoot-drawing:3" alt="words"></p>');
  });

  it('lets no text of the sheet become markup', () => {
    const { html } = output(
      'panel = schedule',
      ...panel.slice(1, 3),
      '  | <b onclick=x>"</b> | A | 1 kVA |',
      '  | b | B | 2 kVA |',
    );
    assert.doesNotMatch(html, /<b /);
  });
});
