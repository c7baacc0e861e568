import assert from 'node:assert/strict';
import { completionsAt, namedValuesIn, nearbyWanted, pathInTree, SheetSession, wayInTree } from '../../src/core';
import { applyEdits } from '../../src/text';
import { cells } from './marked-cells';

const files = ['tables/far.kft.md', 'meters.kft.md', '../kiln.kft'];

/** What is asked of the files near the sheet, and the line as it reads when the first offer is taken. */
function offered(line: string, nearby: Parameters<typeof completionsAt>[3]) {
  const { session, cell, offset } = cells(line);
  const found = completionsAt(session, cell, offset, nearby);
  const [first] = found;
  return {
    wanted: nearbyWanted(session, cell, offset),
    labels: found.map(({ label }) => label),
    taken: first && applyEdits(line.replace('¦', ''), [{ span: first.replaces, newText: first.text }]),
  };
}

describe('completion of files', () => {
  it('offers the sheets near it in a `use`, those of its own folder first', () => {
    const { wanted, labels, taken } = offered('use pocket from "me¦', { files });
    assert.deepEqual(wanted, { what: 'sheet' });
    assert.deepEqual(labels, ['meters.kft.md', '../kiln.kft', 'tables/far.kft.md']);
    assert.equal(taken, 'use pocket from "meters.kft.md');
  });

  it('replaces the whole name where its closing mark is there', () => {
    assert.equal(
      offered('use pocket from "me¦ters.kft" // old', { files }).taken,
      'use pocket from "meters.kft.md" // old',
    );
  });

  it('offers files of rows in a `schedule`', () => {
    const { wanted, taken } = offered('panel = schedule "¦"', { files: ['loads.csv'] });
    assert.deepEqual(wanted, { what: 'table' });
    assert.equal(taken, 'panel = schedule "loads.csv"');
  });

  it('offers the names of the sheet that is named, without those that are taken', () => {
    const kiln = new TextEncoder().encode(
      '```kft\nelement = 11.9 Ω\nsupply = 208 V\nshed = heater(resistance: element, voltage: supply)\n```\n',
    );
    const names = namedValuesIn(kiln);
    const { wanted, labels, taken } = offered('use element, s¦ from "kiln.kft.md"', { names });
    assert.deepEqual(wanted, { namesIn: 'kiln.kft.md' });
    assert.deepEqual(labels, ['supply', 'shed']);
    assert.equal(taken, 'use element, supply from "kiln.kft.md"');
    assert.deepEqual(names[1], { name: 'supply', text: '208 V' });
    assert.match(names[2].text, /^current 17\.\d+ A, power /);
  });

  it('asks nothing of other files anywhere else', () => {
    for (const line of ['x = 3 ¦', 'check x > 3 "us¦', 'user = fr¦', 'use element ¦', '// use a from "¦']) {
      assert.equal(offered(line, {}).wanted, undefined, line);
    }
  });

  it('offers the fields of a record that is taken from another sheet', () => {
    const there = '```kft\nshed = heater(resistance: 12 Ω, voltage: 240 V)\n```\n';
    const session = new SheetSession({
      files: { path: 'here.kft.md', read: () => new TextEncoder().encode(there), tableFiles: () => [] },
    });
    const text = 'use shed from "there.kft.md"\nx = shed.po';
    session.update([{ id: 'c', kind: 'calculation', text }]);
    const labels = completionsAt(session, 'c', text.length).map(({ label }) => label);
    assert.ok(labels.includes('power'), labels.join(' '));
  });

  it('writes the way to a file so that it leads there', () => {
    for (const [path, from, way] of [
      ['meters.kft.md', 'kiln.kft.md', 'meters.kft.md'],
      ['a/b/meters.kft.md', 'a/kiln.kft.md', 'b/meters.kft.md'],
      ['a/meters.kft.md', 'a/b/c/kiln.kft.md', '../../meters.kft.md'],
      ['b/meters.kft.md', 'a/kiln.kft.md', '../b/meters.kft.md'],
    ]) {
      assert.equal(wayInTree(path, from), way);
      assert.deepEqual(pathInTree(way, from), { path });
    }
  });
});
