import assert from 'node:assert/strict';
import { referencesAcross } from '../../src/core';
import { fenced, linkedFiles } from './linked-files';

/** What stands at each place that the name at `¦` is found at, with a few signs behind it, by file. */
function references(files: Readonly<Record<string, string>>): Record<string, string[]> {
  const { sheets, at } = linkedFiles(files);
  const found: Record<string, string[]> = {};
  for (const { file, cell, spans } of referencesAcross(sheets, at)) {
    const text = sheets.find((sheet) => sheet.file === file)!.cells.find(({ id }) => id === cell)!.text;
    found[file] = [...(found[file] ?? []), ...spans.map(({ start, end }) => text.slice(start, end + 4))];
  }
  return found;
}

const inOne = (text: string): string[] | undefined => references({ 'a.kft.md': text })['a.kft.md'];

describe('references', () => {
  it('are the definition and each use, in every cell and in live values of the prose', () => {
    const text = `${fenced('run = 3 ft\nx = ru¦n * 2')}\nIt is \`= run in m\` long, not \`run\`.\n\n${fenced('y = run * 3')}`;
    assert.deepEqual(inOne(text), ['run = 3', 'run * 2', 'run in ', 'run * 3']);
  });

  it('of an unknown stand behind solve and in the equations', () => {
    const text = fenced(
      'supply = 207 V\nsolve current, run\n  supply == cur¦rent * 23 Ω\n  run == current * 5 ft / 1 A',
    );
    assert.deepEqual(inOne(text), ['current, ru', 'current * 2', 'current * 5']);
  });

  it('of a column are its heading and all that name it', () => {
    const rows = '  | tag | load | volts |\n  | --- | --- | --- |\n  | A | 2 kVA | 120 V |';
    const text = fenced(`p = schedule\n${rows}\n  amps = lo¦ad / volts\nx = p.load`);
    assert.deepEqual(inOne(text), ['load | v', 'load / v', 'load']);
  });

  it('follow a name to the sheet it is taken from and to all that take it', () => {
    const files = {
      'site/kiln.kft.md': `${fenced('element = 13.2 Ω')}\nIt has \`= element\`.\n`,
      'memo.kft.md': fenced('use element from "site/kiln.kft.md"\ny = ele¦ment * 2'),
      'other.kft.md': fenced('use element from "memo.kft.md"\nz = element / 2'),
      'apart.kft.md': fenced('element = 9 Ω\nz = element / 2'),
    };
    assert.deepEqual(references(files), {
      'memo.kft.md': ['element fro', 'element * 2'],
      'site/kiln.kft.md': ['element = 1', 'element`.'],
      'other.kft.md': ['element fro', 'element / 2'],
    });
  });

  it('of a parameter are those in its function alone', () => {
    const text = fenced('length = 3 ft\nf(length) = len¦gth * 2\ny = length');
    assert.deepEqual(inOne(text), ['length) = ', 'length * 2']);
  });

  it('are none of what no sheet defines', () => {
    assert.equal(inOne(fenced('x = sqr¦t(4)')), undefined);
  });
});
