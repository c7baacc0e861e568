import assert from 'node:assert/strict';
import fc from 'fast-check';
import { type Block, blocksOf } from '../../src/display';
import { createProgram } from '../../src/language';
import { createLibrary } from '../../src/library';

/** The picture below the last check of a cell. */
function drawn(text: string): (Block & { kind: 'drawing' }) | undefined {
  const library = createLibrary();
  assert.ok(!('problem' in library));
  const program = createProgram(library);
  program.update([{ id: 'c', text }]);
  const blocks = program.results('c').flatMap((result) => blocksOf(result));
  return blocks.find((block) => block.kind === 'drawing');
}

const textsOf = (block: Block & { kind: 'drawing' }) =>
  block.drawing.marks.flatMap((mark) => (mark.shape === 'text' ? [mark.text] : []));

describe('the picture of a doubtful check', () => {
  it('tells the 95 % and the guaranteed limits, and on which side of the limit they lie', () => {
    // Two readings with limits of ±0.5 A each: guaranteed ±1 A; u = 0.5 √2/√3 A and 1.96 u would be 0.8 A.
    const sum = 'a = 9 A ± 0.5 A\nb = 9 A ± 0.5 A\n';
    assert.match(
      drawn(`${sum}check a + b <= 25 A`)!.text,
      /^95 % within 17\.\d+ A to 18\.\d+ A, guaranteed within 17\.00 A to 19\.00 A: all on the passing side of 25 A$/,
    );
    assert.match(drawn(`${sum}check a + b >= 25 A`)!.text, /: all on the failing side of 25 A$/);
    assert.match(drawn(`${sum}check 18.2 A >= a + b`)!.text, /: on both sides of 18\.2 A$/);
    assert.match(
      drawn(`${sum}check a + b <= 18.9 A`)!.text,
      /: the 95 % on the passing side, the guaranteed limits on both sides of 18\.9 A$/,
    );
  });

  it('has the passing side where the comparison has it, whichever way round it is written', () => {
    const order = (check: string) =>
      textsOf(drawn(`a = 9 A ± 0.5 A\n${check}`)!).filter((text) => /^(pass|fail)/.test(text));
    assert.deepEqual(order('check a <= 10 A'), ['passes', 'fails']);
    assert.deepEqual(order('check 10 A >= a'), ['passes', 'fails']);
    assert.deepEqual(order('check a > 8 A'), ['fails', 'passes']);
    assert.deepEqual(order('check 8 A < a'), ['fails', 'passes']);
  });

  it('looks at the margin where both sides are doubtful', () => {
    const block = drawn('a = 9 A ± 0.5 A\nb = 10 A ± 0.5 A\ncheck a <= b')!;
    assert.match(
      block.text,
      /^margin: 95 % within 0\.\d+ A to 1\.\d+ A, guaranteed within 0 A to 2\.00 A: all on the passing side of 0 A$/,
    );
    assert.deepEqual(textsOf(block).slice(0, 3), ['no margin', 'fails', 'passes']);
  });

  it('has nothing to show where the doubt of both sides is the same and falls out', () => {
    assert.equal(drawn('a = 9 A ± 0.5 A\ncheck a <= a + 1 A'), undefined);
  });

  it('has nothing to show where nobody could see the doubt', () => {
    assert.equal(drawn('a = 9 A ± 0.01 A\ncheck a <= 20 A'), undefined);
    assert.equal(drawn('a = 9 A\ncheck a <= 20 A'), undefined);
  });

  it('leaves the guaranteed limits out where a source states none', () => {
    const block = drawn('a = measured(9 A, standard: 0.3 A)\ncheck a <= 10 A')!;
    assert.match(block.text, /^95 % within 8\.40 A to 9\.60 A: all on the passing side of 10 A$/);
  });

  it('tells of a reading over range what is known', () => {
    const block = drawn('r = OL 20 MΩ\ncheck r >= 1 MΩ');
    assert.ok(block);
    assert.match(block.text, /^at least 20 MΩ: all on the passing side of 1 MΩ$/);
  });

  it('writes no figure on the other side of the limit than it lies', () => {
    const amount = fc.double({ min: 0.5, max: 2, noNaN: true });
    const step = fc.integer({ min: 3, max: 8 });
    fc.assert(
      fc.property(amount, amount, step, (value, size, digits) => {
        const doubt = size * 10 ** -digits;
        const limit = value + doubt * (1 + 1e-4);
        const block = drawn(`a = ${value} V ± ${doubt} V\ncheck a <= ${limit} V`);
        assert.ok(block);
        const [most, edge] = /guaranteed within [^V]+ V to ([\d.]+) V.* of ([\d.]+) V$/
          .exec(block.text)!
          .slice(1)
          .map(Number);
        assert.ok(most < edge, block.text);
      }),
      { numRuns: 60 },
    );
  });
});
