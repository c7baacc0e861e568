import assert from 'node:assert/strict';
import { createProgram } from '../../src/language';
import { allowancesOf, cautionsFor, lint, lintPage, rules } from '../../src/lints';
import { findingsIn, library, programOf } from './lint-text';

const shed =
  'shed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 160 ft, conductor: 12 AWG Cu THHN)\n';
const codes = (findings: readonly { code: string }[]): string[] => findings.map(({ code }) => code);

describe('the lint runner', () => {
  it('finds what a name in another cell stands for', () => {
    const left = 'left = reading / rate in ft\n';
    assert.deepEqual(codes(findingsIn([left, 'reading = 0.48 Ω\n', 'rate = 1.98 Ω/kft\n'])), ['table-temperature']);
    assert.deepEqual(codes(findingsIn([left, 'reading = 4.8 V / 10 A\n', 'rate = 1.98 Ω/kft\n'])), []);
  });

  it('gives a lint another severity, or switches it off', () => {
    assert.equal(findingsIn([shed], { severities: { 'voltage-drop': 'warning' } })[0].severity, 'warning');
    assert.deepEqual(findingsIn([shed], { severities: { 'voltage-drop': 'off' } }), []);
  });

  it('does not call an allowance idle because its lint is switched off', () => {
    const allowed = `allow voltage-drop "lamps do not mind"\n${shed}`;
    assert.deepEqual(findingsIn([allowed], { severities: { 'voltage-drop': 'off' } }), []);
  });

  it('silences only the statement behind the allowance', () => {
    const second = shed.replace('shed', 'barn');
    const findings = findingsIn([`allow voltage-drop "lamps do not mind"\n${shed}${second}`]);
    assert.deepEqual(codes(findings), ['voltage-drop']);
    assert.ok(findings[0].span.start > shed.length);
  });

  it('puts a question about the sheet once, and again no more when its prose answers it', () => {
    const texts = [
      'a = heater(resistance: 25.6 Ω, voltage: 240 V)\n',
      'b = heater(resistance: 28.2 Ω, voltage: 240 V)\n',
    ];
    const program = programOf(...texts);
    assert.deepEqual([...lint(program, ['0', '1']).findings.keys()], ['0']);
    assert.deepEqual([...lint(program, ['1', '0']).findings.keys()], ['1']);
    const prose = ['Both elements were disconnected and proved dead.'];
    assert.deepEqual([...lint(program, ['0', '1'], { prose }).findings.keys()], []);
  });

  it('sees a name in live prose as used', () => {
    const program = programOf('run = 62 ft\ndrop = voltage_drop(12 AWG Cu, 10 A, 60 ft)\n');
    const codesWith = (prose: readonly string[]) => codes(lint(program, ['0'], { prose }).findings.get('0') ?? []);
    assert.deepEqual(codesWith([]), ['unused-name']);
    assert.deepEqual(codesWith(['The run is `run` long.']), ['unused-name']);
    assert.deepEqual(codesWith(['The run is `= run in m` long.']), []);
  });

  it('says nothing about a statement that has no result', () => {
    assert.deepEqual(findingsIn(['shed = circuit(load: missing, conductor: 12 AWG Cu THHN)\n']), []);
  });

  it('after an edit finds what a new program finds', () => {
    const program = createProgram(library);
    const texts = ['left = reading / rate in ft\n', 'reading = 0.48 Ω // four-wire\n', 'rate = 1.98 Ω/kft\n', shed];
    const steps = [
      texts,
      [texts[0], 'reading = 4.8 V / 10 A\n', texts[2], shed],
      [texts[0], texts[1], 'rate = 1.588 Ω/kft\n', shed],
      [texts[0], texts[1], texts[2], `\n${shed}`],
      ['unmarked = heater(resistance: reading, voltage: 24 V)\n', texts[1], texts[2], shed],
      ['unmarked = heater(resistance: reading, voltage: 24 V)\n', 'reading = 0.48 Ω\n', texts[2], shed],
    ];
    for (const step of steps) {
      const cells = step.map((text, i) => ({ id: String(i), text }));
      program.update(cells);
      const ids = cells.map(({ id }) => id);
      assert.deepEqual(lint(program, ids), lint(programOf(...step), ids));
    }
  });

  it('looks again only at statements that ran again', () => {
    const program = programOf(shed, 'a = 1\n');
    const first = lint(program, ['0', '1']).findings.get('0');
    program.update([
      { id: '0', text: shed },
      { id: '1', text: 'a = 2\n' },
    ]);
    assert.equal(lint(program, ['0', '1']).findings.get('0')?.[0], first?.[0]);
  });
});

describe('allowances', () => {
  it('are told with their reasons, for the page that prints them', () => {
    const program = programOf(
      `allow voltage-drop "lamps do not mind"\nallow continuous-load "an hour at most"\n${shed}`,
    );
    assert.deepEqual(
      allowancesOf(program, ['0']).map(({ lint: id, reason, index, target }) => [id, reason, index, target]),
      [
        ['voltage-drop', 'lamps do not mind', 0, 2],
        ['continuous-load', 'an hour at most', 1, 2],
      ],
    );
  });
});

describe('cautions', () => {
  const ids = (...texts: readonly string[]) =>
    cautionsFor(
      programOf(...texts),
      texts.map((_, i) => String(i)),
    ).map(({ id }) => id);

  it('ohm readings ask for a dead circuit', () => {
    assert.deepEqual(ids('element = 13.2 Ω\n'), ['ohms-on-dead-circuit', 'readings-are-limited']);
    assert.deepEqual(ids('rate = 1.98 Ω/kft\n'), []);
  });

  it('sizing names the edition and who decides, once a sheet', () => {
    const texts = [shed, shed.replace('shed', 'barn')];
    assert.deepEqual(ids(...texts), ['aid-only']);
    assert.match(cautionsFor(programOf(...texts), ['0', '1'])[0].text, /NEC 2023/);
  });

  it('readings on live parts speak of people, meters and leads', () => {
    const meter = 'clamp = meter(reading: 1.5 %, digits: 5)\n';
    assert.deepEqual(ids(`${meter}amps = 15.7 A by clamp\n`), ['live-readings', 'readings-are-limited']);
    assert.deepEqual(ids(`${meter}reel = 0.4 Ω by clamp\n`), ['ohms-on-dead-circuit', 'readings-are-limited']);
  });

  it('an open neutral comes first', () => {
    const program = programOf('a = 96 V\n');
    assert.deepEqual(
      cautionsFor(program, ['0'], new Set(['open-neutral'])).map(({ id }) => id),
      ['open-neutral'],
    );
  });

  it('circuits in a schedule count as circuits do', () => {
    const rows = '  | load | conductor     | voltage |\n  | --- | --- | --- |\n  | 30 A | 8 AWG Cu THHN | 240 V |\n';
    assert.deepEqual(ids(`panel = schedule\n${rows}`), ['aid-only']);
  });

  it('plain arithmetic has none', () => {
    assert.deepEqual(ids('a = 120 V * 3 A\n'), []);
  });
});

describe('lint pages', () => {
  it('number sections as the edition in force does', () => {
    const [rule] = rules.filter(({ id }) => id === 'continuous-load');
    assert.match(lintPage(rule, 'NEC 2023'), /NEC 2023 422\.13; 424\.4\(B\)/);
    assert.match(lintPage(rule, 'NEC 2017'), /NEC 2017 422\.13; 424\.3\(B\)/);
  });

  it('show every example and how to accept a finding', () => {
    for (const rule of rules) {
      const page = lintPage(rule, 'NEC 2023');
      assert.ok(page.startsWith(`# ${rule.id}\n`));
      for (const text of [...rule.examples.bad, ...rule.examples.good, ...rule.silent, rule.fix ?? 'None is offered']) {
        assert.ok(page.includes(text.trimEnd()), `${rule.id}: ${text}`);
      }
      assert.equal(page.includes(`allow ${rule.id} "`), rule.check !== undefined);
    }
  });
});
