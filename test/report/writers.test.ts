import assert from 'node:assert/strict';
import { parse } from 'csv-parse/sync';
import { type ReportFormat, reportFormats } from '../../src/core';
import { bytesOf, sheetOf } from './report-of';

const sheet = sheetOf(
  'title: "Hall <b>5</b> | \\"east\\""\ndate: 2026-11-12\nrevision: B',
  `supply = 207.6 V   // at the receptacle
element = 11.9 Ω ± 0.1 Ω
current = supply / element
bare = "=1+1"
check current <= 20 A "carries it"`,
  'Text with *emphasis*, `code`, a [link](https://example.org) and <script>alert(1)</script>.',
);

const written = async (format: ReportFormat, text = sheet) => new TextDecoder().decode(await bytesOf(text, format));

describe('report formats', () => {
  for (const format of Object.keys(reportFormats) as ReportFormat[]) {
    it(`${format}: the same sheet gives the same bytes`, async () => {
      const first = await bytesOf(sheet, format);
      const second = await bytesOf(sheet, format);
      assert.ok(first.length > 0);
      assert.equal(Buffer.compare(first, second), 0);
    });
  }
});

describe('Markdown', () => {
  it('holds maths, tables, and text from the sheet as text', async () => {
    const text = await written('md');
    assert.match(text, /^# Hall \\<b\\>5\\<\/b\\> \\\| "east"$/m);
    assert.match(text, /\$\\displaystyle \\mathrm\{current\} = \\frac\{/);
    assert.match(text, /\| carries it \| \$.*\\le 20\\,\\mathrm\{A\}\$ \|/);
    assert.match(text, /Text with \*emphasis\*, `code`, a \[link\]\(<https:\/\/example.org>\) and \\<script\\>/);
  });
});

describe('HTML', () => {
  it('is one page with MathML, a language, a title and no script', async () => {
    const html = await written('html');
    assert.match(html, /<html lang="en">/);
    assert.match(html, /<title>Hall &lt;b&gt;5&lt;\/b&gt; \| &quot;east&quot; – Calculation report<\/title>/);
    assert.match(html, /<math .*<mfrac>/);
    assert.match(html, /counter\(page\) " of " counter\(pages\)/);
    assert.match(html, /--foot: ".*revision B · 2026-11-12"/);
    assert.doesNotMatch(html, /<script|<link|<img|src=|url\(|@import/i);
  });
});

describe('CSV', () => {
  it('has units in headings, numbers as numbers, and no text that a spreadsheet takes for a formula', async () => {
    const rows: string[][] = parse(await written('csv'), { relax_column_count: true });
    assert.deepEqual(rows[1], ['name', 'value', 'unit', 'low', 'high', 'shown']);
    const current = rows.find(([name]) => name === 'current')!;
    assert.ok(Math.abs(Number(current[1]) - 207.6 / 11.9) < 1e-12); // U / R
    assert.equal(current[2], 'A');
    assert.equal(rows.find(([name]) => name === 'bare')!.at(-1), "'=1+1");
  });

  it('says so when there is nothing to list', async () => {
    assert.equal(await written('csv', '# Prose alone\n'), 'Results\r\nThe sheet has no results.\r\n');
  });
});
