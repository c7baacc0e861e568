/**
 * Every example and starter sheet, with its output stored beside this file. When a change is meant, look at the
 * difference after `UPDATE_GOLDEN=1 npx mocha` and commit it.
 */
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { run } from '../cli/fake-console';
import { documentText, entriesOf, workbookText } from '../report/archive';
import { pageText } from '../report/page-text';
import { bytesOf } from '../report/report-of';

const root = join(__dirname, '..', '..');
const stored = join(__dirname, 'expected');
const sheets = ['examples', 'seeds'].flatMap((folder) =>
  readdirSync(join(root, folder))
    .filter((name) => /\.kft(\.md)?$/.test(name))
    .sort()
    .map((name) => ({ folder, name })),
);

/** All reports have the same style, so it is stored once. */
const styleFile = 'every-sheet.report.css';

function compare(file: string, text: string): void {
  const path = join(stored, file);
  if (process.env.UPDATE_GOLDEN) {
    mkdirSync(stored, { recursive: true });
    writeFileSync(path, text);
  }
  assert.ok(existsSync(path), `${file} is not stored yet; run once with UPDATE_GOLDEN=1 and look at it.`);
  assert.equal(text, readFileSync(path, 'utf8'));
}

describe('example and starter sheets', () => {
  for (const { folder, name } of sheets) {
    const bytes = readFileSync(join(root, folder, name));
    const called = `${folder}-${basename(name).replace(/\.kft(\.md)?$/, '')}`;

    it(`${folder}/${name} gives the stored text`, async () => {
      compare(`${called}.txt`, (await run(['run', '-'], bytes)).out);
    });

    it(`${folder}/${name} gives the stored results`, async () => {
      const { out } = await run(['run', '-', '--format', 'json'], bytes);
      compare(`${called}.json`, `${JSON.stringify(JSON.parse(out), undefined, 2)}\n`);
    });

    for (const format of ['md', 'csv']) {
      it(`${folder}/${name} gives the stored report as ${format}`, async () => {
        compare(`${called}.report.${format}`, (await run(['run', '-', '--format', format], bytes)).out);
      });
    }

    it(`${folder}/${name} gives the stored report as html, in the stored style`, async () => {
      const { out } = await run(['run', '-', '--format', 'html'], bytes);
      const [, before, style, after] = /^([\s\S]*?<style>)([\s\S]*?)(<\/style>[\s\S]*)$/.exec(out)!;
      // What stands on each page's foot is the one thing in it that differs by sheet.
      const foot = /--foot: "[^"]*"/.exec(style)?.[0] ?? '';
      compare(`${called}.report.html`, `${before}${foot}${after}`);
      compare(styleFile, style.replace(foot, ''));
    });

    it(`${folder}/${name} gives the stored report as docx, xlsx and pdf`, async () => {
      const text = bytes.toString('utf8');
      const word = entriesOf(await bytesOf(text, 'docx')).get('word/document.xml')!.text;
      compare(`${called}.report.docx.txt`, documentText(word));
      compare(`${called}.report.xlsx.txt`, workbookText(entriesOf(await bytesOf(text, 'xlsx'))));
      compare(`${called}.report.pdf.txt`, await pageText(text));
    });

    it(`${folder}/${name} is laid out as the formatter does it`, async () => {
      assert.equal((await run(['format', '-'], bytes)).out, bytes.toString('utf8'));
    });
  }

  it('has nothing stored for sheets that are gone', () => {
    const called = sheets.map(({ folder, name }) => `${folder}-${name.replace(/\.kft(\.md)?$/, '')}`);
    const odd = readdirSync(stored).filter(
      (file) => file !== styleFile && !called.includes(file.replace(/(\.report\.[\w.]+|\.txt|\.json)$/, '')),
    );
    assert.deepEqual(odd, []);
  });
});
