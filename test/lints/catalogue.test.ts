import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { tradeFunctions } from '../../src/functions';
import { ruleById, rules } from '../../src/lints';
import { readCases } from './fixture-text';

const document = readFileSync(join(__dirname, '..', '..', 'docs', 'lint-catalogue.md'), 'utf8');
const rows = document
  .split('\n')
  .filter((line) => /^\| [DT]\d/.test(line))
  .map((line) => {
    const [row, fault, here, how] = line.slice(2, -2).split(' | ');
    return { row, fault, here, how };
  });
const inCode = (text: string): string[] => [...text.matchAll(/`([^`]+)`/g)].map(([, name]) => name);
const casesOf = (lint: string) => readCases(readFileSync(join(__dirname, 'fixtures', `${lint}.txt`), 'utf8'));

/** Forty faults, and sixteen contexts in which a device above the ampacity is allowed or not. */
const expected = [
  ...Array.from({ length: 40 }, (_, i) => `D${i + 1}`),
  ...Array.from({ length: 16 }, (_, i) => `T${i + 1}`),
];

describe('the catalogue of faults', () => {
  it('has every row once, in order', () => {
    assert.deepEqual(
      rows.map(({ row }) => row),
      expected,
    );
  });

  it('has a place for every lint', () => {
    const named = new Set(inCode(document));
    assert.deepEqual(
      rules.filter(({ id }) => !named.has(id)).map(({ id }) => id),
      [],
    );
  });

  for (const { row, fault, here, how } of rows) {
    it(`${row}, ${fault}: ${here}`, () => {
      const names = inCode(how);
      if (here === 'lint') {
        assert.ok(names.length > 0);
        for (const name of names) {
          assert.ok(ruleById.has(name), name);
        }
      } else if (here === 'silent') {
        const [lint] = names;
        const title = how.slice(how.indexOf(': ') + 2);
        const silent = casesOf(lint).filter(({ fires }) => !fires);
        assert.ok(
          silent.some((found) => found.title === title),
          `no silent case of ${lint}: ${title}`,
        );
      } else if (here === 'function') {
        assert.ok(
          tradeFunctions.some(({ name }) => names.includes(name)),
          how,
        );
      } else {
        assert.equal(here, 'reason');
        assert.match(how, /^[A-Z`].{40,}\.$/);
      }
    });
  }
});
