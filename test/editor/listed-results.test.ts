import assert from 'node:assert/strict';
import { checksOf, copied, valuesOf } from '../../src/core';
import { cells } from './marked-cells';

const text =
  'input run = 85 ft from 5 ft to 400 ft\nread = 12 Ω ± 0.06 Ω\nU = 240 V\nI = U / read\n' +
  'lost = gone + 1 A\nk = circuit\n  load: 10 A\n  voltage: 120 V\n  length: run\n  material: Cu\n' +
  'check I <= 30 A "breaker holds"\ncheck I <= 20 A "just so"\ncheck I >= 30 A\ncheck lost > 1 A "lost"';

describe('the list of values', () => {
  it('tells each with its unit and where it comes from, and why one is not there', () => {
    const { session } = cells(text);
    const listed = valuesOf(session, '0').map(({ name, text, origin, isThere }) => [name, text, origin, isThere]);
    assert.deepEqual(
      listed.filter(([name]) => name !== 'bench'),
      [
        ['run', '85 ft', 'input', true],
        ['read', '12.000 Ω ± 0.057 Ω', 'measured', true],
        ['U', '240 V', 'given', true],
        ['I', '20.000 A ± 0.095 A', 'computed', true],
        ['lost', 'no value: its line has an error', 'computed', false],
        ['k', '', 'computed', true],
      ],
    );
    const k = valuesOf(session, '0').find(({ name }) => name === 'k');
    assert.ok(k?.fields.some(({ name, text: shown }) => name === 'ocpd' && /A/.test(shown)));
  });
});

describe('the list of checks', () => {
  it('tells each verdict by sign and word, with what settles it', () => {
    const { session } = cells(text);
    const checks = checksOf(session, '0');
    assert.deepEqual(
      checks.map(({ label, words, verdict, isEvaluated }) => [label, words, verdict, isEvaluated]),
      [
        ['breaker holds', '✔ yes', 'yes', true],
        ['just so', '? cannot tell', 'cannot tell', true],
        ['I >= 30 A', '✘ no', 'no', true],
        ['lost', '? cannot tell, because of an error', 'cannot tell', false],
      ],
    );
    assert.match(checks[1].detail(), /most of the doubt comes from `12 Ω ± 0.06 Ω`/);
    assert.match(checks[2].detail(), /missed by 10 A/);
    assert.match(checks[3].detail(), /needs lost, which has no value because of an error/);
  });
});

describe('a copied result', () => {
  it('comes in each form', () => {
    const { session } = cells('U = 240 V\nI = U / (12 Ω)\ncheck I <= 30 A "=holds & fits"');
    const results = session.results('0');
    assert.match(copied(results, 'text'), /I = U \/ 12 Ω = 240 V \/ 12 Ω = 20 A\n✔ yes {2}=holds & fits/);
    assert.match(copied(results, 'markdown'), /\$\\displaystyle .*20/);
    assert.match(copied(results, 'latex'), /\\\[ .*20.*\\\]\n.*=holds \}\\&\\text\{ fits: \}/);
    assert.equal(copied(results, 'table'), "U\t240\tV\nI\t20\tA\n'=holds & fits\t✔ yes\n");
  });

  // Of a reading that may lie anywhere within its limits, 95 % lie within 0.95 of them.
  it('is a table of numbers with their bounds, and of a schedule its rows', () => {
    const { session } = cells(
      'R = 12 Ω ± 0.5 Ω\npanel = schedule\n  | tag | load |\n  | --- | --- |\n  | P1 | 9.2 kVA |\n  | P2 | 1.5 kVA |',
    );
    const [reading, panel] = session.results('0');
    assert.equal(copied([reading], 'table'), 'R\t12\tΩ\tfrom\t11.525\tto\t12.475\n');
    assert.equal(copied([panel], 'table'), 'panel\ntag\tload (kVA)\nP1\t9.2\nP2\t1.5\nTotal\t10.7\n');
    assert.match(copied([panel], 'latex'), /\\begin\{array\}\{lr\}\n.*\\hline\n/s);
  });
});
