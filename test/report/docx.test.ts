import assert from 'node:assert/strict';
import { documentText, entriesOf } from './archive';
import { bytesOf, sheetOf } from './report-of';

const sheet = sheetOf(
  'title: Hall 5 & 6\ndate: 2026-11-12\nrevision: B\nprepared_by: Office',
  'supply = 207.6 V\nelement = 11.9 Ω ± 0.1 Ω\ncurrent = supply / element\nroot = sqrt(3) * current^2\ncheck current <= 20 A "carries it"',
  '# Hall 5 & 6\n\n1. first\n2. second\n\n| a | b |\n| - | -: |\n| x | 1 |',
);

describe('DOCX', () => {
  it('holds styles, repeated table heads, page numbers and equations that can be edited', async () => {
    const entries = entriesOf(await bytesOf(sheet, 'docx'));
    const xml = entries.get('word/document.xml')!.text;
    assert.match(xml, /<w:pStyle w:val="Title"\/>/);
    assert.match(xml, /<w:pStyle w:val="Heading1"\/>/);
    assert.match(xml, /<w:tblHeader\/>/);
    assert.match(xml, /<m:oMath>.*<m:f>.*<m:num>.*supply.*<m:den>.*element/);
    assert.match(xml, /<m:rad>/);
    assert.match(xml, /<m:sSup>/);
    assert.doesNotMatch(xml, /<m:r>\s*<m:t><\/m:t>/);
    const footer = [...entries].find(([name]) => name.startsWith('word/footer'))![1].text;
    assert.match(footer, /PAGE/);
    assert.match(footer, /NUMPAGES/);
    assert.match(footer, /revision B · 2026-11-12/);
  });

  it('is stamped with the sheet’s own date in every place, and names title, author and language', async () => {
    const entries = entriesOf(await bytesOf(sheet, 'docx'));
    assert.deepEqual([...new Set([...entries.values()].map(({ date }) => date))], ['2026-11-12']);
    const core = entries.get('docProps/core.xml')!.text;
    assert.match(core, /<dc:title>Hall 5 &amp; 6 – Calculation report<\/dc:title>/);
    assert.match(core, /<dc:creator>Office<\/dc:creator>/);
    assert.match(core, /created xsi:type="dcterms:W3CDTF">2026-11-12T00:00:00Z</);
    assert.match(entries.get('word/styles.xml')!.text, /<w:lang w:val="en-US"/);
  });

  it('begins no part of a long formula with its equals sign', async () => {
    const cell = 'a = 1 V\nlong_name_of_a_voltage = a + a + a + a + a + a + a + a + a + a\n';
    const xml = entriesOf(await bytesOf(sheetOf('title: Long', cell), 'docx')).get('word/document.xml')!.text;
    const formulas = [...xml.matchAll(/<m:oMath>([\s\S]*?)<\/m:oMath>/g)].map(([, one]) => documentText(one).trim());
    assert.ok(formulas.some((text) => text.startsWith('long_name_of_a_voltage=')));
    assert.deepEqual(
      formulas.filter((text) => text.startsWith('=')),
      [],
    );
  });

  it('says what the sheet says', async () => {
    const text = documentText(entriesOf(await bytesOf(sheet, 'docx')).get('word/document.xml')!.text);
    for (const wanted of [
      'Hall 5 & 6',
      'first',
      'carries it | ',
      '✔ yes',
      'What was not checked',
      'Prepared by | Office',
    ]) {
      assert.ok(text.includes(wanted), wanted);
    }
  });
});

describe('XLSX', () => {
  it('has a sheet a table, units in headings, numbers as numbers and texts as texts', async () => {
    const cell =
      'kiln = circuit\n  load: 17.4 A\n  kind: general\n  continuous: yes\n  voltage: 208 V\n  length: 62 ft\n  material: Cu\n  insulation: THHN\nodd = "=1+1"';
    const entries = entriesOf(await bytesOf(sheetOf('title: Kiln\ndate: 2026-11-12', cell), 'xlsx'));
    const book = entries.get('xl/workbook.xml')!.text;
    for (const name of ['Results', 'Circuits', 'Takeoff conductors', 'Takeoff devices']) {
      assert.ok(book.includes(`name="${name}"`), name);
    }
    const strings = entries.get('xl/sharedStrings.xml')!.text;
    assert.match(strings, /load \(A\)/);
    assert.match(strings, /one-way length \(ft\)/);
    assert.match(strings, />=1\+1</);
    const sheets = [...entries].filter(([name]) => name.startsWith('xl/worksheets/')).map(([, { text }]) => text);
    assert.ok(sheets.every((text) => !text.includes('<f>')));
    assert.ok(sheets.some((text) => /<v>17\.4<\/v>/.test(text)));
    assert.deepEqual([...new Set([...entries.values()].map(({ date }) => date))], ['2026-11-12']);
  });
});
