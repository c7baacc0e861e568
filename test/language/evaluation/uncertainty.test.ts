import assert from 'node:assert/strict';
import type { Uncertainty } from '../../../src/language';
import { inUnit, programOf, shown, valueOf } from '../run-cells';

function doubtOf(text: string): Uncertainty | undefined {
  const value = valueOf(text);
  assert.ok(value.kind === 'quantity', text);
  return value.uncertainty;
}

const near = (actual: number | undefined, expected: number, message?: string) =>
  assert.ok(actual !== undefined && Math.abs(actual - expected) <= 1e-12 * Math.abs(expected), `${message}: ${actual}`);

describe('limits and readings', () => {
  // Every half-width in the value's base unit, worked by hand.
  for (const [text, limits] of [
    ['13.2 Ω ± 0.1 Ω', 0.1],
    ['13.2 kΩ ± 100 Ω', 100],
    ['200 Ω ± 2 %', 4],
    ['-200 V ± 2 %', 4],
    ['80 % ± 2 %', 0.02],
    ['0.8 ± 2 %', 0.016],
    ['20 °C ± 3 °C', 3],
    ['20 °C ± 3 K', 3],
    ['68 °F ± 9 °F', 5],
    ['(10 Ω ± 0.1 Ω) ± 0.2 Ω', 0.3],
    ['m = meter(reading: 0.8 %, digits: 5)\n207.6 V by m', 0.008 * 207.6 + 0.5],
    ['m = meter(digits: 5)\n13.21 mV by m', 0.05e-3],
    ['m = meter(digits: 5)\n13 V by m', 5],
    ['m = meter(digits: 5, resolution: 0.5 V)\n13.21 V by m', 2.5],
    ['m = meter(digits: 2, resolution: 0.5 V)\nV = 26 V / 2\nV by m', 1],
    ['m = meter(reading: 0.02 %, range: 0.005 Ω)\n13.21 Ω by m', 0.0002 * 13.21 + 0.005],
    ['f(x) = x * 2\nf(3 V ± 1 V)', 2],
  ] as const) {
    it(text.replace('\n', '; '), () => {
      near(doubtOf(text)?.limits, limits, text);
      near(
        (doubtOf(text)?.standard ?? 0) / (text.startsWith('(10') ? Math.sqrt(0.05 / 0.09) : 1),
        limits / Math.sqrt(3),
      );
    });
  }

  it('a meter shows what it states', () => {
    const value = valueOf('meter(reading: 0.8 %, digits: 5, range: 0.005 Ω)');
    assert.deepEqual(value.kind === 'meter' && value.terms.map((term) => shown(term)), ['0.8 %', '5', '0.005 Ω']);
  });

  it('a sheet without readings has no doubt at all', () => {
    assert.equal(doubtOf('x = 3 V\nx * 2'), undefined);
  });
});

describe('every reading is one source', () => {
  const V = 'V = 207.6 V ± 1.2 V\nR = 14.4 Ω ± 0.6 Ω\n';

  it('a value less itself is exactly 0 and certain', () => {
    for (const text of ['V - V', 'V / R - V / R', '(V + R * 1 A) - V - R * 1 A']) {
      assert.equal(doubtOf(V + text), undefined, text);
    }
  });

  it('one that was used twice counts twice, and two that look alike are two', () => {
    near(doubtOf(`${V}V + V`)?.standard, 2 * (1.2 / Math.sqrt(3)));
    near(doubtOf('(5 V ± 1 V) + (5 V ± 1 V)')?.standard, Math.sqrt(2 / 3));
  });

  it('power and current share both readings: P / I is V', () => {
    const text = `${V}P = V * V / R\nI = V / R\nP / I`;
    near(doubtOf(text)?.standard, 1.2 / Math.sqrt(3), text);
  });

  it('a stated correlation is the one that comes out, by the variance of sum and difference', () => {
    const sheet = `a = measured(5 V, standard: 0.3 V)
b = measured(7 V, standard: 0.4 V, with: a, correlation: -0.25)
c = measured(2 V, standard: 0.1 V, with: a, correlation: 0.6, with: b, correlation: 0.1)\n`;
    const variance = (text: string) => doubtOf(sheet + text)!.standard ** 2;
    near(Math.sqrt(variance('b')), 0.4);
    near(Math.sqrt(variance('c')), 0.1);
    for (const [x, y, r, product] of [
      ['a', 'b', -0.25, 0.12],
      ['a', 'c', 0.6, 0.03],
      ['b', 'c', 0.1, 0.04],
    ] as const) {
      const covariance = (variance(`${x} + ${y}`) - variance(`${x} - ${y}`)) / 4;
      assert.ok(Math.abs(covariance - r * product) < 1e-14, `${x}, ${y}: ${covariance}`);
    }
  });

  it('full correlation makes two readings one', () => {
    assert.equal(
      doubtOf('a = measured(5 V, standard: 0.3 V)\nb = measured(7 V, standard: 0.3 V, with: a, correlation: 1)\na - b'),
      undefined,
    );
  });

  it('the shares of the sources add up to one, the largest first', () => {
    const sources = doubtOf(`${V}V / R`)?.sources ?? [];
    assert.deepEqual(
      sources.map(({ name }) => name),
      ['14.4 Ω ± 0.6 Ω', '207.6 V ± 1.2 V'],
    );
    near(sources[0].share + sources[1].share, 1);
  });

  it('an edit that makes a source certain makes all that hangs on it certain', () => {
    const program = programOf('x = 3 V ± 1 V', 'y = x * 2', 'z = y > 5 V');
    program.update([
      { id: '0', text: 'x = 3 V' },
      { id: '1', text: 'y = x * 2' },
      { id: '2', text: 'z = y > 5 V' },
    ]);
    const [y, z] = ['1', '2'].map((cell) => program.results(cell)[0].value);
    assert.ok(y?.kind === 'quantity' && y.uncertainty === undefined);
    assert.ok(z?.kind === 'boolean' && z.value === true && z.doubt === undefined);
  });
});

describe('three answers', () => {
  for (const [text, answer] of [
    ['3 V ± 0.1 V < 4 V', 'yes'],
    ['3 V ± 0.1 V > 4 V', 'no'],
    ['3 V ± 2 V > 4 V', 'cannot tell'],
    ['3 V ± 2 V <= 4 V', 'cannot tell'],
    ['not (3 V ± 2 V > 4 V)', 'cannot tell'],
    ['3 V ± 2 V > 4 V and 1 > 2', 'no'],
    ['3 V ± 2 V > 4 V or 2 > 1', 'yes'],
    ['3 V ± 2 V > 4 V or 1 > 2', 'cannot tell'],
    ['3 V ± 2 V == 4 V', 'cannot tell'],
    ['3 V ± 0.1 V == 4 V', 'no'],
    ['3 V ± 0.1 V != 4 V', 'yes'],
    ['x = 3 V ± 2 V\nx >= x', 'yes'],
    ['x = 3 V ± 2 V\nx + 1 V > x', 'yes'],
  ] as const) {
    it(`${text.replace('\n', '; ')} is ${answer}`, () => assert.equal(shown(valueOf(text)), answer));
  }

  it('names the source that dominates and says whether it alone would settle it', () => {
    const doubt = (text: string) => {
      const value = valueOf(text);
      return value.kind === 'boolean' ? value.doubt : undefined;
    };
    const one = doubt('(3 V ± 2 V) + (0.5 V ± 0.1 V) > 4 V');
    assert.equal(one?.dominant, '`3 V ± 2 V`');
    assert.match(one?.advice ?? '', /can settle it$/);
    const two = doubt('(3 V ± 2 V) + (0.5 V ± 1.9 V) > 4 V');
    assert.match(two?.advice ?? '', /cannot settle it alone$/);
  });

  it('a check says cannot tell, and an `if` that cannot tell is an error', () => {
    const program = programOf('check 3 V ± 2 V > 4 V\nx = if 3 V ± 2 V > 4 V then 1 else 2');
    assert.equal(program.results('0')[0].verdict, 'cannot tell');
    assert.deepEqual(
      program.diagnostics('0').map(({ code }) => code),
      ['cannot-tell'],
    );
  });
});

describe('calls carry doubt', () => {
  it('through a record, by differences', () => {
    const text = 'drop(5 A ± 1 A).volts';
    const slope = inUnit('drop(6 A).volts', 'V') - inUnit('drop(5 A).volts', 'V');
    const standard = doubtOf(text)?.standard ?? 0;
    assert.ok(Math.abs(standard - slope / Math.sqrt(3)) <= 1e-9, `${standard}`);
  });

  it('through sums, means and lists', () => {
    const single = 1 / Math.sqrt(3);
    for (const [text, standard] of [
      ['sum([5 V ± 1 V, 3 V])', single],
      ['mean(5 V ± 1 V, 3 V)', single / 2],
      ['max(5 V ± 1 V, 3 V)', single],
      ['min(5 V ± 1 V, 3 V)', 0],
    ] as const) {
      const actual = doubtOf(text)?.standard ?? 0;
      assert.ok(Math.abs(actual - standard) <= 1e-9, `${text}: ${actual}`);
    }
  });
});

/** Numbers in 0 … 1 from a seed (mulberry32). */
function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

// The promise of the printed interval, against random draws from the stated limits (JCGM 101).
describe('the printed interval holds 95 % of what the limits allow', () => {
  const draws = 20_000;
  for (const limits of [[1], [1, 0.2], [1, 0.6], [1, 1], [1, 1, 1], [1, 0.9, 0.5, 0.3]]) {
    it(`for a sum of limits ${limits.join(', ')}`, () => {
      const { low, high, limits: guaranteed = 0 } = doubtOf(limits.map((a) => `(0 V ± ${a} V)`).join(' + '))!;
      const next = random(1);
      let inside = 0;
      for (let i = 0; i < draws; i++) {
        const sum = limits.reduce((total, a) => total + a * (2 * next() - 1), 0);
        inside += sum >= low && sum <= high ? 1 : 0;
      }
      assert.ok(inside / draws >= 0.94 && inside / draws <= 0.985, `${inside / draws}`);
      assert.ok(high <= guaranteed);
    });
  }
});
