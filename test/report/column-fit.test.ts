import assert from 'node:assert/strict';
import type { Column } from '../../src/report/document';
import { fitColumns } from '../../src/report/pdf/column-fit';

const column = (word: number, text = word): Column => ({ title: '', letters: { word, text } });
const total = (widths: readonly number[]) => widths.reduce((all, one) => all + one, 0);

describe('the columns of a table on paper', () => {
  it('fill the width, and a longer text is given more of what is left', () => {
    const { widths, fontSize } = fitColumns([column(5), column(5, 20)], 200)!;
    assert.equal(fontSize, 8.5);
    assert.ok(Math.abs(total(widths) - 200) < 1e-9);
    assert.ok(widths[1] > widths[0]);
  });

  it('are set in smaller letters before a word is parted', () => {
    const columns = Array.from({ length: 12 }, () => column(8, 12));
    const { widths, fontSize } = fitColumns(columns, 420)!;
    assert.ok(fontSize < 8.5);
    // Bold letters of DejaVu Sans are about 0.62 of their size wide on average in such words.
    assert.ok(widths.every((width) => width >= 8 * fontSize * 0.62 - 1e-9));
  });

  it('are left to their shares where their letters were not counted', () => {
    assert.equal(fitColumns([column(5), { title: 'a', width: 2 }], 200), undefined);
  });
});
