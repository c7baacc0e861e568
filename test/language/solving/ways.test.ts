import assert from 'node:assert/strict';
import { blocksOf, toText } from '../../../src/display';
import { createProgram, type FunctionDefinition } from '../../../src/language';
import { inUnit, programOf, shown } from '../run-cells';
import { smallLibrary } from '../small-library';

/** What a cell shows, line by line; any problem fails the test. */
function linesOf(...cells: readonly string[]): string[] {
  const program = programOf(...cells);
  assert.deepEqual(
    cells.flatMap((_, i) => program.diagnostics(String(i)).map(({ message }) => message)),
    [],
  );
  return program
    .results('0')
    .flatMap((result) => toText(blocksOf(result)).split('\n'))
    .map((line) => line.replace(/ +/g, ' '));
}

describe('the way to an unknown', () => {
  it('is the formula that the equation comes to when it is turned round', () => {
    assert.deepEqual(linesOf('solve x\n  12 V == 2 A * (x + 1 Ω)'), [
      '12 V = 2 A × (x + 1 Ω)',
      'x = 12 V / 2 A - 1 Ω = 5 Ω',
    ]);
    assert.deepEqual(linesOf('solve x\n  1 / x == 1 / (3 Ω) + 1 / (6 Ω)'), [
      '1 / x = 1 / 3 Ω + 1 / 6 Ω',
      'x = 1 / (1 / 3 Ω + 1 / 6 Ω) = 2 Ω',
    ]);
    assert.deepEqual(linesOf('solve t\n  2 == exp(-t / (5 s)) * 4'), [
      '2 = exp((-t) / 5 s) × 4',
      't = -(ln(2 / 4) × 5 s) = 3.466 s',
    ]);
  });

  it('is the equation itself where the unknown stands alone in it', () => {
    assert.deepEqual(linesOf('solve x\n  x == 3 V + 2 V  // both cells'), ['x = 3 V + 2 V = 5 V // both cells']);
  });

  it('gathers an unknown that stands more than once', () => {
    assert.equal(inUnit('solve x\n  240 V * x / (x + 12 Ω) == 192 V\nx', 'Ω'), 48);
    assert.equal(inUnit('solve x\n  x * 3 Ω + 4 V == x * 1 Ω + 10 V\nx', 'A'), 3);
  });

  it('says that of two opposite values the one that is not negative is taken', () => {
    assert.deepEqual(linesOf('solve x\n  x^2 == 16 V^2'), [
      'x² = 16 V²',
      'Assumed: x is 4 V or -4 V; the one that is not negative is taken. Bounds behind solve, such as x in low .. high, choose the other',
      'x = √(16 V²) = 4 V',
    ]);
  });

  it('goes from one unknown to the next, whichever way round they are written', () => {
    const text = 'solve p, i, u\n  p == u * i\n  u == i * 3 Ω\n  u == 12 V\n';
    assert.equal(inUnit(`${text}i`, 'A'), 4);
    assert.equal(inUnit(`${text}p`, 'W'), 48);
  });

  it('is a search where no formula gives the unknown, and the search is told', () => {
    const lines = linesOf('solve x in 0 .. 2\n  x + sin(x) == 1');
    assert.match(lines[1], /^x = 0\.511 \/\/ found by search from 0 to 2$/);
    assert.equal(inUnit('solve x in 0 .. 2\n  x + sin(x) == 1\nx', '').toFixed(12), '0.510973429389');
  });

  it('is not searched for again by who looks at how it was found', () => {
    let asked = 0;
    const counted: FunctionDefinition = {
      ...smallLibrary.functions.get('drop')!,
      evaluate: (values, call) => {
        asked++;
        return smallLibrary.functions.get('drop')!.evaluate(values, call);
      },
    };
    const functions = new Map([...smallLibrary.functions, ['drop', counted]]);
    const program = createProgram({ ...smallLibrary, functions });
    program.update([{ id: '0', text: 'solve x in 0 A .. 90 A\n  drop(x, metal: Al).volts == 30 V' }]);
    const searched = asked;
    assert.ok(searched > 100, `asked ${searched} times`);
    const [result] = program.results('0');
    assert.deepEqual([result.calls().length, shown(result.value)], [1, '15 A']);
    assert.ok(result.trace().steps.length > 1);
    assert.ok(asked - searched < 10, `asked ${asked - searched} times more`);
  });

  it('finds a value at which both sides only touch', () => {
    assert.ok(Math.abs(inUnit('solve x in 0 .. 3\n  cos(x - 1) == 1\nx', '') - 1) < 1e-6);
  });

  it('lets bounds choose one of several values, and gives the value their unit', () => {
    const text = '  x^2 - 5 A * x + 6 A^2 == 0 A^2\nx';
    assert.equal(inUnit(`solve x in 0 A .. 2.5 A\n${text}`, 'A'), 2);
    const program = programOf(`solve x in 2500 mA .. 9000 mA\n${text}`);
    assert.equal(shown(program.results('0')[0].value), '3000 mA');
  });

  it('leads through functions of the library and of the sheet', () => {
    assert.equal(inUnit('solve x in 0 A .. 90 A\n  drop(x, metal: Al).volts == 30 V\nx', 'A'), 15);
    assert.ok(Math.abs(inUnit('f(a) = a^2 * 2\nsolve x in 0 V .. 9 V\n  f(x) == 50 V^2\nx', 'V') - 5) < 1e-12);
  });

  it('lets an unknown that a search gives stand in the formula of another', () => {
    const text = 'solve x in 0 A .. 90 A, y\n  y == 240 V - drop(x).volts * 2\n  y == x * 6 Ω\n';
    assert.ok(Math.abs(inUnit(`${text}x`, 'A') - 30) < 1e-12);
    assert.ok(Math.abs(inUnit(`${text}y`, 'V') - 180) < 1e-10);
  });

  it('takes roots of negative numbers where they are odd', () => {
    assert.equal(inUnit('solve x\n  x^3 == -8\nx', ''), -2);
    assert.equal(inUnit('solve x\n  x^3 == 8 V^3\nx', 'V'), 2);
    assert.equal(inUnit('solve x\n  2^x == 8\nx', ''), 3);
  });

  it('keeps the kind that the equation states', () => {
    const program = programOf('solve p, t\n  p == 3 V * 2 A in W\n  t - 20 °C == 55 K');
    const [p, t] = program.results('0');
    assert.ok(p.value?.kind === 'quantity' && p.value.type.kind === 'real');
    assert.equal(shown(t.value), '75 °C');
  });
});

describe('solving across cells', () => {
  it('uses names of other cells and is used by them, in any order', () => {
    const program = programOf('check i > 2 A\nd = i * 2', 'solve i\n  u == i * r', 'u = 12 V\nr = 3 Ω');
    assert.equal(program.results('0')[0].verdict, 'yes');
    assert.equal(shown(program.results('0')[1].value), '8 A');
    assert.equal(program.name('i')?.cell, '1');
    assert.equal(program.name('r')?.references.length, 1);
    assert.equal(program.name('i')?.references.length, 3);
  });

  it('runs again only what an edit touches', () => {
    const cells = ['solve i\n  u == i * 3 Ω', 'u = 12 V', 'w = 2 A'].map((text, i) => ({ id: String(i), text }));
    const program = programOf(...cells.map(({ text }) => text));
    const before = program.results('2')[0];
    const changed = program.update(cells.map((cell) => (cell.id === '1' ? { ...cell, text: 'u = 15 V' } : cell)));
    assert.deepEqual([...changed].sort(), ['0', '1']);
    assert.equal(shown(program.results('0')[0].value), '5 A');
    assert.equal(program.results('2')[0], before);
  });

  it('gives the types of what is written in an equation', () => {
    const text = 'solve i\n  12 V == i * 3 Ω';
    const program = programOf(text);
    const tree = program.tree('0')!;
    const node = Array.from({ length: tree.count }, (_, n) => n).find((n) => tree.starts[n] === text.indexOf('i *'))!;
    const type = program.typeAt('0', node);
    assert.ok(type?.kind === 'quantity');
    assert.equal(type.unit.symbol, 'A');
  });
});
