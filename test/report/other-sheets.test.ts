import assert from 'node:assert/strict';
import { readFont } from '../../src/cli/fonts';
import {
  buildReport,
  evaluateSheet,
  type FolderFiles,
  type ReportFormat,
  reportInput,
  writeReport,
} from '../../src/core';
import { entriesOf } from './archive';

const cell = (text: string) => `\`\`\`kft\n${text}\n\`\`\`\n`;

/** A folder tree whose files name one another in ways that a link must not take for something else. */
const texts: Readonly<Record<string, string>> = {
  'shared/me ters & (co) #1.kft.md': cell(
    'use base from "deep/100%.kft.md"\nsupply = base + 7.6 V\nshed = heater(resistance: 11.9 Ω, voltage: base)',
  ),
  'shared/deep/100%.kft.md': cell('base = 100 V * 2'),
};
const named = '../shared/me ters & (co) #1.kft.md';
const link = '../shared/me%20ters%20%26%20%28co%29%20%231.kft.md';
const sheet = cell(`use supply, shed, base from "${named}"\ncurrent = supply / (12 Ω)`);

const files: FolderFiles = {
  path: 'jobs/kiln.kft.md',
  read: (path) => (texts[path] === undefined ? { problem: 'is not there' } : new TextEncoder().encode(texts[path])),
  tableFiles: () => [],
};

const bytes = (format: ReportFormat, sheetFolder?: string | null) =>
  writeReport(buildReport(reportInput(evaluateSheet(sheet, { files }), files, sheetFolder)), format, {
    font: readFont,
  });
const text = async (format: ReportFormat, sheetFolder?: string | null) =>
  new TextDecoder('latin1').decode(await bytes(format, sheetFolder));

/** The links of a report, each once. */
const once = (found: Iterable<RegExpMatchArray>) => [...new Set([...found].map(([, target]) => target))];

describe('another sheet that a report takes values from', () => {
  it('is linked in a web page, and what that sheet takes is linked from here', async () => {
    const html = await text('html');
    assert.deepEqual(once(html.matchAll(/<a href="([^"]*)"/g)), [link, '../shared/deep/100%25.kft.md']);
    assert.match(html, /, from <a href/); // The title of a record.
    assert.match(html, /<p class="title">How <a href/);
  });

  it('is linked in Markdown, a word processor document and a PDF', async () => {
    assert.deepEqual(once((await text('md')).matchAll(/\]\(([^)]*)\)/g)), [link, '../shared/deep/100%25.kft.md']);
    const xml = entriesOf(await bytes('docx')).get('word/document.xml')!.text;
    assert.equal(once(xml.matchAll(/w:instr="HYPERLINK &quot;(.*?)&quot;"/g))[0], link);
    assert.match(await text('pdf'), /\/URI \(\.\.\/shared\/me%20ters%20%26%20%28co%29%20%231\.kft\.md\)/);
  });

  it('gives the same bytes', async () => {
    for (const format of ['docx', 'pdf'] as const) {
      assert.deepEqual(await bytes(format), await bytes(format), format);
    }
  });

  it('is linked from where the report lies, and not where no way leads to it', async () => {
    const targets = async (folder: string | null) =>
      once((await text('html', folder)).matchAll(/<a href="([^"]*)"/g))[0];
    assert.equal(await targets('jobs'), link.replace('../', ''));
    assert.equal(await targets('../jobs'), link);
    assert.equal(await targets('a/b'), `a/${link.replace('../', '')}`);
    assert.equal(await targets(null), undefined);
  });
});
