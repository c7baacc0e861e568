import type { Maths } from '../language';
import { symbolText } from './letter-symbol';
import { superscript } from './number';
import { Precedence, precedenceOf, sidesOf } from './precedence';
import { estimate } from './quantity';
import { oneLine, showValue, withUnit } from './value';

const signs: Partial<Record<string, string>> = { '*': '×', '==': '=', '!=': '≠', '<=': '≤', '>=': '≥' };

/** A formula on one line of plain text: `U / R`, `207.6 V / 11.9 Ω`, `(20 A)² × R`. */
export function mathsText(maths: Maths): string {
  switch (maths.kind) {
    case 'value':
      return showValue(estimate(maths.value));
    case 'literal':
      return withUnit(maths.number, { symbol: maths.unit ?? '' });
    case 'symbol':
      return symbolText(maths.symbol);
    case 'name':
      return maths.name;
    case 'text':
      return oneLine(maths.text);
    case 'binary':
      return binaryText(maths);
    case 'unary':
      return `${maths.operator}${maths.operator === 'not' ? ' ' : ''}${inside(maths.operand, Precedence.Power)}`;
    case 'call':
      return callText(maths);
    case 'list':
      return `[${maths.items.map(mathsText).join(', ')}]`;
    case 'if':
      return `if ${mathsText(maths.condition)} then ${mathsText(maths.then)} else ${mathsText(maths.otherwise)}`;
    case 'plus-minus':
      return `${inside(maths.value, Precedence.Sum)} ± ${inside(maths.limits, Precedence.Sum)}`;
  }
}

function binaryText({ operator, left, right }: Maths & { kind: 'binary' }): string {
  const [leftLevel, rightLevel] = sidesOf(operator);
  const base = inside(left, leftLevel);
  if (operator !== '^') {
    return `${base} ${signs[operator] ?? operator} ${inside(right, rightLevel)}`;
  }
  const power = right.kind === 'literal' && right.unit === undefined ? Number(right.number) : Number.NaN;
  return Number.isInteger(power) ? base + superscript(power) : `${base}^${inside(right, rightLevel)}`;
}

const callText = ({ name, arguments: given }: Maths & { kind: 'call' }): string => {
  const list = given
    .map((argument) => (argument.name ? `${argument.name}: ` : '') + mathsText(argument.value))
    .join(', ');
  return name === 'sqrt' ? `√(${list})` : `${name}(${list})`;
};

const inside = (maths: Maths, least: Precedence): string =>
  precedenceOf(maths) < least ? `(${mathsText(maths)})` : mathsText(maths);
