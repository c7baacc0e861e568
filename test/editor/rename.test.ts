import assert from 'node:assert/strict';
import { renamableAt, renameAt } from '../../src/core';
import { applyEdits } from '../../src/text';
import { fenced, linkedFiles } from './linked-files';
import { cells } from './marked-cells';

/** Renames what stands at `¦` in one of the files; the files that changed, or the reason for not doing it. */
function rename(files: Readonly<Record<string, string>>, newName: string): Record<string, string> | string {
  const { sheets, at } = linkedFiles(files);
  const result = renameAt(sheets, at, newName);
  if ('problem' in result) {
    return result.problem;
  }
  const changed: Record<string, string> = {};
  for (const { file, cells: own } of sheets) {
    const texts = own.map(({ id, text }) =>
      applyEdits(text, result.edits.find((edit) => edit.file === file && edit.cell === id)?.edits ?? []),
    );
    if (texts.some((text, i) => text !== own[i].text)) {
      changed[file] = texts.join('\n--\n');
    }
  }
  return changed;
}

describe('rename', () => {
  it('reaches every cell, forms, solves and live values of the prose, and nothing that is only spelled alike', () => {
    const sheet = [
      fenced('lo¦ad = 3 A // load'),
      'The load is `= load in A`, not `load`, nor `= other.load`.\n',
      fenced('k = circuit\n  load: load\n  voltage: 120 V\nx = k.design_current + load'),
    ].join('\n');
    assert.deepEqual(rename({ 'a.kft.md': sheet }, 'drawn'), {
      'a.kft.md': [
        'drawn = 3 A // load',
        'The load is `= drawn in A`, not `load`, nor `= other.load`.',
        'k = circuit\n  load: drawn\n  voltage: 120 V\nx = k.design_current + drawn',
      ].join('\n--\n'),
    });
  });

  it('follows a name to the sheet it is taken from and to all that take it', () => {
    const files = {
      'site/kiln.kft.md': fenced('element = 13.2 Ω'),
      'site/memo.kft.md': fenced('use ele¦ment from "kiln.kft.md"\nhalf = element / 2'),
      'offer.kft.md': `${fenced('use element from "site/memo.kft.md"')}\nIt is \`= element\`.\n`,
      'other.kft.md': fenced('element = 3 Ω'),
    };
    assert.deepEqual(rename(files, 'coil'), {
      'site/kiln.kft.md': 'coil = 13.2 Ω',
      'site/memo.kft.md': 'use coil from "kiln.kft.md"\nhalf = coil / 2',
      'offer.kft.md': 'use coil from "site/memo.kft.md"\n--\nIt is `= coil`.',
    });
  });

  it('renames a column of a schedule, its uses and its live values, and no name that is spelled alike', () => {
    const rows = '  | tag | lo¦ad | volts |\n  | --- | --- | --- |\n  | A | 2 kVA | 120 V |';
    const sheet = [
      fenced(`load = 7\np = schedule\n${rows}\n  amps = load / volts`),
      'All: `= sum(p.load)`, `= load`.\n',
      fenced('total = sum(p.load) * load'),
    ].join('\n');
    assert.deepEqual(rename({ 'a.kft.md': sheet }, 'power'), {
      'a.kft.md': [
        'load = 7\np = schedule\n  | tag | power | volts |\n  | --- | --- | --- |\n  | A | 2 kVA | 120 V |\n  amps = power / volts',
        'All: `= sum(p.power)`, `= load`.',
        'total = sum(p.power) * load',
      ].join('\n--\n'),
    });
    assert.match(String(rename({ 'a.kft.md': sheet }, 'volts')), /would mean something else/);
  });

  it('keeps a parameter inside its function', () => {
    assert.deepEqual(rename({ 'a.kft.md': fenced('r = 2\nf(r, i) = ¦r * i\nx = f(r, 3)') }, 'ohms'), {
      'a.kft.md': 'r = 2\nf(ohms, i) = ohms * i\nx = f(r, 3)',
    });
  });

  for (const name of ['2x', 'two words', 'if', 'yes', '', 'a.b', 'x = 3 //']) {
    it(`refuses ${JSON.stringify(name)}, which is no name`, () => {
      assert.match(String(rename({ 'a.kft.md': fenced('¦x = 3') }, name)), /cannot be a name/);
    });
  }

  it('refuses a name that is taken, here or in a sheet that it reaches', () => {
    assert.match(String(rename({ 'a.kft.md': fenced('¦x = 3\ny = 4') }, 'y')), /`y` is defined already/);
    const files = { 'a.kft.md': fenced('¦x = 3'), 'b.kft.md': fenced('use x from "a.kft.md"\ny = 4') };
    assert.match(String(rename(files, 'y')), /^b\.kft\.md: `y` is defined already/);
    assert.match(String(rename({ 'a.kft.md': fenced('¦x = 3') }, 'ampacity')), /is a function/);
  });

  it('refuses a name that a parameter or the word of a choice would hide', () => {
    assert.match(String(rename({ 'a.kft.md': fenced('¦x = 3\nf(i) = i * x') }, 'i')), /would mean something else/);
    const choice = fenced('¦kindly = 3\nr = resistance_at(3 Ω, from: 20 °C, to: 75 °C, material: kindly)');
    assert.match(String(rename({ 'a.kft.md': choice }, 'Cu')), /would mean something else|cannot be a name/);
  });

  it('refuses what the sheet does not define, and a name that is defined twice', () => {
    const problem = (text: string) => {
      const { session, cell, offset } = cells(text);
      const found = renamableAt(session, cell, offset);
      return 'problem' in found ? found.problem : found.name;
    };
    assert.match(problem('x = amp¦acity(12 AWG Cu THHN)'), /Only names that the sheet defines/);
    assert.match(problem('x = 3 ¦V'), /Only names that the sheet defines/);
    assert.match(problem('¦x = 3\nx = 4'), /defined more than once/);
    assert.equal(problem('x = 3\ny = x¦'), 'x');
  });
});
