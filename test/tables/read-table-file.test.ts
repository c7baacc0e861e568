import assert from 'node:assert/strict';
import fc from 'fast-check';
import { createTables, editionsAvailable, readTableFile, type TableFile } from '../../src/tables';
import { smallConductorLimits } from '../local-amendment';

const limits = smallConductorLimits([['12AWG', 'Cu', 15]]);

const path = 'tables/mill-creek.json';
const lines = (value: unknown) => JSON.stringify(value, null, 1);

async function read(value: unknown): Promise<TableFile> {
  const result = await readTableFile(lines(value), path);
  assert.ok('file' in result, 'diagnostics' in result ? result.diagnostics[0].message : '');
  return result.file;
}

/** Each problem as the text it stands at and its message. */
async function problems(text: string): Promise<[string, string][]> {
  const result = await readTableFile(text, path);
  assert.ok('diagnostics' in result);
  return result.diagnostics.map(({ span, message }) => [text.slice(span.start, span.end), message]);
}

describe("a workspace's table file", () => {
  it('takes the place of the rows it names, and of no others', async () => {
    const tables = createTables({ overrides: [await read(limits)] });
    assert.ok(!('problem' in tables));
    const found = tables.smallConductorLimit('12 AWG', 'Cu');
    assert.equal(found?.row.maxOcpd, 15);
    assert.equal(found?.source.file, path);
    assert.equal(found?.source.table, 'amendment 4');
    assert.equal(tables.smallConductorLimit('10 AWG', 'Cu')?.source.file, undefined);
    assert.equal(tables.ampacity('12 AWG')?.source.file, undefined);
  });

  it('says nothing under an edition it does not name', async () => {
    const tables = createTables({ edition: 'NEC 2020', overrides: [await read(limits)] });
    assert.ok(!('problem' in tables));
    assert.equal(tables.smallConductorLimit('12 AWG', 'Cu')?.row.maxOcpd, 20);
  });

  it('may add an edition that rests on one that is here', async () => {
    const file = await read({ ...limits, standard: 'Mill Creek', editions: ['2024'], base: 'NEC 2020' });
    assert.deepEqual(editionsAvailable([file]), ['Mill Creek 2024', 'NEC 2017', 'NEC 2020', 'NEC 2023']);
    const tables = createTables({ edition: 'Mill Creek 2024', overrides: [file] });
    assert.ok(!('problem' in tables));
    assert.equal(tables.edition, 'Mill Creek 2024');
    assert.equal(tables.smallConductorLimit('12 AWG', 'Cu')?.source.edition, '2024');
    assert.equal(tables.standardRatingAtLeast(9)?.row.rating, 15, 'the base is the 2020 edition');
    assert.equal(tables.standardRatingAtLeast(9)?.source.edition, '2020');
  });

  it('finds the place of a row that the table did not have', async () => {
    const ratings = { ...limits, subject: 'overcurrent-ratings', columns: ['rating', 'appliesTo'] };
    const tables = createTables({ overrides: [await read({ ...ratings, rows: [['55', 'breaker and fuse']] })] });
    assert.ok(!('problem' in tables));
    assert.equal(tables.standardRatingAtLeast(51)?.row.rating, 55);
    assert.equal(tables.standardRatingAtLeast(56)?.row.rating, 60);
  });
});

describe("a workspace's table file that is refused", () => {
  it('is no JSON: the place is where reading stopped', async () => {
    const text = '{ "subject": "ampacity", "editions": [2023 }';
    assert.deepEqual(await problems(text), [
      ['}', 'This is not valid JSON from here on. Look for a missing comma, quote or bracket.'],
    ]);
    assert.equal((await problems('')).length, 1);
    assert.equal((await problems('[1, 2')).length, 1);
  });

  it('has cells of the wrong kind: each is named by row and column', async () => {
    const rows = [
      ['12 AWG', 'Cu', 'twenty'],
      ['ten', 'Cu', '30'],
      ['14 AWG', 'brass', '15'],
      ['18 AWG', 'Cu', null],
      ['16 AWG', 'Cu', '4000'],
    ];
    assert.deepEqual(await problems(lines({ ...limits, rows })), [
      ['"twenty"', 'Row 1 (12 AWG), maxOcpd: "twenty" must be a plain number.'],
      ['"ten"', 'Row 2 (ten), size: "ten" must be a size such as 12 AWG, 250 kcmil or 2.5 mm².'],
      ['"brass"', 'Row 3 (14 AWG), material: "brass" must be one of Cu, Al, copper-clad aluminum.'],
      ['null', 'Row 4 (18 AWG), maxOcpd: this cell must hold a value.'],
      ['"4000"', 'Row 5 (16 AWG), maxOcpd: "4000" must lie from 1 to 100.'],
    ]);
  });

  it('has columns that the table does not know, or lacks some', async () => {
    const found = await problems(lines({ ...limits, columns: ['size', 'material', 'max'] }));
    assert.match(found[0][1], /"max" is no column of small-conductors\. Its columns are size, material, maxOcpd/);
    assert.match(found[1][1], /also needs the columns maxOcpd/);
  });

  it('has a row of another length, or one twice', async () => {
    const short = await problems(lines({ ...limits, rows: [['12 AWG', 'Cu']] }));
    assert.deepEqual(
      short.map(([, message]) => message),
      ['Row 1 has 2 cells for 3 columns.'],
    );
    const twice = await problems(
      lines({
        ...limits,
        rows: [
          ['12 AWG', 'Cu', 20],
          ['#12', 'Cu', 15],
        ],
      }),
    );
    assert.deepEqual(
      twice.map(([, message]) => message),
      ['Row 2 has the same key as row 1: 12 AWG Cu.'],
    );
  });

  it('has a field that is missing, unknown or of the wrong kind', async () => {
    const { provenance: _, ...without } = limits;
    const found = await problems(lines({ ...without, basis: 'rumour', colour: 'red' }));
    assert.deepEqual(found.map(([, message]) => message).sort(), [
      'basis must be "published" or "memory".',
      'colour: no field of a table file has this name. Remove it or mend the spelling.',
      'provenance must be a text in quotes.',
    ]);
  });

  it('names an edition, a base or a table that is not here', async () => {
    const edition = await problems(lines({ ...limits, editions: ['2008'] }));
    assert.match(edition[0][1], /NEC 2008 is no edition that is here.*Add "base"/);
    const base = await problems(lines({ ...limits, editions: ['2026'], base: 'NEC 1999' }));
    assert.match(base[0][1], /no tables for NEC 1999/);
    const subject = await problems(lines({ ...limits, subject: 'ampacities' }));
    assert.match(subject[0][1], /no table "ampacities".*ampacity/);
  });

  it('breaks a promise of the table it would stand in', async () => {
    const found = await problems(lines({ ...limits, rows: [['12 AWG', 'Cu', '35']] }));
    assert.deepEqual(found, [
      [
        '"35"',
        'Row 1 (12 AWG | Cu), maxOcpd: 30 after 35. The table promises that maxOcpd rises from row to row. Check the figures against the print.',
      ],
    ]);
  });

  it('reads JSON that is indented with tabs', async () => {
    const found = await problems(JSON.stringify({ ...limits, rows: [['12 AWG', 'Cu', 'x']] }, null, '\t'));
    assert.deepEqual(found, [['"x"', 'Row 1 (12 AWG), maxOcpd: "x" must be a plain number.']]);
  });

  it('never makes the reader throw, whatever the bytes', async () => {
    const cell = fc.oneof(fc.string(), fc.double(), fc.constant(null), fc.constantFrom('12 AWG', 'Cu', '20'));
    const fields = fc.record(
      {
        rows: fc.oneof(fc.array(fc.array(cell, { maxLength: 4 }), { maxLength: 3 }), fc.jsonValue()),
        columns: fc.oneof(fc.array(fc.string(), { maxLength: 3 }), fc.constant(['size', 'material', 'maxOcpd'])),
        table: fc.jsonValue(),
        otherSources: fc.jsonValue(),
      },
      { requiredKeys: [] },
    );
    const texts = fc.oneof(
      fc.string(),
      fc.json(),
      fields.map((changed) => JSON.stringify({ ...limits, ...changed })),
    );
    await fc.assert(
      fc.asyncProperty(texts, async (text) => {
        const result = await readTableFile(text, path);
        if ('diagnostics' in result) {
          assert.ok(result.diagnostics.length > 0);
          assert.ok(result.diagnostics.every(({ span }) => span.start >= 0 && span.end <= text.length));
        }
      }),
    );
  });
});
