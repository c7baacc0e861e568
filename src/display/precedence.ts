import type { Maths } from '../language';

/** How tightly a formula holds together, loosest first; what is looser than its place needs brackets. */
export enum Precedence {
  If,
  Where,
  Or,
  And,
  Not,
  Comparison,
  PlusMinus,
  Sum,
  Sign,
  Product,
  Power,
  Atom,
}

const ofOperator = {
  where: Precedence.Where,
  or: Precedence.Or,
  and: Precedence.And,
  '==': Precedence.Comparison,
  '!=': Precedence.Comparison,
  '<': Precedence.Comparison,
  '<=': Precedence.Comparison,
  '>': Precedence.Comparison,
  '>=': Precedence.Comparison,
  '+': Precedence.Sum,
  '-': Precedence.Sum,
  '*': Precedence.Product,
  '/': Precedence.Product,
  '^': Precedence.Power,
} as const;

/** A number with its unit stands free in sums, products and quotients, and in brackets under a power. */
export function precedenceOf(maths: Maths): Precedence {
  switch (maths.kind) {
    case 'binary':
      return ofOperator[maths.operator];
    case 'unary':
      return maths.operator === 'not' ? Precedence.Not : Precedence.Sign;
    case 'if':
      return Precedence.If;
    case 'plus-minus':
      return Precedence.PlusMinus;
    case 'literal':
      return maths.number.startsWith('-') ? Precedence.Sign : besideUnit(maths.unit ?? '');
    case 'value':
      return precedenceOfValue(maths);
    default:
      return Precedence.Atom;
  }
}

function precedenceOfValue({ value }: Maths & { kind: 'value' }): Precedence {
  if (value.kind !== 'quantity') {
    return Precedence.Atom;
  }
  return value.base < 0 ? Precedence.Sign : besideUnit(value.unit.symbol);
}

/** `0.00323 1/°C` would be misread in a product, so it gets brackets there. */
const besideUnit = (symbol: string): Precedence =>
  symbol === '' ? Precedence.Atom : symbol.startsWith('1/') ? Precedence.Sum : Precedence.Power;

/** The least precedence that each side of an operator takes without brackets. */
export function sidesOf(operator: (Maths & { kind: 'binary' })['operator']): readonly [Precedence, Precedence] {
  const own = ofOperator[operator];
  switch (operator) {
    case '-':
      return [own, Precedence.Product];
    case '/':
      return [own, Precedence.Power];
    case '*':
      return [own, Precedence.Power];
    case '+':
      return [own, Precedence.Product];
    case '^':
      return [Precedence.Atom, Precedence.Atom];
    case 'and':
    case 'or':
      return [own, own];
    case 'where':
      return [Precedence.Or, Precedence.Or];
    default:
      return [Precedence.PlusMinus, Precedence.PlusMinus];
  }
}
