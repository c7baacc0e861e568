import assert from 'node:assert/strict';
import { signatureAt } from '../../src/core';
import { bracketed, cells } from './marked-cells';

/** The label with the parameter that is being typed in brackets. */
function active(marked: string): string | undefined {
  const { session, cell, offset } = cells(marked);
  const found = signatureAt(session, cell, offset);
  return found && bracketed(found.label, found.active < 0 ? [] : [found.parameters[found.active].span]);
}

describe('signature help', () => {
  it('follows the argument by its place', () => {
    assert.equal(active('x = resistance(¦'), 'resistance(⟦conductor⟧, length; temperature: 75 °C)');
    assert.equal(
      active('x = resistance(12 AWG Cu, max(1 ft, 2 ft)¦'),
      'resistance(conductor, ⟦length⟧; temperature: 75 °C)',
    );
  });

  it('follows the argument by its name', () => {
    assert.equal(
      active('x = resistance(12 AWG Cu, temperature: 2¦'),
      'resistance(conductor, length; ⟦temperature: 75 °C⟧)',
    );
  });

  it('tells the innermost call, over lines too', () => {
    assert.match(active('x = max(3 A,\n  ampacity(12 AWG Cu¦))') ?? '', /^ampacity\(⟦conductor⟧/);
    assert.match(active('x = max(3 A,\n  ampacity(12 AWG Cu), ¦)') ?? '', /^max\(/);
  });

  it('knows plain mathematics and the functions of the sheet', () => {
    assert.match(active('x = sqrt(¦') ?? '', /^sqrt\(⟦/);
    assert.equal(active('f(r, i) = r * i\nx = f(3, ¦'), 'f(r, ⟦i⟧)');
  });

  it('is silent outside calls, in comments and in texts', () => {
    for (const text of [
      'x = 3 ¦',
      'x = (3 + ¦',
      'x = sqrt(4) ¦',
      '// sqrt(¦',
      'check 3 > 2 "sqrt(¦',
      'x = nothing(¦',
    ]) {
      assert.equal(active(text), undefined, text);
    }
  });
});
