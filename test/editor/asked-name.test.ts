import assert from 'node:assert/strict';
import { askedName } from '../../src/core';
import { cells } from './marked-cells';

const cases: readonly (readonly [string, string | undefined, string])[] = [
  ['curr¦ent = 240 V / ohms', 'current', 'the name that a line gives'],
  ['current = 240 V / oh¦ms', 'ohms', 'a name that is used'],
  ['current = 24¦0 V / ohms', 'current', 'a figure: what its line gives'],
  ['x = kiln.dr¦op * 2', 'kiln.drop', 'a field, with its record'],
  ['x = ki¦ln.drop * 2', 'kiln', 'the record of a field'],
  ['far = circuit(lo¦ad: ohms)', 'far', 'the label of an argument: what the call gives'],
  ['far = circuit(load: oh¦ms)', 'ohms', 'the value of an argument'],
  ['check oh¦ms <= 20 Ω "warm"', 'ohms', 'a name in a check'],
  ['check ohms <= 2¦0 Ω "warm"', undefined, 'a figure in a check, which has no name'],
];

describe('whose chain is asked for', () => {
  for (const [text, expected, title] of cases) {
    it(title, () => {
      const { session, cell, offset } = cells(text, 'ohms = 12 Ω\nkiln = heater(resistance: ohms, voltage: 240 V)');
      assert.equal(askedName(session, cell, offset), expected);
    });
  }
});
