import assert from 'node:assert/strict';
import { compareReports, evaluateSheet, isSame, reportInput } from '../../src/core';
import { sheetOf } from './report-of';

const input = (cell: string) => reportInput(evaluateSheet(sheetOf('title: Bid', cell)));

const circuit = (size: string, length: string) => `run = ${length}
feeder = circuit
  load: 16 A
  kind: general
  continuous: no
  voltage: 240 V
  length: run
  conductor: ${size} Cu THHN
  ocpd: 20 A
  drop_limit: 3 %
check feeder.drop_percent <= 3 % "drop"`;

describe('two sheets compared', () => {
  it('differ in nothing when they are the same, whatever their lines', () => {
    assert.ok(isSame(compareReports(input(circuit('12 AWG', '85 ft')), input(`\n\n${circuit('12 AWG', '85 ft')}`))));
  });

  it('tell inputs, results, checks, findings and quantities apart', () => {
    const { inputs, results, checks, findings, takeoff } = compareReports(
      input(circuit('12 AWG', '85 ft')),
      input(circuit('12 AWG', '170 ft')),
    );
    assert.deepEqual(inputs, [{ name: 'run', before: '85 ft', after: '170 ft', percent: 100 }]);
    const drop = results.find(({ name }) => name === 'feeder.drop')!;
    assert.ok(Math.abs(drop.percent! - 100) < 1e-9); // The drop grows as the length does: U = I · R.
    assert.deepEqual(
      checks.map(({ name, before, after }) => [name, before?.split(':')[0], after?.split(':')[0]]),
      [['drop', 'yes', 'no']],
    );
    assert.deepEqual(findings.gone, []);
    assert.ok(findings.added.some(({ code }) => code === 'voltage-drop'));
    // Two conductors of 85 ft and of 170 ft, 5 % more to order, whole feet.
    assert.deepEqual(takeoff[0], { name: '12 AWG Cu', before: '179 ft', after: '357 ft', percent: (100 * 178) / 179 });
  });

  it('name what only one of them has', () => {
    const { results, takeoff } = compareReports(input('a = 2 * 3 V'), input(circuit('10 AWG', '20 ft')));
    assert.deepEqual(
      results.find(({ name }) => name === 'a'),
      { name: 'a', before: '6 V' },
    );
    assert.deepEqual(
      takeoff.find(({ name }) => name === '10 AWG Cu'),
      { name: '10 AWG Cu', after: '42 ft' },
    );
  });

  it('see a change below what is shown', () => {
    const { results } = compareReports(input('a = 1000000 V + 0.001 V'), input('a = 1000000 V + 0.002 V'));
    assert.deepEqual(
      results.map(({ name }) => name),
      ['a'],
    );
  });
});
