import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readFont } from '../../src/cli/fonts';
import {
  buildReport,
  evaluateSheet,
  type FolderFiles,
  type ReportFormat,
  reportInput,
  writeReport,
} from '../../src/core';
import { readPicture } from '../../src/report/picture';
import { entriesOf } from './archive';
import { saying, sheetOf } from './report-of';

/** A PNG that is made elsewhere: the extension's own icon. */
const icon = new Uint8Array(readFileSync(join(__dirname, '..', '..', 'media', 'icon.png')));
/** One frame header and nothing to show: 0x0140 by 0x00f0 pixels. */
const jpegHead = new Uint8Array([
  0xff, 0xd8, 0xff, 0xe0, 0, 4, 0, 0, 0xff, 0xc0, 0, 11, 8, 0, 0xf0, 1, 0x40, 1, 1, 17, 0,
]);
const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><path d="M0 0L40 20" stroke="#000"/></svg>';

const files: Readonly<Record<string, Uint8Array>> = {
  'site/panel.png': icon,
  'site/line diagram.svg': new TextEncoder().encode(svg),
  'site/note.txt': new TextEncoder().encode('no picture'),
  'site/cut.png': icon.slice(0, 60),
  'secret.png': icon,
};
const folder: FolderFiles = {
  path: 'site/call.kft.md',
  read: (path) => files[path] ?? { problem: 'is not there.' },
  tableFiles: () => [],
};

const reportWith = (prose: string) => {
  const text = sheetOf('title: Call\ndate: 2026-11-12', 'a = 1 V', prose);
  return buildReport(reportInput(evaluateSheet(text, { files: folder }), folder));
};
const written = (prose: string, format: ReportFormat) => writeReport(reportWith(prose), format, { font: readFont });

describe('pictures in prose', () => {
  it('are known by their content, with their size', () => {
    const view = new DataView(icon.buffer, icon.byteOffset);
    assert.deepEqual(sizeOf(icon), ['png', view.getUint32(16), view.getUint32(20)]);
    assert.deepEqual(sizeOf(jpegHead), ['jpeg', 320, 240]);
    assert.deepEqual(sizeOf(new TextEncoder().encode(svg)), ['svg', 40, 20]);
    const reaching = svg.replace('<path', '<image href="file:///etc/hosts"/><path');
    assert.match(saying(readPicture(new TextEncoder().encode(reaching))), /which a report does not take over/);
  });

  it('stand in web pages, PDF and documents whole, with what is on them in words, between the words around them', async () => {
    const prose = 'Before ![the panel with its cover off](panel.png) after.';
    const html = new TextDecoder().decode(await written(prose, 'html'));
    const [, base64] =
      /<p>Before <\/p>\n<p class="picture"><img src="data:image\/png;base64,([^"]+)" alt="the panel with its cover off"/.exec(
        html,
      )!;
    assert.equal(Buffer.compare(Buffer.from(base64, 'base64'), icon), 0);
    const pdf = Buffer.from(await written(prose, 'pdf')).toString('latin1');
    assert.match(pdf, /\/Subtype \/Image/);
    assert.match(pdf, /\/S \/Figure\n\/Alt \(the panel with its cover off\)/);
    const entries = entriesOf(await written(prose, 'docx'));
    assert.ok([...entries.keys()].some((name) => /^word\/media\/.*\.png$/.test(name)));
    assert.match(entries.get('word/document.xml')!.text, /descr="the panel with its cover off"/);
  });

  it('may be SVG, which a document for a word processor leaves out and says so', async () => {
    const prose = '![one-line](line%20diagram.svg)';
    assert.match(new TextDecoder().decode(await written(prose, 'html')), /data:image\/svg\+xml;base64,/);
    assert.ok((await written(prose, 'pdf')).length > 0);
    const { text } = entriesOf(await written(prose, 'docx')).get('word/document.xml')!;
    assert.match(text, /Picture left out \(one-line\): line%20diagram\.svg is SVG/);
  });

  it('are left out with the reason where there is none to be had, and nothing outside the folder or of the net is read', () => {
    for (const [source, why] of [
      ['gone.png', /is not there/],
      ['note.txt', /is no PNG, JPEG or SVG/],
      ['../../secret.png', /outside the sheet’s folder tree/],
      ['/etc/hosts', /outside the sheet’s folder tree/],
      ['https://example.org/a.png', /nothing is fetched from elsewhere/],
      ['//example.org/a.png', /nothing is fetched from elsewhere/],
    ] as const) {
      const told = saying(reportWith(`![what it shows](${source})`).sections);
      assert.match(told, why);
      assert.ok(told.includes(`Picture left out (what it shows): ${source}`), told);
    }
  });

  it('that break off give way to a line in a PDF', async () => {
    const pdf = await written('![cut](cut.png)', 'pdf');
    assert.doesNotMatch(Buffer.from(pdf).toString('latin1'), /\/Subtype \/Image/);
  });

  it('give the same bytes again', async () => {
    for (const format of ['html', 'pdf', 'docx'] as const) {
      const prose = '![a](panel.png)\n\n![b](line%20diagram.svg)\n\n![c](panel.png)';
      assert.equal(Buffer.compare(await written(prose, format), await written(prose, format)), 0, format);
    }
  });
});

function sizeOf(bytes: Uint8Array): unknown[] {
  const read = readPicture(bytes);
  return 'problem' in read ? [read.problem] : [read.type, read.width, read.height];
}
