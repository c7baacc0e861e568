import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { contextWords, reservedWords, statementWords } from '../../src/language/syntax/scanning/token';

const read = (name: string) => JSON.parse(readFileSync(join(__dirname, '../../syntaxes', name), 'utf8'));
const grammar = read('kilofoot.tmLanguage.json');

/** The words of `(a|b|c)` in a rule. */
const wordsOf = (rule: string): string[] => /\(((?:\w+\|)*\w+)\)/.exec(grammar.repository[rule].match)![1].split('|');

describe('the grammar', () => {
  it('knows the words that the parser knows, and no others', () => {
    assert.deepEqual(wordsOf('statement'), [...statementWords]);
    const inExpressions = [...wordsOf('constant'), ...wordsOf('keyword')].sort();
    assert.deepEqual(inExpressions, [...reservedWords.keys(), ...contextWords].sort());
  });

  it('includes only rules that are there, and uses each', () => {
    const included = grammar.patterns.map((p: { include: string }) => p.include.slice(1));
    assert.deepEqual(included.sort(), Object.keys(grammar.repository).sort());
  });

  const matches = (rule: string, text: string) =>
    new RegExp(grammar.repository[rule].match.replace(/\\x\{(\w+)\}/g, '\\u$1')).exec(text)?.[0];

  for (const size of ['12 AWG Cu stranded THHN', '1/0 AWG Al XHHW-2', '250 kcmil Cu', '2.5 mm² Cu', '#12 Cu']) {
    it(`colours ${size} as one conductor`, () => assert.equal(matches('designation', size), size));
  }

  for (const quantity of ['240 V', '1.98 Ω/kft', '3 %', '20 °C', '1e3 kW', '0.00393 1/°C']) {
    it(`finds the number and the unit of ${quantity}`, () =>
      assert.ok(quantity.startsWith(matches('number', quantity)!)));
  }

  it('stops a conductor before the next argument', () => {
    assert.equal(matches('designation', '12 AWG Cu, temperature: 18 °C'), '12 AWG Cu');
  });

  it('leaves an area that no metal follows to the quantities', () => {
    assert.equal(matches('designation', '250 kcmil'), undefined);
  });
});
