import assert from 'node:assert/strict';
import fc from 'fast-check';
import { shareOut } from '../../src/functions/rules/cutting';
import '../fuzz-seed';
import { errorOf, inUnit, near, run, stepsOf, valueOf } from './sheet';

/** Cuts without a reel, their length, leftovers and their length, of one arrangement. */
function scoreOf(reels: readonly number[], cuts: readonly number[], reelOf: readonly number[]): number[] {
  const unmet = cuts.filter((_, cut) => reelOf[cut] < 0);
  const left = reels.map((reel, i) => cuts.reduce((rest, cut, k) => (reelOf[k] === i ? rest - cut : rest), reel));
  const rests = left.filter((rest, i) => reelOf.includes(i) && rest > 1e-9);
  const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
  return [unmet.length, sum(unmet), rests.length, sum(rests)];
}

/** Every arrangement there is, one after another: slow, and plainly right. */
function bestScore(reels: readonly number[], cuts: readonly number[]): number[] {
  let best: number[] | undefined;
  const reelOf = cuts.map(() => -1);
  const left = [...reels];
  const visit = (cut: number) => {
    if (cut === cuts.length) {
      const score = scoreOf(reels, cuts, reelOf);
      const at = best === undefined ? 0 : score.findIndex((value, i) => Math.abs(value - best![i]) > 1e-9);
      if (best === undefined || (at >= 0 && score[at] < best[at])) {
        best = score;
      }
      return;
    }
    for (let reel = -1; reel < reels.length; reel++) {
      if (reel < 0 || left[reel] >= cuts[cut] - 1e-9) {
        reelOf[cut] = reel;
        if (reel >= 0) {
          left[reel] -= cuts[cut];
        }
        visit(cut + 1);
        if (reel >= 0) {
          left[reel] += cuts[cut];
        }
        reelOf[cut] = -1;
      }
    }
  };
  visit(0);
  return best!;
}

const numbersOf = (text: string): number[] => {
  const value = valueOf(text);
  assert.ok(value.kind === 'list', text);
  return value.items.map((item) => (item.kind === 'quantity' ? item.base : Number.NaN));
};

describe('sharing out cuts over reels', () => {
  // Held against trying every arrangement: an independent and plainly right way to the same answer.
  it('finds what trying everything finds', () => {
    const lengths = (most: number) => fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: most });
    fc.assert(
      fc.property(lengths(3), lengths(5), (tens, cuts) => {
        const reels = tens.map((length) => length * 2);
        const { reelOf, provedBest } = shareOut(reels, cuts);
        assert.ok(provedBest);
        assert.deepEqual(scoreOf(reels, cuts, reelOf), bestScore(reels, cuts));
      }),
      { numRuns: 300 },
    );
  });

  it('never takes more from a reel than it has', () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 1, maxLength: 8 }),
        fc.array(fc.double({ min: 0.1, max: 400, noNaN: true }), { minLength: 1, maxLength: 12 }),
        (reels, cuts) => {
          const { reelOf } = shareOut(reels, cuts);
          for (const [i, reel] of reels.entries()) {
            const taken = cuts.reduce((sum, cut, k) => (reelOf[k] === i ? sum + cut : sum), 0);
            assert.ok(taken <= reel + 1e-6 * Math.max(1, ...reels));
          }
        },
      ),
      { numRuns: 50 },
    ));

  it('ends, and says so, where there is too much to try', () => {
    const reels = Array.from({ length: 20 }, (_, i) => 500 + i * 7.3);
    const cuts = Array.from({ length: 60 }, (_, i) => 40 + ((i * 37) % 61) * 3.7);
    const { reelOf, provedBest } = shareOut(reels, cuts);
    assert.equal(provedBest, false);
    assert.ok(scoreOf(reels, cuts, reelOf)[0] < cuts.length);
  });
});

describe('cut_plan', () => {
  const shelf = 'job = cut_plan([250 ft, 180 ft, 500 ft], [120 ft, 130 ft, 85 ft])';

  it('takes two cuts that use a reel up, and the third from the shorter rest', () => {
    assert.deepEqual(numbersOf(`${shelf}\njob.from_reel`), [1, 1, 2]);
    assert.equal(inUnit(`${shelf}\njob.leftover`, 'ft'), 95);
    assert.equal(inUnit(`${shelf}\njob.leftover_count`, ''), 1);
  });

  it('says what to cut in words', () => {
    const value = valueOf(`${shelf}\njob.plan`);
    assert.ok(value.kind === 'list');
    assert.deepEqual(
      value.items.map((item) => item.kind === 'text' && item.value),
      ['reel 1, 250 ft: cut 120 ft + 130 ft, 0 ft left', 'reel 2, 180 ft: cut 85 ft, 95 ft left'],
    );
  });

  // Trade notes F4h: 253.9 ft ± 7.4 ft holds 240 ft, may hold 250 ft, and does not hold 265 ft.
  it('does not promise a reel that may be long enough', () => {
    const met = (cut: string) => {
      const value = valueOf(`job = cut_plan([253.9 ft ± 7.4 ft], [${cut}])\njob.all_met`);
      return value.kind === 'boolean' && value.value;
    };
    assert.equal(met('240 ft'), true);
    assert.equal(met('250 ft'), false);
    assert.equal(met('265 ft'), false);
    const plan = (cut: string) => {
      const value = valueOf(`job = cut_plan([253.9 ft ± 7.4 ft], [${cut}])\njob.plan`);
      return value.kind === 'list' && value.items.map((item) => item.kind === 'text' && item.value);
    };
    assert.deepEqual(plan('250 ft'), [
      'cut 1, 250 ft: not promised, reel 1 may be long enough, but is sure to 246.9 ft only',
    ]);
    assert.deepEqual(plan('265 ft'), ['cut 1, 265 ft: not promised, no reel is long enough']);
  });

  it('carries the doubt of a reel to what is left on it, and to nothing else', () => {
    const text = 'job = cut_plan([253.9 ft ± 7.4 ft, 100 ft], [200 ft, 90 ft])';
    const left = valueOf(`${text}\njob.left`);
    assert.ok(left.kind === 'list');
    const [first, second] = left.items;
    assert.ok(first.kind === 'quantity' && second.kind === 'quantity');
    near(first.uncertainty?.limits ?? 0, 7.4 * 0.3048, 1e-6);
    assert.equal(second.uncertainty, undefined);
    const total = valueOf(`${text}\njob.leftover`);
    assert.ok(total.kind === 'quantity');
    near(total.uncertainty?.limits ?? 0, 7.4 * 0.3048, 1e-6);
    assert.deepEqual(run(text).diagnostics, []);
  });

  it('takes a reel measured by its resistance', () => {
    const text = [
      'bench = meter(reading: 0.02 %, range: 0.005 Ω)',
      'reel = conductor_length(0.412 Ω by bench, 12 AWG Cu stranded, temperature: 18 °C, leads: 0.03 Ω)',
      'job = cut_plan([reel, 400 ft], [180 ft, 300 ft])',
    ].join('\n');
    assert.deepEqual(numbersOf(`${text}\njob.from_reel`), [1, 2]);
    assert.ok(stepsOf(text).some((step) => step.kind === 'assumption' && /lower end/.test(step.text)));
  });

  it('names the cut or the reel that cannot be', () => {
    assert.match(errorOf('cut_plan([100 ft], [0 ft])').message, /Cut 1 is not above 0 ft/);
    assert.match(errorOf('cut_plan([5 ft ± 6 ft], [1 ft])').message, /Reel 1 may hold less than nothing/);
  });
});
