import assert from 'node:assert/strict';
import { definitionAt, SheetSession } from '../../src/core';

describe('the definition of a name that is taken from another sheet', () => {
  /** A session beside sheets of one cell each, with the cursor at `¦`. */
  function place(marked: string, others: Readonly<Record<string, string>>) {
    const encoded = new Map(
      Object.entries(others).map(([path, text]) => [
        path,
        new TextEncoder().encode(`# T\n\n\`\`\`kft\n${text}\n\`\`\`\n`),
      ]),
    );
    const session = new SheetSession({
      files: {
        path: 'site/memo.kft.md',
        read: (path) => encoded.get(path) ?? { problem: 'is not there.' },
        tableFiles: () => [],
      },
    });
    session.update([{ id: 'own', kind: 'calculation', text: marked.replace('¦', '') }]);
    return definitionAt(session, 'own', marked.indexOf('¦'));
  }

  it('is where it gets its value, by whichever way it comes', () => {
    const others = { 'a.kft.md': 'x = 1\nload = 3 A', 'site/b.kft.md': 'use load from "../a.kft.md"' };
    const there = [{ file: 'a.kft.md', cell: '1', span: { start: 6, end: 10 } }];
    assert.deepEqual(place('use load from "b.kft.md"\ny = lo¦ad', others), there);
    assert.deepEqual(place('use x, lo¦ad from "../a.kft.md"', others), there);
  });

  it('is the line that takes it when the other sheet is not there', () => {
    assert.deepEqual(place('use load from "gone.kft.md"\ny = lo¦ad', {}), [
      { cell: 'own', span: { start: 4, end: 8 } },
    ]);
  });
});
