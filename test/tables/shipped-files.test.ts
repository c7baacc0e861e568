import assert from 'node:assert/strict';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { createTables, defaultEdition, editionsAvailable, listTables, readTableFile } from '../../src/tables';
import { brokenPromises } from '../../src/tables/promises';
import { subjects } from '../../src/tables/subjects';
import { tableInForce } from '../../src/tables/table';

const folder = join(__dirname, '..', '..', 'src', 'tables');
const folders = readdirSync(folder).filter((name) => name !== 'lookups' && statSync(join(folder, name)).isDirectory());
const files = folders.flatMap((name) =>
  readdirSync(join(folder, name))
    .filter((file) => file.endsWith('.json'))
    .map((file) => join(name, file)),
);

describe('table files that ship', () => {
  it('stand in the folder of their subject, and every one is in use', () => {
    assert.deepEqual(folders.sort(), subjects.map(({ id }) => id).sort());
    const used = subjects.reduce((count, subject) => count + subject.files.length, 0);
    assert.equal(files.length, used);
    for (const subject of subjects) {
      for (const file of subject.files) {
        assert.equal(file.subject, subject.id);
      }
    }
  });

  for (const file of files) {
    it(`${file} meets the schema and the promises that a workspace's file must meet`, async () => {
      const result = await readTableFile(readFileSync(join(folder, file), 'utf8'), basename(file));
      const messages = 'diagnostics' in result ? result.diagnostics.map(({ message }) => message) : [];
      assert.deepEqual(messages, []);
    });
  }

  for (const edition of editionsAvailable()) {
    for (const subject of subjects) {
      it(`${subject.id} keeps its promises under ${edition}`, () => {
        const table = tableInForce(subject, edition, []);
        assert.deepEqual(
          brokenPromises(table).map(({ promise, rows, column, found }) => [promise, rows[0].key, column, found]),
          [],
        );
        if (subject.needed) {
          assert.ok(table.rows.length > 0);
        }
      });
    }
  }

  it('write each cell as a text, so that printed zeros survive', () => {
    for (const info of listTables()) {
      const odd = info.cells.flat().filter((cell) => cell !== null && typeof cell !== 'string');
      assert.deepEqual(odd, [], info.subject);
    }
  });

  it('hold one row a line', () => {
    for (const file of files) {
      const text = readFileSync(join(folder, file), 'utf8');
      const rows = (JSON.parse(text) as { rows: unknown[] }).rows;
      assert.equal(text.split('\n').filter((line) => line.startsWith('    [')).length, rows.length, file);
    }
  });
});

describe('editions', () => {
  it('are those for which every needed table is here', () => {
    assert.deepEqual(editionsAvailable(), ['NEC 2017', 'NEC 2020', 'NEC 2023']);
    assert.ok(editionsAvailable().includes(defaultEdition));
  });

  it('may be named in the ways people name them', () => {
    for (const edition of ['NEC 2020', 'nec2020', '2020', 'NFPA 70-2020', ' NFPA 70 2020 ']) {
      const tables = createTables({ edition });
      assert.ok(!('problem' in tables), edition);
      assert.equal(tables.edition, 'NEC 2020');
    }
  });

  it('that are not here are refused with the list of those that are', () => {
    const tables = createTables({ edition: 'NEC 2008' });
    assert.ok('problem' in tables);
    assert.match(tables.problem, /no tables for NEC 2008.*NEC 2017, NEC 2020, NEC 2023/);
    assert.ok('problem' in createTables({ edition: '' }));
  });
});
