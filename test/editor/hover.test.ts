import assert from 'node:assert/strict';
import { completionsAt, definitionAt, hoverAt, SheetSession } from '../../src/core';

/** A session with one cell, and the offset of the `|` that its text holds. */
function cellAt(marked: string) {
  const offset = marked.indexOf('|');
  const session = new SheetSession();
  session.update([{ id: 'cell', kind: 'calculation', text: marked.replace('|', '') }]);
  return { session, offset };
}

function hover(marked: string): string {
  const { session, offset } = cellAt(marked);
  return (hoverAt(session, 'cell', offset)?.markdown ?? '').replaceAll('\u00a0', '');
}

describe('hover', () => {
  // NEC (NFPA 70) 2023, Chapter 9 Table 8 and Table 310.16, from the public reproductions the tables name.
  it('on a conductor gives its row, its neighbours and where they stand', () => {
    const page = hover('c = 12 AWG C|u THHN');
    assert.match(page, /\*\*stranded, uncoated\*\* \| \*\*1\.98 Ω\/kft · 6\.5 Ω\/km\*\*/);
    assert.match(page, /solid, uncoated \| 1\.93 Ω\/kft/);
    assert.match(page, /\*\*12 AWG\*\* \| 20 A \| 25 A \| \*\*30 A\*\*/);
    assert.match(page, /14 AWG \(next down\) \| 15 A \| 20 A \| 25 A/);
    assert.match(page, /10 AWG \(next up\) \| 30 A \| 35 A \| 40 A/);
    assert.match(page, /Chapter 9 Table 8/);
    assert.match(page, /Table 310\\?\.16/);
  });

  it('gives the resistance at 20 °C by the coefficient of Table 8, 0.00323 per °C from 75 °C', () => {
    // 1.98 × (1 + 0.00323 × (20 − 75)) = 1.628.
    assert.match(hover('c = 12 AWG C|u stranded'), /1\.63 Ω\/kft/);
  });

  it('has one resistance for a size of aluminum, which is not coated', () => {
    const page = hover('c = 4 AWG A|l');
    assert.match(page, /stranded/);
    assert.doesNotMatch(page, /coated/);
  });

  it('on the largest and the smallest size has no neighbour beyond', () => {
    assert.doesNotMatch(hover('c = 18 AWG C|u'), /next down/);
    assert.doesNotMatch(hover('c = 2000 kcmil C|u'), /next up/);
  });

  it('on a name gives its value, its line and how it came about', () => {
    const page = hover('supply = 208 V\nelement = 13 Ω\nflow = supply / element\npower = fl|ow * supply');
    assert.match(page, /\*\*flow\*\* = 16 A/);
    assert.match(page, /flow = supply \/ element/);
    assert.match(page, /208 V/);
  });

  it('on a name says where its value comes from', () => {
    assert.match(hover('input run = 85 ft from 5 ft to 400 ft "way"\nx = r|un'), /An input/);
    assert.match(hover('r = 13.2 Ω ± 0.1 Ω\nx = |r'), /Measured, with the limits/);
    assert.match(hover('run = 85 ft\nx = r|un'), /Given in the sheet/);
  });

  it('on a name without a value says which name is at fault', () => {
    const page = hover('a = 3 V + 2 A\nb = a * 2\nc = |b');
    assert.match(page, /has no value, because a has none/);
  });

  it('on a function gives its page, on a parameter what it takes', () => {
    assert.match(hover('x = ampac|ity(12 AWG Cu THHN)'), /ampacity/);
    assert.match(hover('x = sq|rt(4)'), /sqrt/);
    assert.match(hover('k = circuit\n  lo|ad: 3 A'), /\*\*load\*\* of `circuit`/);
    assert.match(hover('x = ampacity(12 AWG Cu THHN, amb|ient: 40 °C)'), /Left out: 30 °C/);
  });

  it('on a unit gives its name and its worth', () => {
    const page = hover('run = 2 k|ft');
    assert.match(page, /thousand feet/);
    assert.match(page, /304\.8 m/);
  });

  it('on a lint that is allowed gives its page', () => {
    const page = hover('allow voltage-d|rop "short run"\nx = 3');
    assert.match(page, /voltage\\?-drop/);
  });

  it('has nothing to tell of an empty line, a comment or a plain number', () => {
    assert.equal(hover('x = 3\n|\n// note'), '');
    assert.equal(hover('x = 3 // no|te'), '');
    assert.equal(hover('x = 4|2'), '');
  });
});

describe('completion', () => {
  const labels = (marked: string) => {
    const { session, offset } = cellAt(marked);
    return completionsAt(session, 'cell', offset).map(({ label }) => label);
  };

  it('offers names with their values before functions', () => {
    const { session, offset } = cellAt('supply = 208 V\nx = sup|');
    const [first] = completionsAt(session, 'cell', offset);
    assert.deepEqual([first.label, first.detail], ['supply', '208 V']);
    assert.ok(labels('x = |').includes('ampacity'));
  });

  it('tells what a function gives once: beside its name, and its signature and parameters on the page', () => {
    const { session, offset } = cellAt('x = amp|');
    const found = completionsAt(session, 'cell', offset).find(({ label }) => label === 'ampacity');
    assert.match(found?.detail ?? '', /^Current that one conductor may carry/);
    assert.match(found?.page ?? '', /^`ampacity\(conductor; /);
    assert.ok(!found?.page?.includes('Current that one conductor may carry'));
  });

  it('offers fields of a form that are not there yet', () => {
    const offered = labels('k = circuit\n  load: 3 A\n  |');
    assert.ok(offered.includes('voltage'));
    assert.ok(!offered.includes('load'));
  });

  it('offers the choices of a field, fields of a record, units and conductor words', () => {
    assert.ok(labels('k = circuit\n  kind: |').includes('space_heating'));
    assert.ok(labels('k = circuit\n  load: 3 A\n  voltage: 120 V\n  material: Cu\nx = k.|').includes('design_current'));
    assert.equal(labels('x = 3 |')[0], 'V');
    assert.deepEqual(labels('x = 12 AWG Cu |').includes('Cu'), false);
    assert.ok(labels('x = 12 AWG Cu |').includes('THHN'));
  });
});

describe('unknowns of a solve', () => {
  const text =
    'supply = 207 V\nsolve cur|rent, run in 1 ft .. 900 ft\n  supply == current * 23 Ω\n  run == current * 5 ft/A\n';

  it('are told with their value and how they were found, behind solve and in the equations', () => {
    for (const marked of [text, text.replace('|', '').replace('current *', 'cur|rent *')]) {
      const page = hover(marked);
      assert.match(page, /\*\*current\*\* = 9 A/);
      assert.match(page, /current = supply \/ 23 Ω = 207 V \/ 23 Ω = 9 A/);
    }
    assert.match(hover(text.replace('|', '').replace('run ==', 'ru|n ==')), /\*\*run\*\* = 45 ft/);
  });

  it('are offered with their values, and lead to where they stand behind solve', () => {
    const { session, offset } = cellAt(`${text.replace('|', '')}x = cur|`);
    const [first] = completionsAt(session, 'cell', offset);
    assert.deepEqual([first.label, first.detail], ['supply', '207 V']);
    const offered = completionsAt(session, 'cell', offset).map(({ label, detail }) => `${label} ${detail}`);
    assert.ok(offered.includes('current 9 A') && offered.includes('run 45 ft'));
    const used = cellAt(text.replace('|', '').replace('current *', 'cur|rent *'));
    assert.deepEqual(definitionAt(used.session, 'cell', used.offset), [{ cell: 'cell', span: { start: 21, end: 28 } }]);
  });

  it('do not hide what is written in the equations', () => {
    const page = hover('solve run in 1 ft .. 900 ft\n  resistance(12 AWG C|u stranded, run) == 0.1 Ω');
    assert.match(page, /1\.98 Ω\/kft/);
  });
});

describe('definition', () => {
  it('leads to the name', () => {
    const { session, offset } = cellAt('run = 3 ft\nx = ru|n * 2\ny = run');
    assert.deepEqual(definitionAt(session, 'cell', offset), [{ cell: 'cell', span: { start: 0, end: 3 } }]);
  });

  it('does not take a field for a name that is spelled like it', () => {
    const { session, offset } = cellAt('load = 3 A\nk = circuit\n  lo|ad: load');
    assert.deepEqual(definitionAt(session, 'cell', offset), []);
  });
});

describe('hover in a schedule', () => {
  const panel =
    'p = schedule\n  | tag | load | conductor |\n  | k1 | 3 A | 12 AWG Cu THHN |\n  | k2 | 4 A | 10 AWG Cu THHN |\n  twice = load * 2\nk1 = 5 V';
  /** The page at the place that `marked` has in the text, told by its `¦`. */
  const at = (marked: string): string => {
    const offset = panel.indexOf(marked.replace('¦', '')) + marked.indexOf('¦');
    const { session } = cellAt(`|${panel}`);
    return (hoverAt(session, 'cell', offset)?.markdown ?? '').replaceAll('\u00a0', '');
  };

  it('tells of a conductor in a cell as of one elsewhere', () => {
    assert.match(at('12 AWG C¦u'), /\*\*1\.98 Ω\/kft/);
  });

  it('tells what a column holds, at its heading and in a formula', () => {
    assert.match(at('lo¦ad'), /\*\*load\*\*, column of p: \\?\[3 A, 4 A\\?\]/);
    assert.match(at('= lo¦ad *'), /\*\*load\*\*, column of p/);
    assert.match(at('twi¦ce'), /\*\*twice\*\*, column of p: \\?\[6 A, 8 A\\?\]/);
  });

  it('takes a tag for a tag, though the sheet has that name', () => {
    assert.equal(at('| k¦1 |'), '');
  });

  it('tells of a schedule by its table', () => {
    assert.match(at('¦p ='), /schedule of 2 rows/);
  });

  it('offers the columns of a schedule behind its name', () => {
    const session = new SheetSession();
    const text = `${panel}\nx = sum(p.`;
    session.update([{ id: 'cell', kind: 'calculation', text }]);
    const offered = completionsAt(session, 'cell', text.length).map(({ label }) => label);
    assert.deepEqual(offered, ['tag', 'load', 'conductor', 'twice']);
  });
});
