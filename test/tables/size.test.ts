import assert from 'node:assert/strict';
import fc from 'fast-check';
import { compareSizes, knownSizes, nearestSizes, parseSize } from '../../src/tables';

describe('parseSize', () => {
  const spellings: Readonly<Record<string, readonly string[]>> = {
    '12 AWG': ['12 AWG', '#12', '#12 AWG', '12AWG', ' 12  awg ', 'No. 12 AWG'],
    '1/0 AWG': ['1/0 AWG', '#1/0', '0 AWG', '1/0AWG'],
    '4/0 AWG': ['4/0 AWG', '0000 AWG', '#0000'],
    '250 kcmil': ['250 kcmil', '250 MCM', '250kcmil', '250 KCMIL'],
    '2.5 mm²': ['2.5 mm²', '2.5 mm2', '2,5 mm²', '2.5mm²', '2.50 mm²'],
  };
  for (const [canonical, texts] of Object.entries(spellings)) {
    it(`reads every spelling of ${canonical}`, () => {
      for (const text of texts) {
        assert.equal(parseSize(text)?.text, canonical, text);
      }
    });
  }

  it('reads what is no size as nothing', () => {
    for (const text of [
      '',
      '12',
      'AWG',
      '5/0 AWG',
      '1/2 AWG',
      '2.5 AWG',
      '57 AWG',
      '0 kcmil',
      '0 mm²',
      '12 ft',
      '-2 AWG',
    ]) {
      assert.equal(parseSize(text), undefined, text);
    }
  });

  it('gives a canonical text that reads back as the same size', () => {
    for (const size of knownSizes()) {
      assert.deepEqual(parseSize(size.text), size);
    }
  });

  it('never throws', () => {
    fc.assert(fc.property(fc.string(), (text) => parseSize(text) === undefined || parseSize(text)!.mm2 > 0));
  });

  // ASTM B258: 0.4600 in for 4/0 and 0.0050 in for 36 AWG, 38 equal ratios between them.
  it('takes areas from the definition of the gauge', () => {
    const area = (inches: number) => (Math.PI / 4) * (inches * 25.4) ** 2;
    assert.ok(Math.abs(parseSize('4/0 AWG')!.mm2 - area(0.46)) < 1e-9);
    assert.ok(Math.abs(parseSize('36 AWG')!.mm2 - area(0.005)) < 1e-12);
    assert.ok(Math.abs(parseSize('1000 kcmil')!.mm2 - area(1)) < 1e-9);
  });
});

describe('order of sizes', () => {
  it('runs through gauges, kcmil and mm² by metal area', () => {
    const mixed = ['250 kcmil', '35 mm²', '14 AWG', '4/0 AWG', '1 AWG', '2.5 mm²', '1/0 AWG'];
    const ordered = mixed.map((text) => parseSize(text)!).sort(compareSizes);
    assert.deepEqual(
      ordered.map(({ text }) => text),
      ['14 AWG', '2.5 mm²', '35 mm²', '1 AWG', '1/0 AWG', '4/0 AWG', '250 kcmil'],
    );
  });

  it('names the neighbours of a size that a table does not have', () => {
    const common = ['14 AWG', '12 AWG', '10 AWG', '4/0 AWG', '250 kcmil'].map((text) => parseSize(text)!);
    const near = (text: string) => nearestSizes(parseSize(text)!, common).map((size) => size.text);
    assert.deepEqual(near('13 AWG'), ['14 AWG', '12 AWG']);
    assert.deepEqual(near('225 kcmil'), ['4/0 AWG', '250 kcmil']);
    assert.deepEqual(near('16 AWG'), ['14 AWG']);
    assert.deepEqual(near('2.5 mm²'), [], 'metric sizes have no neighbours among inch ones');
  });
});
