import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { Value } from '../../../src/language';
import { programOf, shown, told, valueOf } from '../run-cells';

const panel = [
  'panel = schedule',
  '  | tag  | phase | load    | volts | beads      | spare |',
  '  | ---  | ---   | ---     | ---   | ---        | ---   |',
  '  | P1   | A     | 9.6 kVA | 240 V | 10 AWG red | no    |',
  '  | P2   | B     | 1.2 kVA | 120 V | 12 AWG red | yes   |',
  '  | LP-3 | A     | 2.4 kVA | 120 V | 10 AWG red | no    |',
  '  amps = load / volts',
  '  kilograms = weight(beads, count: amps / 1 A)',
  '  large = amps > 15 A or spare',
].join('\n');

const last = (...lines: readonly string[]): Value => valueOf([panel, ...lines].join('\n'));

/** The cells of one column, as text. */
const column = (value: Value, name: string): string[] => {
  assert.ok(value.kind === 'list');
  return value.items.map((row) => {
    assert.ok(row.kind === 'record');
    return shown(row.fields.get(name));
  });
};

describe('a schedule', () => {
  it('is a list of its rows, each with its cells and what its formulas come to', () => {
    const value = last();
    assert.deepEqual(column(value, 'tag'), ['P1', 'P2', 'LP-3']);
    assert.deepEqual(column(value, 'load'), ['9.6 kVA', '1.2 kVA', '2.4 kVA']);
    assert.deepEqual(column(value, 'amps'), ['40 A', '10 A', '20 A']);
    assert.deepEqual(column(value, 'beads'), ['10 AWG red', '12 AWG red', '10 AWG red']);
    assert.deepEqual(column(value, 'kilograms'), ['80 kg', '20 kg', '40 kg']);
    assert.deepEqual(column(value, 'large'), ['yes', 'yes', 'yes']);
  });

  it('gives its columns, for totals and choices', () => {
    assert.equal(shown(last('sum(panel.load)')), '13.2 kVA');
    assert.equal(shown(last('sum(panel.load where panel.phase == "A")')), '12 kVA');
    assert.equal(shown(last('count(panel.tag where panel.spare)')), '1');
    assert.equal(shown(last('max(panel.amps where not panel.spare)')), '40 A');
    assert.equal(shown(last('sum(panel.amps * panel.volts in kVA)')), '13.2 kVA');
    assert.equal(shown(last('panel.tag where panel.beads == 10 AWG red')), '[P1, LP-3]');
    assert.equal(shown(last('all(panel.amps < 30 A)')), 'no');
    assert.equal(shown(last('mean(panel.amps)')), shown(valueOf('70 A / 3')));
  });

  it('has totals of loads and none of voltages and currents', () => {
    const value = last();
    assert.ok(value.kind === 'list' && value.schedule);
    assert.deepEqual(
      value.schedule.totals.map(({ column: name, total }) => `${name} ${shown(total)}`),
      ['load 13.2 kVA', 'kilograms 140 kg'],
    );
  });

  it('takes values of the sheet into its cells and formulas', () => {
    const value = valueOf(
      'volts = 120 V\nbase = 3 kW\np = schedule\n  | tag | load |\n  | a | base * 2 |\n  | b | base |\n  | c | 5 kW |\n  | d | -2 kW |\n  amps = load / volts',
    );
    assert.deepEqual(column(value, 'amps'), ['50 A', '25 A', '41.6666666667 A', '-16.6666666667 A']);
  });

  it('takes a bare word in a column of words as text, though the sheet has that name', () => {
    const program = programOf('p = schedule\n  | tag | load |\n  | kiln | 2 kW |\nkiln = sum(p.load)');
    assert.deepEqual(program.diagnostics('0'), []);
    assert.equal(shown(program.results('0')[1].value), '2 kW');
  });

  it('leaves an empty cell empty, and says so where it is needed', () => {
    const text = 'p = schedule\n  | tag | load |\n  | a | 2 kW |\n  | b |  |\n  amps = load / 100 V';
    const value = valueOf(text);
    assert.deepEqual(column(value, 'amps'), ['20 A', 'none: its cell in `load` is empty']);
    assert.equal(shown(valueOf(`${text}\nsum(p.amps where known(p.load))`)), '20 A');
    const [{ message }] = programOf(`${text}\nsum(p.amps)`).diagnostics('0');
    assert.match(message, /row 2 \(`b`\) of `p` has none: its cell in `load` is empty/);
  });

  it('goes on with the other rows beside one that cannot be read', () => {
    const program = programOf(
      'p = schedule\n  | tag | load |\n  | a | 2 kW |\n  | b | 3 V |\n  | c | 4 kW |\n  amps = load / 100 V',
    );
    assert.deepEqual(column(program.results('0')[0].value!, 'amps'), [
      '20 A',
      'none: what stands in `load` cannot be used',
      '40 A',
    ]);
    assert.equal(program.diagnostics('0').length, 1);
  });

  it('passes over no row that something is wrong with, whatever asks which are known', () => {
    const program = programOf(
      'p = schedule\n  | tag | load |\n  | a | 2 kW |\n  | b | 3 V |\n  | c |  |\nsum(p.load where known(p.load))',
    );
    const messages = program.diagnostics('0').map(({ message }) => message);
    assert.equal(messages.length, 2);
    assert.match(messages[1], /row 2 \(`b`\) of `p` has none: what stands in `load` cannot be used. Correct it there/);
  });

  it('tells only so many of rows that come to nothing', () => {
    const rows = Array.from({ length: 300 }, () => '  | 0 A |').join('\n');
    const diagnostics = programOf(`p = schedule\n  | amps |\n${rows}\n  r = 3 V / amps`).diagnostics('0');
    assert.equal(diagnostics.length, 41);
    assert.match(diagnostics[40].message, /^260 more rows of `p`, from row 41 on/);
  });

  it('has no value where what it needs has none', () => {
    const program = programOf('base = 1 V / 0\np = schedule\n  | load |\n  | 3 A * 2 |\n  r = base / load\nx = p.r');
    assert.deepEqual(program.results('0')[1].missing, ['base']);
    assert.deepEqual(program.results('0')[2].missing, ['p']);
  });

  it('has names like any others for columns', () => {
    const value = valueOf(
      'p = schedule\n  | constructor | __proto__ |\n  | 2 A | 3 V |\n  toString = __proto__ / constructor',
    );
    assert.deepEqual(column(value, 'toString'), ['1.5 Ω']);
    assert.equal(shown(valueOf('p = schedule\n  | constructor |\n  | 2 A |\np.constructor')), '[2 A]');
  });
});

describe('readings in a schedule', () => {
  it('are each a source of their own, and their sum carries all of them', () => {
    const rows = '  | 10 Ω ± 0.3 Ω |\n  | 10 Ω ± 0.4 Ω |';
    const total = valueOf(`p = schedule\n  | r |\n${rows}\nsum(p.r)`);
    assert.ok(total.kind === 'quantity');
    assert.ok(Math.abs(total.uncertainty!.standard - 0.5 / Math.sqrt(3)) < 1e-12);
    const none = valueOf(`p = schedule\n  | r |\n${rows}\nsum(p.r) - sum(p.r)`);
    assert.ok(none.kind === 'quantity' && none.uncertainty === undefined);
  });

  it('go through the formulas of their row, and from there to totals', () => {
    const value = valueOf(
      'p = schedule\n  | u | r |\n  | 10 V ± 0.1 V | 5 Ω |\n  | 20 V | 4 Ω ± 1 % |\n  i = u / r\nsum(p.i)',
    );
    const spelled = valueOf('(10 V ± 0.1 V) / 5 Ω + 20 V / (4 Ω ± 1 %)');
    assert.ok(value.kind === 'quantity' && spelled.kind === 'quantity');
    assert.ok(Math.abs(value.uncertainty!.standard / spelled.uncertainty!.standard - 1) < 1e-12);
  });

  it('are one for each row where the formula of a column takes them', () => {
    const value = valueOf('p = schedule\n  | r |\n  | 10 Ω |\n  | 10 Ω |\n  read = r ± 0.3 Ω\nsum(p.read)');
    assert.ok(value.kind === 'quantity');
    assert.ok(Math.abs(value.uncertainty!.standard - (0.3 * Math.SQRT2) / Math.sqrt(3)) < 1e-12);
  });

  it('leave a check of all rows open where one row is', () => {
    const text = 'p = schedule\n  | u |\n  | 10 V ± 1 V |\n  | 5 V |\nall(p.u < 10.1 V)';
    assert.equal(shown(valueOf(text)), 'cannot tell');
  });
});

describe('formulas of a schedule', () => {
  const quantity = fc.integer({ min: -50, max: 50 }).map((n) => n / 4);
  const formulas = [
    'a * 2 + b',
    'a / b',
    '(a - b)^2',
    'if a > b then a else b',
    'max(a, b) - min(a, b)',
    'abs(a) + sqrt(abs(b))',
    'round(a) * b',
    '-a + b * a / (1 + abs(b))',
  ];

  it('equal the same formulas written out for each row', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(quantity, quantity), { minLength: 1, maxLength: 12 }),
        fc.constantFrom(...formulas),
        fc.constantFrom('c * 3', 'c / a', 'if c > 1 then c else b'),
        (rows, first, second) => {
          const cells = rows.map(([a, b]) => `  | ${a} | ${b} |`).join('\n');
          const program = programOf(`p = schedule\n  | a | b |\n${cells}\n  c = ${first}\n  d = ${second}`);
          const value = program.results('0')[0].value!;
          assert.ok(value.kind === 'list');
          for (const [i, [a, b]] of rows.entries()) {
            const scalar = programOf(`a = ${a}\nb = ${b}\nc = ${first}\nd = ${second}`);
            const row: Value = value.items[i];
            assert.ok(row.kind === 'record');
            for (const name of ['c', 'd']) {
              const expected = scalar.name(name) && scalar.results('0').find((result) => result.name === name)!.value;
              const actual: Value = row.fields.get(name)!;
              assert.deepEqual(
                actual.kind === 'quantity' ? actual.base : undefined,
                expected?.kind === 'quantity' ? expected.base : undefined,
                `${first}; ${second}: ${a}, ${b}`,
              );
            }
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('an edited row', () => {
  it('gives what a new program gives, and leaves what does not hang on the schedule alone', () => {
    const other = 'x = 3 A\ny = x * 2';
    const user = 'total = sum(panel.load)';
    const program = programOf(panel, other, user);
    const before = program.results('1');
    const edited = panel.replace('1.2 kVA', '1.8 kVA');
    const changed = program.update([edited, other, user].map((text, i) => ({ id: String(i), text })));
    assert.deepEqual([...changed].sort(), ['0', '2']);
    assert.deepEqual(program.results('1'), before);
    assert.deepEqual(told(program, ['0', '1', '2']), told(programOf(edited, other, user), ['0', '1', '2']));
    assert.equal(shown(program.results('2')[0].value), '13.8 kVA');
  });
});
