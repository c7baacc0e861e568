import type { LetterSymbol, Maths, Value } from '../language';
import { greek, greekLatex, isFunctionOf } from './letter-symbol';
import { numberLatex, type RoundedNumber } from './number';
import { Precedence, precedenceOf, sidesOf } from './precedence';
import { estimate, shownQuantity } from './quantity';
import { textLatex } from './text-latex';
import { unitLatex } from './unit-latex';
import { showValue } from './value';

const operators: Readonly<Record<string, string>> = {
  '+': '+',
  '-': '-',
  '*': '\\times',
  '==': '=',
  '!=': '\\ne',
  '<': '\\lt',
  '<=': '\\le',
  '>': '\\gt',
  '>=': '\\ge',
  and: '\\;\\text{and}\\;',
  or: '\\;\\text{or}\\;',
  where: '\\;\\text{where}\\;',
};

/** A formula as LaTeX in the subset that KaTeX and MathJax share. */
export function mathsLatex(maths: Maths): string {
  switch (maths.kind) {
    case 'value':
      return valueLatex(estimate(maths.value));
    case 'literal':
      return numberWithUnit(literalNumber(maths.number), maths.unit ?? '');
    case 'symbol':
      return symbolLatex(maths.symbol);
    case 'name':
      return nameLatex(maths.name);
    case 'text':
      return textLatex(maths.text);
    case 'binary':
      return binaryLatex(maths);
    case 'unary':
      return (maths.operator === 'not' ? '\\text{not }' : maths.operator) + inside(maths.operand, Precedence.Power);
    case 'call':
      return callLatex(maths);
    case 'list':
      return `\\left[${maths.items.map(mathsLatex).join(',\\,')}\\right]`;
    case 'if':
      return `\\begin{cases}${mathsLatex(maths.then)} & \\text{if } ${mathsLatex(maths.condition)}\\\\ ${mathsLatex(maths.otherwise)} & \\text{otherwise}\\end{cases}`;
    case 'plus-minus':
      return `${inside(maths.value, Precedence.Sum)} \\pm ${inside(maths.limits, Precedence.Sum)}`;
  }
}

/** A value as LaTeX: quantities are set as numbers with upright units, all else as text. */
export function valueLatex(value: Value, digits?: number): string {
  if (value.kind !== 'quantity') {
    return textLatex(showValue(value, digits));
  }
  const shown = shownQuantity(value, digits);
  const number = (n: RoundedNumber) => numberWithUnit(numberLatex(n), shown.unit.symbol);
  switch (shown.form) {
    case 'plain':
      return number(shown.value);
    case 'plus-minus':
      return `${number(shown.value)} \\pm ${number(shown.limits)}`;
    case 'interval':
      return `${number(shown.value)}\\;\\left(${number(shown.low)}\\text{ to }${number(shown.high)}\\right)`;
    case 'at least':
    case 'at most':
      return `\\text{${shown.form} }${number(shown.value)}`;
    case 'unbounded':
      return Number.isNaN(shown.value)
        ? '\\text{not a number}'
        : numberWithUnit(shown.value < 0 ? '-\\infty ' : '\\infty ', shown.unit.symbol);
  }
}

/** One letter is set in italics with its subscript upright, `cos_phi` as a function, words upright. */
export function symbolLatex(symbol: LetterSymbol): string {
  const subscript = symbol.subscript ? greek(symbol.subscript) : '';
  if (isFunctionOf(symbol)) {
    return `\\${symbol.base} ${letters(subscript)}`;
  }
  const base = letters(greek(symbol.base));
  return subscript === '' ? base : `${base}_{${greekLatex(subscript) ?? upright(subscript)}}`;
}

/** A name as typed, dots and underscores included; behind a single letter an underscore makes a subscript. */
export function nameLatex(name: string): string {
  const [, word, digits] = /^(.+?)([\u2080-\u209c]+)$/.exec(name) ?? [];
  if (word !== undefined) {
    return `${nameLatex(word)}_{${upright(digits.normalize('NFKC'))}}`; // Subscript characters become plain ones.
  }
  const [, base, subscript] = /^(\p{L})(?:_(\w+))?$/u.exec(name) ?? [];
  return base === undefined ? upright(name) : symbolLatex({ base, subscript });
}

const letters = (text: string): string => greekLatex(text) ?? (/^[A-Za-z]$/.test(text) ? text : upright(text));

const upright = (text: string): string =>
  /^[A-Za-z0-9_.]+$/.test(text) ? `\\mathrm{${text.replaceAll('_', '\\_')}}` : textLatex(text);

const numberWithUnit = (number: string, unit: string): string =>
  unit === '' ? number : unit === '°' ? `${number}^{\\circ}` : `${number}\\,${unitLatex(unit)}`;

/** An author's number keeps its digits; `1e-6` becomes a power of ten. */
const literalNumber = (text: string): string =>
  text.replace(/[eE]\+?(-?)0*(\d+)$/, '\\times 10^{$1$2}').replace(/[,_]/g, '{,}');

function binaryLatex({ operator, left, right }: Maths & { kind: 'binary' }): string {
  if (operator === '/') {
    return `\\frac{${mathsLatex(left)}}{${mathsLatex(right)}}`;
  }
  const [leftLevel, rightLevel] = sidesOf(operator);
  return operator === '^'
    ? `{${inside(left, leftLevel)}}^{${mathsLatex(right)}}`
    : `${inside(left, leftLevel)} ${operators[operator]} ${inside(right, rightLevel)}`;
}

/** Functions whose names LaTeX knows. */
const knownFunctions = new Set(['min', 'max', 'sin', 'cos', 'tan', 'ln', 'log', 'exp']);

function callLatex({ name, arguments: given }: Maths & { kind: 'call' }): string {
  const list = given.map(({ name: label, value }) => (label ? `${upright(label)}\\colon\\,` : '') + mathsLatex(value));
  if (name === 'sqrt' && list.length === 1) {
    return `\\sqrt{${list[0]}}`;
  }
  if (name === 'abs' && list.length === 1) {
    return `\\left|${list[0]}\\right|`;
  }
  return `${knownFunctions.has(name) ? `\\${name}` : upright(name)}\\left(${list.join(',\\,')}\\right)`;
}

/** A fraction holds its parts together by itself, so only its place under a power asks for brackets. */
const inside = (maths: Maths, least: Precedence): string =>
  precedenceOf(maths) < least && !(isFraction(maths) && least < Precedence.Atom)
    ? `\\left(${mathsLatex(maths)}\\right)`
    : mathsLatex(maths);

const isFraction = (maths: Maths): boolean => maths.kind === 'binary' && maths.operator === '/';
