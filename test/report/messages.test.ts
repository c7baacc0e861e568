import assert from 'node:assert/strict';
import MarkdownIt from 'markdown-it';
import { evaluateSheet } from '../../src/core';
import { toMarkdown } from '../../src/display';
import { documentText, entriesOf, workbookText } from './archive';
import { pageText } from './page-text';
import { bytesOf, sheetOf } from './report-of';

/** A sheet with code in every kind of message: an absent value, a doubtful check, what is missing, what is allowed. */
const sheet = sheetOf(
  'title: Panel\nreport: load memo',
  `pocket = meter(reading: 0.8 %, digits: 5)
supply = 207.6 V by pocket  // alone on the bus
panel = schedule
  | tag | load   | volts |
  | --- | ---    | ---   |
  | P1  | 9.2 kW | 240 V |
  | P2  |        | 240 V |
  amps = load / volts
column = panel.amps
loaded = known(panel.amps)
total = sum(panel.load)
twice = total * 2
check supply >= 207 V "supply"
allow voltage-drop "short, see \`panel\`"
unused = 3 V`,
);

const textOf = (html: string): string =>
  html.replace(/<style>[\s\S]*?<\/style>|<annotation[\s\S]*?<\/annotation>/g, '').replace(/<[^>]*>/g, '');

const decoded = async (format: 'html' | 'md' | 'csv') => new TextDecoder().decode(await bytesOf(sheet, format));

describe('code in messages', () => {
  const shown: Readonly<Record<string, () => Promise<string>>> = {
    'a web page': async () => textOf(await decoded('html')),
    Markdown: async () => textOf(new MarkdownIt().render(await decoded('md'))),
    'a word processor document': async () =>
      documentText(entriesOf(await bytesOf(sheet, 'docx')).get('word/document.xml')!.text),
    'a PDF': () => pageText(sheet),
    'comma-separated values': () => decoded('csv'),
    'a workbook': async () => workbookText(entriesOf(await bytesOf(sheet, 'xlsx'))),
    'the notebook': async () => {
      const blocks = evaluateSheet(sheet).cells.flatMap((cell) => cell.blocks);
      return textOf(new MarkdownIt().render(toMarkdown(blocks)));
    },
  };
  for (const [where, text] of Object.entries(shown)) {
    it(`is set apart, and no backtick is left, in ${where}`, async () => {
      const lines = (await text()).split('\n');
      assert.deepEqual(
        lines.filter((line) => line.includes('`')),
        [],
      );
      assert.ok(lines.some((line) => /panel|load/.test(line)));
    });
  }

  it('is code on a web page, where Markdown has it so', async () => {
    assert.match(await decoded('html'), /<code>panel<\/code> has none/);
  });
});
