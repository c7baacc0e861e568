import assert from 'node:assert/strict';
import { explain, hoverAt } from '../../src/core';
import { cells } from './marked-cells';

function hover(...texts: string[]): string {
  const { session, cell, offset } = cells(...texts);
  return hoverAt(session, cell, offset)?.markdown ?? '';
}

/** The rows of the tables in a page, their cells without markup. */
const rowsOf = (page: string): string[] =>
  page
    .split('\n')
    .filter((line) => line.startsWith('|') && !line.includes(':--'))
    .map((line) =>
      line
        .replaceAll('\u00a0', '')
        .replaceAll('**', '')
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim())
        .join(' | '),
    );

describe('hover on a conductor', () => {
  // Figures from the public reproductions that the tables name: NEC (NFPA 70) 2023, Chapter 9 Tables 8 and 9, Table
  // 310.16. At 20 °C by the note to Table 8: R × (1 + 0.00323 × (20 − 75)), so 1.98 → 1.628 and 1.93 → 1.587.
  it('gives the resistance of each make, the impedance in each raceway, the ampacity and the next sizes', () => {
    assert.deepEqual(rowsOf(hover('c = 12 AWG C¦u THHN')), [
      ' | at 75 °C | at 20 °C',
      'stranded, uncoated | 1.98 Ω/kft · 6.5 Ω/km | 1.63 Ω/kft · 5.34 Ω/km',
      'stranded, coated | 2.05 Ω/kft · 6.73 Ω/km | 1.69 Ω/kft · 5.53 Ω/km',
      'solid, uncoated | 1.93 Ω/kft · 6.34 Ω/km | 1.59 Ω/kft · 5.21 Ω/km',
      'solid, coated | 2.01 Ω/kft · 6.57 Ω/km | 1.65 Ω/kft · 5.42 Ω/km',
      ' | in PVC | in aluminum | in steel',
      'R | 2 Ω/kft · 6.6 Ω/km | 2 Ω/kft · 6.6 Ω/km | 2 Ω/kft · 6.6 Ω/km',
      'X | 0.054 Ω/kft · 0.177 Ω/km | 0.054 Ω/kft · 0.177 Ω/km | 0.068 Ω/kft · 0.223 Ω/km',
      'Z at power factor 0.85 | 1.7 Ω/kft · 5.6 Ω/km | 1.7 Ω/kft · 5.6 Ω/km | 1.7 Ω/kft · 5.6 Ω/km',
      'Cu | 60 °C | 75 °C | 90 °C | DC at 75 °C',
      '14 AWG (next down) | 15 A | 20 A | 25 A | 3.14 Ω/kft',
      '12 AWG | 20 A | 25 A | 30 A | 1.98 Ω/kft',
      '10 AWG (next up) | 30 A | 35 A | 40 A | 1.24 Ω/kft',
    ]);
  });

  it('names standard, edition and table beside each part', () => {
    const page = hover('c = 12 AWG C¦u THHN').replaceAll('\\', '');
    for (const part of [
      'DC resistance · NEC (NFPA 70) 2023, Chapter 9 Table 8',
      'at 75 °C and 60 Hz · NEC (NFPA 70) 2023, Chapter 9 Table 9',
      'Ampacity · NEC (NFPA 70) 2023, Table 310.16',
      '6530 cmil · 3.31 mm², 7 strands, 0.092 in across (NEC (NFPA 70) 2023, Chapter 9 Table 8)',
      '0.0133 in² (NEC (NFPA 70) 2023, Chapter 9 Table 5)',
      'at most 20 A',
    ]) {
      assert.ok(page.includes(part), part);
    }
  });

  it('is the same in a line, a form, a call, a schedule, a line with an error, and on the command line', () => {
    const page = hover('c = 12 AWG ¦Cu');
    assert.equal(hover('k = circuit\n  load: 3 A\n  conductor: 12 AWG ¦Cu'), page);
    assert.equal(hover('x = resistance(12 ¦AWG Cu, 30 ft)'), page);
    assert.equal(hover('p = schedule\n  | tag | conductor |\n  | --- | --- |\n  | P1 | 12 AWG ¦Cu |'), page);
    assert.equal(hover('x = resistance(12 AWG ¦Cu, unheard) + 3 V'), page);
    const explained = explain('12 AWG Cu');
    assert.deepEqual(explained, { page: `# 12 AWG Cu\n\n${page}\n` });
  });

  it('follows a name or a field that stands for a conductor', () => {
    const page = hover('c = 10 AWG Cu ¦THHN');
    assert.ok(hover('c = 10 AWG Cu THHN\nx = resistance(¦c, 3 ft)').endsWith(page));
    const circuit = 'k = circuit\n  load: 3 A\n  voltage: 120 V\n  conductor: 10 AWG Cu THHN\n  kind: general\n';
    assert.ok(hover(`${circuit}x = resistance(k.cond¦uctor, 3 ft)`).endsWith(page));
  });

  // IEC 60228:2004 Table 2, class 2, plain copper: 7.41 Ω/km for 2.5 mm², 4.61 for 4 mm², 12.1 for 1.5 mm².
  it('knows sizes in mm² by their own standard, at 20 °C as printed', () => {
    const page = hover('c = 2.5 mm² C¦u stranded');
    assert.match(page, /IEC 60228 2004, Table 2/);
    const rows = rowsOf(page);
    assert.ok(rows.includes('stranded, uncoated | 2.75 Ω/kft · 9.01 Ω/km | 2.26 Ω/kft · 7.41 Ω/km'));
    assert.ok(rows.includes('1.5 mm² (next down) | 12.1 Ω/km') && rows.includes('4 mm² (next up) | 4.61 Ω/km'));
  });

  it('sets no maths and no markup of its own', () => {
    for (const text of ['c = 12 AWG ¦Cu THHN', 'c = 1/0 AWG A¦l', 'c = 24 AWG C¦u solid', 'c = 2000 kcmil C¦u']) {
      assert.doesNotMatch(hover(text), /\$|<[a-z]/);
    }
  });

  it('has nothing to tell of a conductor that the tables do not have', () => {
    assert.equal(hover('c = 13 AWG C¦u'), '');
    assert.equal(hover('c = 12 AW¦G'), '');
  });
});
