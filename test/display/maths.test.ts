import assert from 'node:assert/strict';
import fc from 'fast-check';
import katex from 'katex';
import { mathsLatex, mathsText, valueLatex } from '../../src/display';
import { unitLatex } from '../../src/display/unit-latex';
import type { Maths } from '../../src/language';
import { unitWords } from '../../src/units';
import { binary, call, choose, literal, name, quantity, uncertain, value } from './values';

/** Typesets, and fails on anything that KaTeX does not take as standard LaTeX; gives back the text that is seen. */
function typeset(latex: string): string {
  const html = katex.renderToString(latex, {
    throwOnError: true,
    strict: 'error',
    displayMode: true,
    output: 'mathml',
  });
  return html
    .replace(/<annotation[\s\S]*?<\/annotation>/g, '')
    .replace(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', "'")
    .replaceAll('&amp;', '&');
}

describe('formulas as text and as LaTeX', () => {
  const a = name('a');
  const b = name('b');
  const c = name('c');
  const cases: readonly (readonly [maths: Maths, text: string, latex: string])[] = [
    [binary(name('U'), '/', name('R')), 'U / R', '\\frac{U}{R}'],
    [
      binary(value(207.6, 'V'), '/', value(11.9, 'Ω')),
      '207.6 V / 11.9 Ω',
      '\\frac{207.6\\,\\mathrm{V}}{11.9\\,\\mathrm{\\Omega }}',
    ],
    [binary(literal('3.0', '%'), '<=', literal('4')), '3.0 % ≤ 4', '3.0\\,\\mathrm{\\%} \\le 4'],
    [binary(binary(a, '+', b), '*', c), '(a + b) × c', '\\left(a + b\\right) \\times c'],
    [binary(a, '-', binary(b, '-', c)), 'a - (b - c)', 'a - \\left(b - c\\right)'],
    [binary(binary(a, '-', b), '-', c), 'a - b - c', 'a - b - c'],
    [binary(a, '/', binary(b, '/', c)), 'a / (b / c)', '\\frac{a}{\\frac{b}{c}}'],
    [binary(a, '/', binary(b, '*', c)), 'a / (b × c)', '\\frac{a}{b \\times c}'],
    [binary(binary(a, '/', b), '*', c), 'a / b × c', '\\frac{a}{b} \\times c'],
    [binary(value(20, 'A'), '^', literal('2')), '(20 A)²', '{\\left(20\\,\\mathrm{A}\\right)}^{2}'],
    [binary(a, '^', literal('-1')), 'a⁻¹', '{a}^{-1}'],
    [binary(a, '^', b), 'a^b', '{a}^{b}'],
    [binary(a, '^', binary(b, '+', c)), 'a^(b + c)', '{a}^{b + c}'],
    [binary(binary(a, '/', b), '^', literal('2')), '(a / b)²', '{\\left(\\frac{a}{b}\\right)}^{2}'],
    [{ kind: 'unary', operator: '-', operand: binary(a, '+', b) }, '-(a + b)', '-\\left(a + b\\right)'],
    [binary(a, '-', value(-3, 'V')), 'a - (-3 V)', 'a - \\left(-3\\,\\mathrm{V}\\right)'],
    [
      binary(a, '*', value(0.004, '1/°C')),
      'a × (0.004 1/°C)',
      'a \\times \\left(0.004\\,\\mathrm{1/{{}^{\\circ}}C}\\right)',
    ],
    [call('sqrt', literal('3')), '√(3)', '\\sqrt{3}'],
    [call('min', a, b), 'min(a, b)', '\\min\\left(a,\\,b\\right)'],
    [call('line_current', a), 'line_current(a)', '\\mathrm{line\\_current}\\left(a\\right)'],
    [{ kind: 'symbol', symbol: { base: 'I', subscript: 'load' } }, 'I_load', 'I_{\\mathrm{load}}'],
    [{ kind: 'symbol', symbol: { base: 'R', subscript: '75' } }, 'R₇₅', 'R_{\\mathrm{75}}'],
    [{ kind: 'symbol', symbol: { base: 'alpha' } }, 'α', '\\alpha'],
    [{ kind: 'symbol', symbol: { base: 'cos', subscript: 'phi' } }, 'cos φ', '\\cos \\phi'],
    [name('kiln.drop_percent'), 'kiln.drop_percent', '\\mathrm{kiln.drop\\_percent}'],
    [name('ρ'), 'ρ', '\\rho'],
    [name('R₂'), 'R₂', 'R_{\\mathrm{2}}'],
    [binary({ kind: 'unary', operator: '-', operand: a }, '+', b), '-a + b', '-a + b'],
    [{ kind: 'list', items: [a, b] }, '[a, b]', '\\left[a,\\,b\\right]'],
    [binary(binary(a, '<', b), 'and', c), 'a < b and c', 'a \\lt b \\;\\text{and}\\; c'],
    [
      { kind: 'plus-minus', value: literal('13.2', 'Ω'), limits: literal('2', '%') },
      '13.2 Ω ± 2 %',
      '13.2\\,\\mathrm{\\Omega } \\pm 2\\,\\mathrm{\\%}',
    ],
    [
      choose(binary(a, '>', b), a, b),
      'if a > b then a else b',
      '\\begin{cases}a & \\text{if } a \\gt b\\\\ b & \\text{otherwise}\\end{cases}',
    ],
    [{ kind: 'text', text: '12 AWG Cu' }, '12 AWG Cu', '\\text{12 AWG Cu}'],
    [literal('1.5e-9', 'F'), '1.5e-9 F', '1.5\\times 10^{-9}\\,\\mathrm{F}'],
    [{ kind: 'value', value: uncertain(15.72, 'A', 15.5, 15.9) }, '15.72 A', '15.72\\,\\mathrm{A}'],
  ];
  for (const [maths, text, latex] of cases) {
    it(`writes ${text}`, () => {
      assert.equal(mathsText(maths), text);
      assert.equal(mathsLatex(maths), latex);
      typeset(latex);
    });
  }

  it('typesets every unit', () => {
    for (const { symbol } of unitWords.values()) {
      typeset(unitLatex(symbol));
      typeset(unitLatex(`${symbol}²/(kft·°C)`));
    }
    typeset(unitLatex('V^(1/2)·s⁻¹'));
  });

  it('typesets every form of a value', () => {
    const values = [
      quantity(Number.NaN, 'V'),
      quantity(Number.NEGATIVE_INFINITY, 'V'),
      quantity(12345.6, 'ton_r'),
      quantity(30, '°'),
      uncertain(15.7, 'A', 15.5, 15.9),
      uncertain(10, 'A', 9.8, 10.6),
      uncertain(40, 'MΩ', 40, Number.POSITIVE_INFINITY),
    ];
    for (const shown of values) {
      typeset(valueLatex(shown));
    }
  });

  it('typesets any text as itself', () => {
    const printable = fc.stringMatching(/^[ -~]{0,40}$/);
    fc.assert(
      fc.property(printable, (text) => {
        const seen = typeset(mathsLatex({ kind: 'text', text })).replace(/[\s\u00a0]/g, '');
        const wanted = text.replaceAll('\\', '\\').replaceAll('~', '∼').replaceAll('^', '∧').replace(/\s/g, '');
        // KaTeX makes typographic quotes and dashes of the typewriter's, as LaTeX does.
        const plain = (s: string) => s.replace(/[`'"‘’“”]/g, '').replace(/[-–—]/g, '');
        assert.equal(plain(seen), plain(wanted));
      }),
    );
  });
});

const leaf: fc.Arbitrary<Maths> = fc.oneof(
  fc.constantFrom('a', 'I_load', 'left_on_reel', 'kiln.drop', 'ρ', 'Längsspannung', 'R₂').map(name),
  fc.tuple(fc.double({ noNaN: true }), fc.constantFrom('V', 'Ω/kft', '%', '°C', '')).map(([x, u]) => value(x, u)),
  fc.constantFrom(literal('3.0', '%'), literal('2'), literal('1e6', 'Ω')),
);

const formula = fc.letrec<{ maths: Maths }>((tie) => ({
  maths: fc.oneof(
    { depthSize: 'small' },
    leaf,
    fc
      .tuple(tie('maths'), fc.constantFrom('+', '-', '*', '/', '^', '==', '<=', 'and', 'or'), tie('maths'))
      .map(([left, operator, right]) => binary(left, operator as '+', right)),
    tie('maths').map((operand): Maths => ({ kind: 'unary', operator: '-', operand })),
    tie('maths').map((argument) => call('sqrt', argument)),
    tie('maths').map((argument) => call('drop_of', argument)),
  ),
})).maths;

describe('any formula', () => {
  it('typesets, on one line', () => {
    fc.assert(
      fc.property(formula, (maths) => {
        // Accented letters are unusual in mathematics but stand in \text, so nothing here may be refused.
        typeset(mathsLatex(maths));
        assert.doesNotMatch(mathsLatex(maths) + mathsText(maths), /[\r\n]/);
      }),
    );
  });
});
