import assert from 'node:assert/strict';
import { parse } from 'csv-parse/sync';
import { readFont } from '../../src/cli/fonts';
import { writeReport } from '../../src/core';
import type { DataTable, ReportDocument } from '../../src/report';
import { entriesOf } from './archive';
import { reportOf, sheetOf } from './report-of';

/** What a spreadsheet may take for a formula. Source: OWASP, CSV Injection: = + - @ tab, carriage return, line feed. */
const starts = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];

const table: DataTable = {
  name: 'Results',
  columns: [{ title: '=name' }, { title: 'value', unit: 'V' }, { title: 'nothing' }],
  rows: [...starts.map((start) => [`${start}1+1|cmd`, -2.5, undefined]), ['plain', -1e-9, ''], ['-', 1e21, undefined]],
};
const document: ReportDocument = { ...reportOf(sheetOf('title: Any\ndate: 2026-11-12', 'a = 1 V')), data: [table] };

describe('a spreadsheet of a report', () => {
  it('as CSV: texts that begin like a formula get an apostrophe, headings too; numbers below nothing stay numbers', async () => {
    const text = new TextDecoder().decode(await writeReport(document, 'csv', { font: readFont }));
    const [, head, ...rows] = parse(text, { relax_column_count: true }) as string[][];
    assert.deepEqual(head, ["'=name", 'value (V)', 'nothing']);
    for (const [i, start] of starts.entries()) {
      assert.deepEqual(rows[i], [`'${start}1+1|cmd`, '-2.5', '']);
    }
    assert.deepEqual(rows.at(-2), ['plain', '-1e-9', '']);
    assert.deepEqual(rows.at(-1), ["'-", '1e+21', '']);
    assert.equal(Number(rows[0][1]), -2.5);
  });

  it('as a workbook: every text is stored as a text, every number as a number, and there is no formula', async () => {
    const entries = entriesOf(await writeReport(document, 'xlsx', { font: readFont }));
    const sheet = entries.get('xl/worksheets/sheet1.xml')!.text;
    assert.doesNotMatch(sheet, /<f[ >]/);
    const cells = [...sheet.matchAll(/<c r="([A-Z]+)(\d+)"([^>]*)>(?:<v>([^<]*)<\/v>)?/g)];
    for (const [, column, row, attributes, value] of cells) {
      const isNumber = column === 'B' && row !== '1';
      assert.equal(/ t="s"/.test(attributes), !isNumber, `${column}${row}`);
      assert.ok(!isNumber || Number.isFinite(Number(value)));
    }
    assert.ok(cells.some(([, , , , value]) => value === '-2.5'));
    assert.match(entries.get('xl/sharedStrings.xml')!.text, />=1\+1\|cmd</);
  });

  it('names units in headings only, and says each figure of a negative value as a number', async () => {
    const cold = reportOf(sheetOf('title: Cold', 'swing = 10 °C - 25 °C\nback = -(3 V)'));
    const results = cold.data.find(({ name }) => name === 'Results')!;
    const back = results.rows.find(([name]) => name === 'back')!;
    assert.deepEqual(back.slice(0, 3), ['back', -3, 'V']);
    const text = new TextDecoder().decode(await writeReport(cold, 'csv', { font: readFont }));
    const row = (parse(text, { relax_column_count: true }) as string[][]).find(([name]) => name === 'back')!;
    assert.deepEqual(row.slice(1, 3), ['-3', 'V']);
    assert.match(row.at(-1)!, /^'[-−]3 V$|^−3 V$/); // As shown: with a sign of its own, or an apostrophe before it.
  });
});
