import assert from 'node:assert/strict';
import MarkdownIt from 'markdown-it';
import { functionPage, functionSignature } from '../../src/display';
import { tradeFunctions } from '../../src/functions';
import { defineFunction } from '../../src/language';

const pull = defineFunction({
  name: 'pull',
  summary: 'Force to pull a cable',
  parameters: {
    length: { unit: 'ft', meaning: 'one-way length' },
    weight: { unit: 'lb/ft', optional: true, meaning: 'of the cable' },
    friction: { unit: '', named: true, default: 0.5, meaning: 'coefficient | dry' },
    lubricated: { yesNo: true, named: true, default: false, meaning: 'yes with lubricant' },
  },
  result: { unit: 'lbf', meaning: 'tension at the end' },
  formula: 'F = w * L * k',
  assumptions: ['a straight run'],
  sources: ['common practice, no source'],
  examples: [{ text: 'pull(100 ft)', gives: '50 lbf' }],
  evaluate: ({ length, friction }) => length * friction,
});

describe('a function page', () => {
  it('has the signature with named parameters behind a semicolon', () => {
    assert.equal(functionSignature(pull), 'pull(length, weight?; friction: 0.5, lubricated: no)');
  });

  it('tells parameters, result, formula, assumptions, examples and sources', () => {
    assert.equal(
      functionPage(pull),
      [
        '## pull',
        '`pull(length, weight?; friction: 0.5, lubricated: no)`',
        'Force to pull a cable.',
        [
          '| parameter | takes | default | meaning |',
          '| --- | --- | --- | --- |',
          '| `length` | ft | required | one-way length |',
          '| `weight` | lb/ft | may be left out | of the cable |',
          '| `friction` | number | 0.5 | coefficient \\| dry |',
          '| `lubricated` | yes or no | no | yes with lubricant |',
        ].join('\n'),
        'Gives lbf: tension at the end.',
        'Formula: `F = w * L * k`',
        'Assumes:',
        '- a straight run',
        'Examples:',
        '```kft\npull(100 ft)\n```',
        'gives 50 lbf',
        'Sources:',
        '- common practice, no source\n',
      ].join('\n\n'),
    );
  });

  it('is well-formed Markdown for every trade function', () => {
    const markdown = new MarkdownIt({ html: false });
    for (const definition of tradeFunctions) {
      const page = functionPage(definition);
      const tables = markdown.parse(page, {}).filter((token) => token.type === 'table_open').length;
      const wanted = Number(Object.keys(definition.parameters).length > 0) + Number('record' in definition.result);
      assert.equal(tables, wanted, definition.name);
      assert.doesNotMatch(page, /undefined|\[object/, definition.name);
    }
  });
});
