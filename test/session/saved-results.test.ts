import assert from 'node:assert/strict';
import { evaluateSheet, readSheet, SheetSession, savedEdits, writeResults } from '../../src/core';

const text = '# T\n\n```kft\nU = 240 V\n```\n\nText.\n\n```kft\nI = U / (12 Ω)\n```\n\n```kft\n// nothing\n```\n';

/** The texts that cells have after the edits. */
function edited(bytes: Uint8Array): string[] {
  const cells = readSheet(bytes).cells.map(({ kind, text: own }, index) => ({ id: String(index), kind, text: own }));
  const session = new SheetSession();
  session.update(cells);
  const texts = cells.map((cell) => cell.text);
  for (const { cell, prose, isNew } of savedEdits(cells, (index) => session.outputs(String(index))).reverse()) {
    texts.splice(cell + 1, isNew ? 0 : 1, prose);
  }
  return texts;
}

describe('results saved in the editor', () => {
  it('are the cells that the command line leaves in the file', () => {
    const bytes = new TextEncoder().encode(text);
    const written = writeResults(evaluateSheet(bytes))!;
    assert.deepEqual(
      edited(bytes),
      readSheet(written).cells.map((cell) => cell.text),
    );
    assert.deepEqual(
      edited(written),
      readSheet(written).cells.map((cell) => cell.text),
    ); // And then nothing is left to do.
  });

  it('are no part of a report, which shows the results themselves', () => {
    const written = writeResults(evaluateSheet(text))!;
    const prose = evaluateSheet(written).cells.flatMap((cell) => cell.prose?.markdown ?? []);
    assert.deepEqual(prose, ['# T', 'Text.', '']);
  });
});
