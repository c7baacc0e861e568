import assert from 'node:assert/strict';
import fc from 'fast-check';
import { semanticTokens } from '../../src/core';
import { roughCell } from '../language/syntax/cell-arbitraries';
import { cells } from './marked-cells';

const shown = (...texts: string[]) => {
  const { session } = cells(...texts);
  return semanticTokens(session, '0').map(({ span, type, modifiers }) =>
    [texts[0].slice(span.start, span.end), type, ...modifiers].join(' '),
  );
};

describe('semantic tokens', () => {
  it('tell a name by where its value comes from, in another cell too', () => {
    const rest = 'input run = 85 ft\nr = 13.2 Ω ± 0.1 Ω\nc = 12 AWG Cu\nf(a) = a * 2';
    assert.deepEqual(shown('x = run + r + c + f(3)', rest), [
      'x variable declaration',
      'run variable input',
      'r variable measured',
      'c variable conductor',
      'f function',
    ]);
  });

  it('know functions, parameters, fields, units and conductors', () => {
    assert.deepEqual(
      shown('f(a) = a * 2 ft\nk = circuit\n  load: 3 A\nx = ampacity(12 AWG Cu THHN, ambient: 40 °C) + k.drop'),
      [
        'f function declaration',
        'a variable declaration parameter',
        'a variable parameter',
        'ft unit',
        'k variable declaration',
        'circuit function',
        'load property',
        'A unit',
        'x variable declaration',
        'ampacity function',
        '12 AWG Cu THHN conductor',
        'ambient property',
        '°C unit',
        'k variable',
        'drop property',
      ],
    );
  });

  it('tell the lint that `allow` silences, and the names that `use` takes', () => {
    assert.deepEqual(shown('allow voltage-drop "short"\nuse a from "b.kft.md"'), [
      'voltage-drop lint',
      'a variable declaration used',
    ]);
  });

  it('lie in order, apart and each on one line, whatever is typed', () => {
    fc.assert(
      fc.property(roughCell, (text) => {
        const { session, texts } = cells(text.replaceAll('¦', ''));
        let at = 0;
        for (const { span } of semanticTokens(session, '0')) {
          assert.ok(at <= span.start && span.start < span.end);
          assert.ok(!texts[0].slice(span.start, span.end).includes('\n'));
          at = span.end;
        }
      }),
      { numRuns: 150 },
    );
  });
});
