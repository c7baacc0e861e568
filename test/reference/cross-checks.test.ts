import assert from 'node:assert/strict';
import { tradeFunctions } from '../../src/functions';
import { subjects } from '../../src/tables/subjects';
import { type Comparison, crossChecks } from './cross-checks';

const outside = ({ ours, low, high }: Comparison): boolean => !(ours >= low && ours <= high);

describe('cross-checks against independent formulas and tables', () => {
  it('each has a title of its own', () => {
    assert.equal(new Set(crossChecks.map(({ title }) => title)).size, crossChecks.length);
  });

  it('each names tables and functions that there are', () => {
    const ids = new Set(subjects.map(({ id }) => id));
    const names = new Set(tradeFunctions.map(({ name }) => name));
    assert.deepEqual(
      crossChecks.flatMap(({ tables = [] }) => tables.filter((id) => !ids.has(id))),
      [],
    );
    assert.deepEqual(
      crossChecks.flatMap(({ functions = [] }) => functions.filter((name) => !names.has(name))),
      [],
    );
  });

  for (const { title, formula, source, compare } of crossChecks) {
    it(`${title}: ${formula} (${source})`, () => {
      const comparisons = compare();
      assert.ok(comparisons.length > 1, 'hardly anything is compared');
      assert.deepEqual(
        comparisons.filter(outside).map(({ what, ours, low, high }) => `${what}: ${ours}, not in ${low} to ${high}`),
        [],
      );
    });
  }
});
