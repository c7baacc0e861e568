import assert from 'node:assert/strict';
import { reportShapes } from '../../src/notebook';
import { keyOf, labelOf, shapeOf } from '../../src/report';
import { reportOf, saying, section, sheetOf } from './report-of';

const circuit = `kiln = circuit
  load: 17.4 A
  continuous: yes
  kind: general
  voltage: 208 V
  length: 62 ft
  material: Cu
  insulation: THHN
check kiln.drop_percent <= 3 % "voltage drop"`;

describe('a report', () => {
  it('has the sections of a load memo, in their order, with what is not recorded told', () => {
    const document = reportOf(
      sheetOf('title: Hall\nreport: load memo', circuit, '# Hall\n\nA new kiln.', '## Conclusion\n\nIt fits.'),
    );
    assert.equal(document.kind, 'Load memo');
    assert.deepEqual(
      document.sections.map(({ title }) => title),
      ['Purpose', 'Basis', 'Calculations', 'Circuits', 'Checks', 'Findings', 'Assumptions', 'Conclusion'].concat([
        'What was not checked',
        'Cautions',
        'Sources',
        'Signatures',
      ]),
    );
    assert.match(saying(section(document, 'Purpose')), /A new kiln/);
    assert.match(saying(section(document, 'Conclusion')), /It fits/);
    assert.match(saying(section(document, 'What was not checked')), /Nothing is recorded under “Existing demand”/);
  });

  it('takes the sections of a service report from headings and front matter alike', () => {
    const front = 'report: service report\ncomplaint: "It trips at noon."\nsite: Workshop 4';
    const document = reportOf(
      sheetOf(front, 'R = 11.9 Ω ± 0.1 Ω', '# Kiln\n\n## Make-safe\n\nLocked out, proved dead.'),
    );
    assert.match(saying(section(document, 'Complaint')), /It trips at noon/);
    assert.match(saying(section(document, 'Make-safe record')), /proved dead/);
    assert.ok(document.fields.some(([label, text]) => label === 'Site' && text === 'Workshop 4'));
    assert.equal(document.title, 'Kiln');
    assert.match(saying(section(document, 'Readings')), /11.9 Ω.*stated limits.*± 0.1 Ω/);
    assert.match(saying(section(document, 'Cautions')), /locked out/);
  });

  it('states meter, limits, temperature and isolation of each reading', () => {
    const cell = `bench = meter(reading: 0.02 %, range: 0.005 Ω)
coil = 13.21 Ω by bench   // reel disconnected at both ends
left = conductor_length(coil, 12 AWG Cu stranded, temperature: 18 °C, leads: 0 Ω)`;
    const told = saying(section(reportOf(sheetOf('title: Reel', cell)), 'Readings'));
    for (const wanted of ['"coil"', '13.21 Ω', 'bench: ± (0.02 % + 0.005 Ω)', '± 0.0', '18 °C', '"yes"']) {
      assert.ok(told.includes(wanted), `${wanted} in ${told}`);
    }
  });

  it('exports a sheet with errors and says on top which values are missing and why', () => {
    const document = reportOf(sheetOf('title: Broken', 'a = 5 V + 2 A\nb = 2 * a\nc = 3 V\ncheck b <= 10 V "enough"'));
    const [banner] = document.banners;
    assert.equal(banner.tone, 'error');
    assert.equal(banner.items.length, 3);
    assert.match(banner.items[0], /^a \(line 8\): .*V.*A/);
    assert.match(banner.items[1], /^b \(line 9\): needs a, which has no value/);
    assert.match(banner.items[2], /^check “enough” \(line 11\): needs b/);
    assert.match(saying(section(document, 'Calculations')), /"c = 3 V"/);
    assert.match(saying(section(document, 'Checks')), /not evaluated/);
  });

  it('never rounds a failing check, or the figure behind it, into one that passes', () => {
    const cell = `feeder = circuit
  load: 20 A
  kind: general
  continuous: no
  voltage: 240 V
  length: 150.02 ft
  conductor: 10 AWG Cu THHN
  ocpd: 20 A
  drop_limit: 3.102 %
limit = 29.996 A
check 29.996001 A <= limit "close"`;
    const document = reportOf(sheetOf('title: Close', cell));
    const shown = saying(section(document, 'Checks'));
    assert.match(shown, /✘ no/);
    assert.match(shown, /29\.996001 A ≤ 29\.996 A/);
    assert.match(document.banners.map(({ title }) => title).join(), /A check fails/);
  });

  it('prints what was allowed with its reason, and the doubt that decides a check without an answer', () => {
    const cell = `pocket = meter(reading: 0.8 %, digits: 5)
coil = 0.4 Ω by pocket
left = conductor_length(coil, 12 AWG Cu stranded, temperature: 18 °C, leads: 0 Ω)
check left >= 200 ft "enough"
allow voltage-drop "short duty, agreed with the owner"
far = circuit
  load: 12 A
  kind: general
  continuous: no
  voltage: 120 V
  length: 240 ft
  conductor: 12 AWG Cu THHN
  ocpd: 20 A
  drop_limit: 3 %`;
    const document = reportOf(sheetOf('title: Far', cell));
    assert.match(saying(section(document, 'Findings')), /short duty, agreed with the owner/);
    assert.match(saying(section(document, 'Checks')), /0\.4 Ω by pocket/);
    assert.deepEqual(
      document.banners.map(({ title }) => title),
      ['The readings cannot decide'],
    );
  });

  it('keeps calculations in the order of the sheet, with its own headings', () => {
    const document = reportOf('# Two\n\n## First\n\n```kft\na = 1 V\n```\n\n## Second\n\n```kft\nb = 2 * a\n```\n');
    assert.match(saying(section(document, 'Calculations')), /First.*a = 1 V.*Second.*b = 2 × a = 2 × 1 V = 2 V/);
  });

  it('has a takeoff with waste: metal and size, devices, and the circuits that were counted', () => {
    const document = reportOf(sheetOf('report: circuit schedule\nwaste: 10 %', circuit));
    const takeoff = document.data.filter(({ name }) => name.startsWith('Takeoff'));
    // 62 ft one way: two conductors of 10 AWG copper and one 10 AWG equipment grounding conductor; 10 % more to order.
    assert.deepEqual(takeoff[0].rows, [
      ['10 AWG Cu', 124, 137],
      ['10 AWG Cu, equipment grounding', 62, 69],
    ]);
    assert.deepEqual(takeoff.at(-1)!.rows, [['25 A, 2 pole', 1]]);
    assert.match(saying(section(document, 'Takeoff')), /Of kiln\..*10 % for waste/);
  });

  it('says of a name below `takeoff:` that no circuit has it, beside what is counted and where nothing is', () => {
    const told = (names: string) =>
      saying(section(reportOf(sheetOf(`report: circuit schedule\ntakeoff: ${names}`, circuit)), 'Takeoff'));
    assert.match(told('kiln, klin'), /Of kiln\..*names .*"klin".*and no circuit is called so.*Correct the name/);
    assert.match(told('klin'), /names .*"klin".*and no circuit is called so/);
    assert.doesNotMatch(told('kiln'), /is called so/);
  });

  it('counts the rows of a schedule, and what they cost where the sheet has prices', () => {
    const cell = `panel = schedule
  | tag | load    | voltage | length | conductor      |
  | --- | ---     | ---     | ---    | ---            |
  | P1  | 9.2 kVA | 208 V   | 85 ft  | 6 AWG Cu THHN  |
  | P2  | 1.5 kVA | 120 V   | 60 ft  | 12 AWG Cu THHN |
  amps = load / voltage
price_6_AWG_Cu = 1.10 USD/ft`;
    const document = reportOf(sheetOf('report: circuit schedule\nwaste: 0', cell));
    const wire = document.data.find(({ name }) => name === 'Takeoff conductors')!;
    assert.deepEqual(wire.columns.at(-1), { title: 'cost', unit: 'USD' });
    const [six, twelve] = wire.rows;
    assert.deepEqual(six.slice(0, 3), ['6 AWG Cu', 170, 170]);
    assert.ok(Math.abs((six[3] as number) - 187) < 1e-9); // 170 ft at 1.10 USD
    assert.deepEqual(twelve, ['12 AWG Cu', 120, 120, undefined]);
    const told = saying(section(document, 'Takeoff'));
    assert.match(told, /Together 187\.00 USD/);
    assert.match(told, /Without a price, and so not in it: price_12_AWG_Cu/);
  });

  it('sets a schedule’s totals apart, shows every row, and aligns numbers', () => {
    const rows = Array.from({ length: 250 }, (_, i) => `  | C${i + 1} | ${i + 1} W |`).join('\n');
    const cell = `loads = schedule\n  | tag | load |\n  | --- | --- |\n${rows}`;
    const parts = section(reportOf(sheetOf('title: Long', cell)), 'Calculations')!.parts;
    const [group] = parts;
    assert.ok(group.kind === 'group' && group.parts[0].kind === 'table');
    const [table] = group.parts;
    assert.equal(table.rows.length, 250);
    assert.deepEqual(saying(table.totals).match(/31,?375/g)?.length, 1); // 250 · 251 / 2
    assert.equal(table.columns[1].align, 'right');
  });

  it('has a line to sign for the customer of a call and for the engineer of a memo', () => {
    const roles = (report: string) =>
      saying(section(reportOf(sheetOf(`title: Any\nreport: ${report}`, 'a = 1 V')), 'Signatures'));
    assert.match(roles('service report'), /Prepared by.*Checked by.*Received by the customer/);
    assert.match(roles('load memo'), /Prepared by.*Checked by.*Engineer of record/);
    assert.doesNotMatch(roles('circuit schedule'), /customer|Engineer/);
  });

  it('always cautions, and says what to do before work', () => {
    for (const cell of ['a = 1 V', 'R = 3 Ω']) {
      const told = saying(section(reportOf(sheetOf('title: Any', cell)), 'Cautions'));
      assert.match(told, /lock out and prove dead before work/);
      assert.match(told, /a licensed person decide/);
    }
  });
});

describe('a key of the front matter', () => {
  it('that is called as a section of the paper belongs to it', () => {
    for (const report of [undefined, ...reportShapes]) {
      for (const { title, heading } of shapeOf(report).sections) {
        assert.ok(!heading || heading.test(labelOf(keyOf(title))), title);
      }
    }
  });
});
