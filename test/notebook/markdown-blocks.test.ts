import assert from 'node:assert/strict';
import fc from 'fast-check';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { frontmatterFromMarkdown } from 'mdast-util-frontmatter';
import { gfmFromMarkdown } from 'mdast-util-gfm';
import { frontmatter } from 'micromark-extension-frontmatter';
import { gfm } from 'micromark-extension-gfm';
import { liveSpans, readSheet } from '../../src/notebook';
import { markdownBlocks } from '../../src/notebook/markdown-blocks';
import '../fuzz-seed';

/** Pieces that begin, end, hold or look like blocks, with what may stand before and behind them. */
const pieces = [
  ...['```kft\n', '```\n', '~~~ js\n', '~~~\n', '````\n', '   ```kft\n', '    code\n', '\tcode\n', '<!-- cell -->\n'],
  ...['word and *more*\n', '  words go on\n', 'a\n', 'Ω = 5\n', 'x | y\n', '| a | b |\n', '| - | - |\n', 'a\n:-:\n'],
  ...['> ', '>', '- ', '* ', '1. ', '10) ', '  - ', '\n', '\n\n', '\r\n', ' \n', '---\n', '===\n', '# head\n'],
  ...['<div>\n', '</div>\n', '<!--\n', '-->\n', 'ends -->\n', 'so > it\n', '<script>\n', 'x </script> y\n', '<?php\n'],
  ...[
    '[a]: /b\n',
    '[a\n',
    "b]: /c 'title\n",
    "ends'\n",
    '[^1]: note\n',
    '[^1] and [ ] `= x`\n',
    '\u2028',
    '\u0085',
    'é\n',
  ],
];
const anyMarkdown = fc.array(fc.constantFrom(...pieces), { maxLength: 25 }).map((parts) => parts.join(''));

/** The blocks that a sheet is split at, as the parser gives them for the whole text. */
const byParser = (text: string) =>
  fromMarkdown(text, {
    extensions: [frontmatter(['yaml']), gfm()],
    mdastExtensions: [frontmatterFromMarkdown(['yaml']), gfmFromMarkdown()],
  })
    .children.filter(({ type }) => parting.has(type))
    .map(({ type, position }) => ({ type, start: position!.start.offset!, end: position!.end.offset! }));

const parting: ReadonlySet<string> = new Set(['code', 'html', 'yaml']);

/** Blank space before a block belongs to its first line. */
const withIndent = (text: string, start: number): number =>
  start > 0 && /[ \t]/.test(text[start - 1]) ? withIndent(text, start - 1) : start;

describe('the blocks that a sheet is split at', () => {
  it('are those of a Markdown parser that reads every letter', () => {
    fc.assert(
      fc.property(anyMarkdown, (text) => {
        const expected = byParser(text).map((block) => ({ ...block, start: withIndent(text, block.start) }));
        assert.deepEqual(
          markdownBlocks(text).filter(({ type }) => parting.has(type)),
          expected,
        );
      }),
      { numRuns: 500 },
    );
  });

  it('stand where they stand, however deep what lies between them is', () => {
    for (const deep of ['> ', '- ', '1. ', '>']) {
      const { cells } = readSheet(
        new TextEncoder().encode(`${deep.repeat(50_000)}a\n\n\`\`\`kft\nx = 1\n\`\`\`\n\n${deep.repeat(50_000)}\n`),
      );
      assert.deepEqual(
        cells.map(({ kind }) => kind),
        ['prose', 'calculation', 'prose'],
      );
    }
  });
});

describe('live values', () => {
  it('are looked for in writing, not in rows of marks', () => {
    assert.deepEqual(
      liveSpans('It is `= x` long.'),
      [{ start: 9, end: 10 + 1 }].map(({ start }) => ({ start: start - 1 + 0, end: start + 1 })),
    );
    assert.equal(liveSpans('It is `= x` so. '.repeat(6000)).length, 6000);
    assert.equal(liveSpans(`${'*a_ '.repeat(25_000)} \`= x\``).length, 1);
    for (const marks of ['[', '![', '> ']) {
      assert.deepEqual(liveSpans(`${marks.repeat(25_000)} \`= x\``), []);
    }
  });
});
