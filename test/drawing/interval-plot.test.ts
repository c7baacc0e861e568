import assert from 'node:assert/strict';
import fc from 'fast-check';
import { type Drawing, drawIntervals } from '../../src/drawing';

const sides = ['fails', 'passes'] as const;

function plot(limit: number, low: number, best: number, high: number, form: 'band' | 'span' = 'band'): Drawing {
  return drawIntervals({
    title: 'a check',
    description: 'what it says',
    limit: { value: limit, text: `limit ${limit}` },
    sides,
    rows: [
      { name: 'best value', figures: String(best), form: 'best', low: best, high: best },
      { name: 'band', figures: `${low} to ${high}`, form, low, high },
    ],
  });
}

/** How far the marks of an ink reach, left to right. */
function extent({ marks }: Drawing, ink: string): readonly [number, number] {
  const xs = marks.flatMap((mark) =>
    mark.ink !== ink
      ? []
      : mark.shape === 'line'
        ? [mark.from[0], mark.to[0]]
        : mark.shape === 'area'
          ? mark.points.map(([x]) => x)
          : [],
  );
  return [Math.min(...xs), Math.max(...xs)];
}

describe('the plot of a value beside its limit', () => {
  const number = fc.double({ min: -1e9, max: 1e9, noNaN: true });

  it('never draws an end on the other side of the limit, nor on it, however close it lies', () => {
    fc.assert(
      fc.property(number, number, number, fc.constantFrom(1, 1e-9, 1e-15), (limit, a, b, closeness) => {
        const [low, high] = [limit + a * closeness, limit + b * closeness].sort((x, y) => x - y);
        const drawing = plot(limit, low, (low + high) / 2, high);
        const [line] = extent(drawing, 'limit');
        const [from, to] = extent(drawing, 'band');
        assert.equal(Math.sign(from - line), Math.sign(low - limit), 'lower end');
        assert.ok(low === high || Math.sign(to - line) === Math.sign(high - limit) || high === limit, 'upper end');
        assert.ok(low === limit || Math.abs(from - line) >= 2.9, 'the lower end is seen to be off the limit');
      }),
    );
  });

  it('keeps every mark and every text within its edges', () => {
    fc.assert(
      fc.property(number, number, number, (limit, a, b) => {
        const drawing = plot(limit, Math.min(a, b), (a + b) / 2, Math.max(a, b));
        for (const mark of drawing.marks) {
          const points = mark.shape === 'area' ? mark.points : mark.shape === 'line' ? [mark.from, mark.to] : [mark.at];
          for (const [x, y] of points) {
            assert.ok(x >= 0 && x <= drawing.width && y >= 0 && y <= drawing.height, `${mark.shape} at ${x}, ${y}`);
          }
        }
      }),
    );
  });

  it('runs to its edge, with an arrowhead, where there is no end', () => {
    const drawing = plot(1, 20, 20, Number.POSITIVE_INFINITY, 'span');
    const [, right] = extent(drawing, 'span');
    assert.equal(
      drawing.marks.filter(({ ink }) => ink === 'span').length,
      4,
      'the line, one end, two strokes of a head',
    );
    assert.ok(right < drawing.width && right > extent(drawing, 'limit')[1]);
  });

  it('says in words what either side of the limit means', () => {
    const texts = plot(1, 2, 3, 4).marks.flatMap((mark) => (mark.shape === 'text' ? [mark.text] : []));
    for (const words of ['limit 1', 'fails', 'passes', 'best value', '2 to 4']) {
      assert.ok(texts.includes(words), words);
    }
  });
});
