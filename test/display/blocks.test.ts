import assert from 'node:assert/strict';
import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { type Block, blocksOf, toMarkdown, toText } from '../../src/display';
import { createProgram, type StatementResult, type Step, type Value } from '../../src/language';
import { createLibrary } from '../../src/library';
import { binary, literal, name, quantity, value } from './values';

/** What a cell shows, as text. */
function shown(text: string): string {
  const library = createLibrary();
  assert.ok(!('problem' in library));
  const program = createProgram(library);
  program.update([{ id: 'c', text }]);
  return toText(program.results('c').flatMap((result) => blocksOf(result)));
}

/** A statement's result made by hand. */
const statement = (part: Partial<StatementResult>, steps: readonly Step[] = []): StatementResult => ({
  cell: 'c',
  index: 0,
  span: { start: 0, end: 1 },
  kind: 'definition',
  origin: 'computed',
  needs: [],
  trace: () => ({ steps }),
  calls: () => [],
  ...part,
});

const nec = {
  standard: 'NEC (NFPA 70)',
  edition: '2023',
  table: 'Table 9',
  basis: 'memory',
  provenance: 'none',
} as const;

describe('what a statement shows', () => {
  it('is its formula, its numbers and its result on one line', () => {
    assert.equal(
      shown('U = 207.6 V\nR = 11.9 Ω // cold\nI = U / R\nP = U * I'),
      [
        'U = 207.6 V',
        'R = 11.9 Ω  // cold',
        'I = U / R = 207.6 V / 11.9 Ω = 17.45 A',
        'P = U × I = 207.6 V × 17.45 A = 3.622 kW',
      ].join('\n'),
    );
  });

  it('keeps the digits of a given number, and shows what it was converted to', () => {
    assert.equal(shown('limit = 3.0 %\nr = 13.21 Ω in mΩ'), 'limit = 3.0 %\nr     = 13.21 Ω = 13,210 mΩ');
  });

  it('is the verdict of a check, with what is to spare', () => {
    assert.equal(
      shown('I = 17.445 A\ncheck I <= 20 A "fuse"\ncheck I <= 15 A'),
      [
        'I = 17.445 A',
        '✔ yes  fuse: 17.45 A ≤ 20 A (2.555 A to spare)',
        '✘ no  I ≤ 15 A: 17.45 A ≤ 15 A (missed by 2.445 A)',
      ].join('\n'),
    );
  });

  it('tells a call once, with what was taken where nothing was written', () => {
    const lines = shown('L = conductor_length(0.41 Ω, 12 AWG Cu stranded)').split('\n');
    assert.match(lines[0], /^conductor_length\(resistance: 0\.41 Ω, conductor: 12 AWG Cu stranded\) = \d+\.?\d* ft$/);
    assert.match(lines[1], /^ {2}Assumed: .*temperature 20 °C/);
    assert.match(lines.at(-1)!, /^L = \d+\.?\d* ft$/);
  });

  it('says which names are in the way', () => {
    assert.match(
      shown('a = nosuch + 1\nb = a * 2'),
      /^a has no value.*\nb needs a, which has no value because of an error\.$/,
    );
    const [block] = blocksOf(statement({ kind: 'check', missing: ['a', 'b'] }));
    assert.equal(toText([block]), 'This line needs a and b, which have no value because of an error.');
  });

  it('says what keeps a check open', () => {
    const result: Value = {
      kind: 'boolean',
      value: 'cannot tell',
      doubt: { dominant: 'element', advice: 'read it again with a finer meter' },
    };
    const step: Step = { kind: 'comparison', formula: binary(name('I'), '<=', literal('20', 'A')), result };
    assert.equal(
      toText(blocksOf(statement({ kind: 'check', value: result, verdict: 'cannot tell', label: 'fuse' }, [step]))),
      '? cannot tell  fuse: I ≤ 20 A\n  most of the doubt comes from element; read it again with a finer meter',
    );
  });

  it('names the table behind a value, and says when it is from memory', () => {
    const step: Step = { kind: 'table', result: quantity(1.98, 'Ω/kft'), source: nec, row: [['size', '12 AWG']] };
    const blocks = blocksOf(statement({ name: 'r', value: step.result }, [step]));
    assert.equal(toText(blocks), 'r = 1.98 Ω/kft  [NEC (NFPA 70) 2023, Table 9, value from memory: size 12 AWG]');
    assert.equal(
      toMarkdown(blocks),
      '$r = 1.98\\,\\mathrm{\\Omega /kft}$ — NEC (NFPA 70) 2023, Table 9, value from memory: size 12 AWG',
    );
  });

  it('shows records and lists of records as tables', () => {
    const record = (a: number): Value => ({
      kind: 'record',
      name: 'row',
      fields: new Map<string, Value>([
        ['amps', quantity(a, 'A')],
        ['note', { kind: 'text', value: 'a|b' }],
      ]),
    });
    const list = blocksOf(statement({ name: 'panel', value: { kind: 'list', items: [record(1), record(20)] } }));
    assert.equal(toText(list), 'panel\n  amps  note\n  ----  ----\n  1 A   a|b\n  20 A  a|b');
    const one = blocksOf(statement({ name: 'x', value: record(2) }));
    assert.equal(toMarkdown(one), '**x**\n\n| field | value |\n| --- | --- |\n| amps | 2 A |\n| note | a\\|b |');
  });
});

describe('toText', () => {
  it('uses no escape codes unless a painter adds them', () => {
    const [block]: Block[] = [{ kind: 'verdict', verdict: 'no', label: 'fuse', latex: '', text: 'a < b' }];
    assert.equal(toText([block]), '✘ no  fuse: a < b');
    const mark = (sign: string) => (text: string) => sign + text + sign;
    const paint = { yes: mark('+'), no: mark('!'), doubt: mark('?'), faint: mark('.') };
    assert.equal(toText([block], { paint }), '!✘ no!  fuse: a < b');
  });
});

describe('toMarkdown', () => {
  const markdown = new MarkdownIt({ html: true });

  it('folds long groups and leaves short ones open', () => {
    const line: Block = { kind: 'maths', latex: 'x', text: 'x' };
    const group = (count: number): Block => ({ kind: 'group', title: 'f(a < b)', blocks: Array(count).fill(line) });
    assert.equal(toMarkdown([group(2)]), '**f(a \\< b)**\n\n$\\displaystyle x$\n\n$\\displaystyle x$');
    assert.match(
      toMarkdown([group(4)]),
      /^<details><summary>f\(a &lt; b\)<\/summary>\n\n\$\\displaystyle x\$[\s\S]*\n\n<\/details>$/,
    );
  });

  it('lets no text of the sheet become markup', () => {
    const parts = fc.constantFrom(
      '<b>',
      '</details>',
      '*',
      '_',
      '`',
      '[a](b)',
      '![',
      '|',
      '$',
      '$$',
      '\\',
      '&lt;',
      '# ',
      '- ',
      '1. ',
      '> ',
      '\n',
      '~~',
      '===',
      '---',
      'x',
    );
    const text = fc.array(parts, { maxLength: 8 }).map((pieces) => pieces.join(''));
    fc.assert(
      fc.property(text, (written) => {
        const blocks: Block[] = [
          { kind: 'choice', text: written, because: written },
          { kind: 'assumption', text: written },
          { kind: 'verdict', verdict: 'yes', label: written, latex: 'x', text: 'y', margin: written, advice: written },
          { kind: 'missing', text: written },
          { kind: 'table', head: ['a', 'b'], rows: [[written, written]] },
        ];
        for (const block of blocks) {
          const html = markdown
            .render(toMarkdown([block]))
            .replace(/<(\/?)(p|strong|table|thead|tbody|tr|th|td|code)>/g, '');
          assert.doesNotMatch(html, /</, toMarkdown([block]));
        }
      }),
    );
  });

  it('shows text of the sheet letter for letter, and what stands in backticks as code', () => {
    const written = 'a*b_c `d` <e> [f](g) | h \\ & i # j ~ k';
    const html = markdown.renderInline(toMarkdown([{ kind: 'assumption', text: written }]));
    const seen = html
      .replace(/<\/?code>/g, '`')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&amp;', '&');
    assert.equal(seen, `Assumed: ${written}`);
  });

  it('never breaks a formula out of its dollars', () => {
    const step: Step = {
      kind: 'formula',
      formula: { kind: 'text', text: '$$ x $$' },
      result: { kind: 'text', value: '$$ x $$' },
    };
    const lines = toMarkdown(blocksOf(statement({ name: 't', value: step.result }, [step])));
    assert.equal(lines.match(/(?<!\\)\$/g)?.length, 2);
  });

  it('sets remarks behind their formula, on its line', () => {
    const step: Step = { kind: 'formula', formula: value(3, 'V'), result: quantity(3, 'V'), remark: 'read *cold*' };
    const blocks = blocksOf(statement({ name: 'U', value: step.result }, [step]));
    assert.equal(toMarkdown(blocks), '$\\displaystyle U = 3\\,\\mathrm{V}$ — *read \\*cold\\**');
  });
});
