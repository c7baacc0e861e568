import assert from 'node:assert/strict';
import { contextAt } from '../../src/editor/completion/context';
import type { Vocabulary } from '../../src/language';

const words = new Set(['Cu', 'Al', 'THHN', 'XHHW-2', 'stranded']);
const vocabulary: Vocabulary = {
  sizeUnits: new Set(['AWG', 'kcmil', 'mm²']),
  alwaysSizeUnits: new Set(['AWG']),
  designationWords: words,
  hyphenatedWords: new Set(['XHHW-2']),
};

/** The context at the `|` in a text, and the word that would be replaced. */
function at(marked: string) {
  const offset = marked.indexOf('|');
  const text = marked.replace('|', '');
  const { wanted, replaces } = contextAt(text, offset, vocabulary);
  return { wanted, word: text.slice(replaces.start, replaces.end) };
}

describe('what the text before the cursor asks for', () => {
  it('nothing in a comment or a text', () => {
    assert.deepEqual(at('x = 3 // su|').wanted, { kind: 'nothing' });
    assert.deepEqual(at('check x > 3 "la|').wanted, { kind: 'nothing' });
  });

  it('a unit after a number, with or without a space', () => {
    assert.deepEqual(at('x = 240 V|'), { wanted: { kind: 'unit' }, word: 'V' });
    assert.deepEqual(at('x = 1.5k|'), { wanted: { kind: 'unit' }, word: 'k' });
    assert.deepEqual(at('x = 3 |'), { wanted: { kind: 'unit' }, word: '' });
  });

  it('no unit after a name that ends in a digit', () => {
    assert.deepEqual(at('x = r2|').wanted, { kind: 'expression', startsLine: false });
  });

  it('a conductor word after a size, knowing those that are there', () => {
    assert.deepEqual(at('c = 12 AWG Cu |').wanted, { kind: 'conductor word', said: ['Cu'] });
    assert.deepEqual(at('c = 1/0 AWG A|'), { wanted: { kind: 'conductor word', said: [] }, word: 'A' });
    assert.deepEqual(at('c = #12 Cu XHHW-|'), { wanted: { kind: 'conductor word', said: ['Cu'] }, word: 'XHHW-' });
  });

  it('a field of a record', () => {
    assert.deepEqual(at('check kiln.dr|'), { wanted: { kind: 'member', of: 'kiln' }, word: 'dr' });
  });

  it('a parameter of a form, knowing those that are there', () => {
    assert.deepEqual(at('kiln = circuit\n  load: 3 A\n  vo|').wanted, {
      kind: 'parameter',
      function: 'circuit',
      said: ['load'],
      form: true,
    });
  });

  it('the value of a form’s field', () => {
    const wanted = { kind: 'argument', function: 'circuit', parameter: 'kind' };
    assert.deepEqual(at('kiln = circuit // note\n  kind: |').wanted, wanted);
  });

  it('no parameter below a line that is no form', () => {
    assert.deepEqual(at('a = 3\n  b|').wanted, { kind: 'expression', startsLine: true });
  });

  it('a parameter inside a call, the innermost that is open', () => {
    const wanted = { kind: 'parameter', function: 'ampacity', said: [], form: false };
    assert.deepEqual(at('x = max(3 A, ampacity(|').wanted, wanted);
    assert.deepEqual(at('x = ampacity(c, ambient: 40 °C, te|').wanted, { ...wanted, said: ['ambient'] });
    assert.deepEqual(at('x = resistance(c, 3 ft) + r|').wanted, { kind: 'expression', startsLine: false });
  });

  it('the value of an argument written by name', () => {
    const wanted = { kind: 'argument', function: 'resistance_at', parameter: 'material' };
    assert.deepEqual(at('x = resistance_at(r, material: C|').wanted, wanted);
  });

  it('a lint after `allow`', () => {
    assert.deepEqual(at('allow volt|'), { wanted: { kind: 'lint' }, word: 'volt' });
  });

  it('a statement at the start of a line', () => {
    assert.deepEqual(at('che|').wanted, { kind: 'expression', startsLine: true });
  });
});
