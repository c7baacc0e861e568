import assert from 'node:assert/strict';
import { drawBars } from '../../src/drawing';

describe('a bar chart', () => {
  const drawing = drawBars({
    title: 'load by phase',
    description: 'A 1 kVA, B 3 kVA, C 0 kVA',
    bars: [
      { name: 'A', figures: '1 kVA', value: 1 },
      { name: 'B', figures: '3 kVA', value: 3 },
      { name: 'C', figures: '0 kVA', value: 0 },
    ],
    across: { value: 4 / 3, text: 'mean' },
  });
  const lengths = drawing.marks.flatMap((mark) =>
    mark.shape === 'area' ? [mark.points[1][0] - mark.points[0][0]] : [],
  );

  it('draws bars as long as their values, from zero, and none for nothing', () => {
    assert.equal(lengths.length, 2);
    assert.ok(Math.abs(lengths[1] / lengths[0] - 3) < 1e-9);
  });

  it('names each bar and gives its figure', () => {
    const texts = drawing.marks.flatMap((mark) => (mark.shape === 'text' ? [mark.text] : []));
    assert.deepEqual(texts, ['A', '1 kVA', 'B', '3 kVA', 'C', '0 kVA', 'mean']);
  });

  it('puts the line across where its value belongs', () => {
    const start = drawing.marks.find(({ ink }) => ink === 'base');
    const mean = drawing.marks.find(({ ink }) => ink === 'mean');
    assert.ok(start?.shape === 'line' && mean?.shape === 'line');
    assert.ok(Math.abs((mean.from[0] - start.from[0]) / lengths[0] - 4 / 3) < 1e-9);
  });
});
