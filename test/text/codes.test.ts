import { strict as assert } from 'node:assert';
import fc from 'fast-check';
import { codesOf } from '../../src/text';

describe('The codes of a text', () => {
  it('are those of its characters with noughts behind, whatever was kept before', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (before, text) => {
        const codes = codesOf(text, codesOf(before));
        for (let at = 0; at < text.length; at++) {
          assert.equal(codes[at], text.charCodeAt(at));
        }
        assert.deepEqual([...codes.subarray(text.length, text.length + 4)], [0, 0, 0, 0]);
      }),
    );
  });

  it('are put in the array that was kept where it is long enough', () => {
    const kept = codesOf('a longer text');
    assert.equal(codesOf('short', kept), kept);
    assert.notEqual(codesOf('a text that is longer by far', kept), kept);
  });
});
