import assert from 'node:assert/strict';
import { wrap, wrapLines } from '../../src/cli/wrap';

describe('wrapping for a terminal', () => {
  it('fills lines and indents them', () => {
    assert.equal(wrap('one two three four', 10, '  ', '- '), '- one two\n  three\n  four');
    assert.equal(wrap('unbreakable-word', 5, '  '), '  unbreakable-word');
  });

  it('breaks only lines that are too long, and carries over four columns deeper', () => {
    assert.equal(wrapLines('short\n  I = a + b + c + d', 14), 'short\n  I = a + b +\n      c + d');
    assert.equal(wrapLines('unbreakable-word', 5), 'unbreakable-word');
  });

  it('leaves the rows of a table whole', () => {
    assert.equal(wrapLines('tag  load  amps\nP1   3 kW  12.5', 8), 'tag  load  amps\nP1   3 kW  12.5');
  });
});
