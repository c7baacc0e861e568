import assert from 'node:assert/strict';
import fc from 'fast-check';
import { casesAtOnce, evaluateSheet, SheetCases, setInputs } from '../../src/core';
import { fromBase } from '../../src/units';

const sheet = (cell: string) => new TextEncoder().encode(`\`\`\`kft\n${cell}\n\`\`\`\n`);

function open(cell: string, ...header: string[]): SheetCases {
  const cases = SheetCases.open(sheet(cell), header);
  assert.ok(cases instanceof SheetCases, 'problem' in cases ? cases.problem : '');
  return cases;
}

const arithmetic = `
input run = 85 ft from 5 ft to 400 ft "one way"
input amps = 16 A
r = 1.24 Ω/kft
drop = 2 * amps * r * run
share = drop / (240 V) in %
root = sqrt(amps / (1 A))
high = share > 3 %
check share <= 3 % "drop"
`;

describe('cases', () => {
  it('name each result with its unit, in order of place, and keep the inputs as they were given', () => {
    const cases = open(arithmetic, 'amps', 'run (m)');
    assert.deepEqual(cases.header, ['amps', 'run (m)', 'r (Ω/kft)', 'drop (V)', 'share (%)', 'root', 'high']);
    const [{ cells, problems }] = cases.run([[' 16 A', '30.48 ']]);
    // 2 × 16 A × 1.24 Ω/kft × 100 ft = 3.968 V
    assert.deepEqual(cells.slice(0, 3), ['16 A', '30.48', 1.24]);
    assert.ok(Math.abs((cells[3] as number) - 3.968) < 1e-12);
    assert.deepEqual(cells.slice(5), [4, 'no']);
    assert.deepEqual(problems, []);
  });

  it('give many at once what each gives by itself, and what a sheet with that input gives', () => {
    const number = fc.double({ min: -500, max: 500, noNaN: true }).map(String);
    const row = fc.tuple(fc.oneof(number, fc.constantFrom('', '85 ft', '3 A', 'x', '20 m')), number);
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
        const together = open(arithmetic, 'run', 'amps').run(rows);
        const alone = rows.map((one) => open(arithmetic, 'run', 'amps').run([one])[0]);
        assert.deepEqual(together, alone);
        for (const [i, [run, amps]] of rows.entries()) {
          const inputs = new Map([
            ['run', run],
            ['amps', amps],
          ]);
          const { bytes, problems } = setInputs(sheet(arithmetic), inputs);
          if (problems.size === 0) {
            const { values, ok } = evaluateSheet(bytes);
            const drop = values.get('drop');
            const found = together[i].cells[3];
            if (drop?.kind === 'quantity') {
              const expected = fromBase(drop.base, drop.unit);
              assert.ok(Math.abs((found as number) - expected) <= 1e-14 * Math.abs(expected), `${found}`);
            } else {
              assert.equal(found, '');
            }
            assert.equal(together[i].problems.length === 0, ok);
          } else {
            assert.equal(together[i].cells[3], '');
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('run more of them than go at once', () => {
    const rows = Array.from({ length: 2 * casesAtOnce + 7 }, (_, i) => [String(5 + (i % 300)), '1']);
    const outcomes = open(arithmetic, 'run', 'amps').run(rows);
    assert.equal(outcomes.length, rows.length);
    for (const [i, { cells }] of outcomes.entries()) {
      assert.ok(Math.abs((cells[3] as number) - (2 * 1.24 * (5 + (i % 300))) / 1000) < 1e-12);
    }
  });

  it('run functions, conductors and branches case by case, with what the lints find wrong', () => {
    const cases = open(
      `input wire = 10 AWG Cu THHN
input amps = 16 A
input site = "north"
c = circuit
  load: amps
  voltage: 208 V
  length: 62 ft
  kind: general
  continuous: no
  conductor: wire
  ocpd: 40 A
note = if amps > 20 A then "heavy" else "light"`,
      'wire',
      'amps',
      'site',
    );
    const column = (name: string) => cases.header.indexOf(name);
    const [heavy, light, bad] = cases.run([
      ['8 AWG Cu THHN', '35', 'south hall'],
      ['14 AWG Cu THHN', '9', 'x'],
      ['8 AWG', '9', 'x'],
    ]);
    assert.equal(heavy.cells[column('c.conductor')], '8 AWG Cu THHN');
    assert.equal(heavy.cells[column('note')], 'heavy');
    assert.deepEqual(heavy.problems, []);
    assert.equal(light.cells[column('note')], 'light');
    assert.match(light.problems.join(), /15 A/); // 240.4(D): 14 AWG copper on 40 A
    assert.match(bad.problems.join(), /names no metal/);
  });

  it('take a reading by a meter of the sheet, and go on with the others as before', () => {
    const cases = open('input supply = 208 V\npocket = meter(range: 2 V)\np = supply * 2 A\ncheck p > 415 W', 'supply');
    const outcomes = cases.run([['210'], ['208 V by pocket'], ['210']]);
    assert.deepEqual(
      outcomes.map(({ cells, problems }) => [cells[1], problems.length]),
      [
        [420, 0],
        [416, 1],
        [420, 0],
      ],
    );
    assert.match(outcomes[1].problems[0], /cannot tell/);
  });

  for (const [what, header, message] of [
    ['a name that is no input', ['runs'], /`runs` is no input of the sheet\. Did you mean `run`\?/],
    ['a result', ['drop'], /`drop` is no input of the sheet\. Inputs are: run, amps\./],
    ['an input twice', ['run', 'run (m)'], /stands there twice/],
    ['a unit that is none', ['run (furlongs)'], /furlongs/],
    ['a unit of another kind', ['run (A)'], /`run` is a length \(ft\) and cannot be given in A\./],
  ] as const) {
    it(`refuse ${what}`, () => {
      const cases = SheetCases.open(sheet(arithmetic), header);
      assert.ok(!(cases instanceof SheetCases));
      assert.match(cases.problem, message);
    });
  }
});
