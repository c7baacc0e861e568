import { nameEnd, skipBlanks } from '../scanning/characters';
import { Token } from '../scanning/token';
import { Node, Operator } from '../tree';
import { readGroup } from './brackets';
import { readMember, readName, readOperand } from './operands';
import { readNumberOrSize } from './quantities';
import { maximumDepth, type Reader, replace } from './reader';

/** How strongly operators bind, from loose to tight. */
export enum Strength {
  Where = 1,
  Or,
  And,
  Not,
  Comparison,
  Convert,
  Sum,
  Product,
  Sign,
  Power,
  Reading,
}

/** The strength of each token as an infix operator; 0 for those that are none. */
const strengths = new Uint8Array(Token.Unknown + 1);
const operators = new Uint8Array(Token.Unknown + 1);
for (const [token, strength, operator] of [
  [Token.Where, Strength.Where, Operator.None],
  [Token.Or, Strength.Or, Operator.Or],
  [Token.And, Strength.And, Operator.And],
  [Token.Assign, Strength.Comparison, Operator.Equal],
  [Token.Equal, Strength.Comparison, Operator.Equal],
  [Token.NotEqual, Strength.Comparison, Operator.NotEqual],
  [Token.Less, Strength.Comparison, Operator.Less],
  [Token.LessOrEqual, Strength.Comparison, Operator.LessOrEqual],
  [Token.Greater, Strength.Comparison, Operator.Greater],
  [Token.GreaterOrEqual, Strength.Comparison, Operator.GreaterOrEqual],
  [Token.In, Strength.Convert, Operator.None],
  [Token.Plus, Strength.Sum, Operator.Add],
  [Token.Minus, Strength.Sum, Operator.Subtract],
  [Token.Times, Strength.Product, Operator.Multiply],
  [Token.Divide, Strength.Product, Operator.Divide],
  [Token.Power, Strength.Power, Operator.Power],
  [Token.Superscript, Strength.Power, Operator.Power],
  [Token.PlusMinus, Strength.Reading, Operator.None],
  [Token.By, Strength.Reading, Operator.None],
] as const) {
  strengths[token] = strength;
  operators[token] = operator;
}

/**
 * Reads an expression whose operators bind at least as strongly as `least`. Sums and products are read here and not
 * elsewhere: what is in one piece is not compiled into each of its callers, for which a cold start would wait.
 */
export function readExpression(r: Reader, least: number = Strength.Where): number {
  const { tree } = r;
  if (r.nesting >= maximumDepth) {
    return tooDeep(r);
  }
  r.nesting++;
  let left: number;
  switch (r.token) {
    case Token.Number:
      left = readMembers(r, readNumberOrSize(r));
      break;
    case Token.Name:
      left = readMembers(r, readName(r));
      break;
    case Token.OpenParenthesis:
      left = readMembers(r, readGroup(r));
      break;
    case Token.Minus:
      left = readUnary(r, Operator.Negate, Strength.Power);
      break;
    case Token.Plus:
      left = readUnary(r, Operator.Plus, Strength.Power);
      break;
    case Token.Not:
      left = readUnary(r, Operator.Not, Strength.Comparison);
      break;
    case Token.If:
      left = readIf(r, r.start);
      break;
    default:
      left = readMembers(r, readOperand(r));
  }
  for (;;) {
    if (tree.heights[left] > maximumDepth) {
      left = tooHigh(r, left);
    }
    if (r.token === Token.LineEnd && !r.runOnToOperator()) {
      break;
    }
    const { token } = r;
    const strength = strengths[token];
    if (strength < least || strength === 0) {
      break;
    }
    if ((strength === Strength.Product || strength === Strength.Sum) && !isForeign(r)) {
      r.advance();
      r.runOn();
      const right = readExpression(r, strength + 1);
      tree.link(left, right);
      left = tree.parent(Node.Binary, tree.starts[left], tree.ends[right], left);
      tree.operators[left] = operators[token];
    } else {
      left = readInfix(r, left, strength);
    }
  }
  r.nesting--;
  return left;
}

/** What stands for a node that is higher than every walk down the tree can take. */
function tooHigh(r: Reader, node: number): number {
  const instead = tooDeep(r);
  r.tree.starts[instead] = r.tree.starts[node];
  return instead;
}

function tooDeep(r: Reader): number {
  if (!r.isLineBroken) {
    r.report(
      'nested-too-deep',
      r.start,
      r.end,
      `This expression holds more than ${maximumDepth} steps within one another. Give a part of it a name on a line of its own, or add up a list with \`sum\`.`,
    );
  }
  const skipped = r.skipTo();
  return skipped < 0 ? r.absent() : skipped;
}

/** What was read, or the members (`.field`) that are taken out of it. */
function readMembers(r: Reader, operand: number): number {
  let last = operand;
  while (r.token === Token.Dot) {
    last = readMember(r, last);
  }
  return last;
}

function readUnary(r: Reader, operator: Operator, strength: Strength): number {
  const { start } = r;
  r.advance();
  r.runOn();
  const operand = readExpression(r, strength);
  const node = r.tree.parent(Node.Unary, start, r.tree.ends[operand], operand);
  r.tree.operators[node] = operator;
  return node;
}

/** True before `**` and `+/-`, operators of other languages. */
function isForeign({ token, codes, end }: Reader): boolean {
  const next = codes[end];
  return (next === 42 && token === Token.Times) || (next === 47 && token === Token.Plus && codes[end + 1] === 45);
}

/** Reads any other operator with what stands behind it. */
function readInfix(r: Reader, left: number, strength: number): number {
  const { tree, token, start } = r;
  switch (token) {
    case Token.In:
      return readConversion(r, left);
    case Token.By:
      return readMeter(r, left);
    case Token.Superscript: {
      const right = r.take(Node.Number);
      tree.numbers[right] = r.codes[start] === 0xb2 ? 2 : 3;
      return binary(r, left, right, token);
    }
    case Token.Power:
      r.advance();
      r.runOn();
      return binary(r, left, readExpression(r, Strength.Sign), token);
    case Token.Assign:
      return readAssign(r, left);
    case Token.Times:
    case Token.Plus:
      return readForeign(r, left);
    default:
  }
  if (strength === Strength.Comparison) {
    return comparison(r, left, token);
  }
  r.advance();
  r.runOn();
  return binary(r, left, readExpression(r, strength + 1), token);
}

/** An operator as other languages write it. */
function readForeign(r: Reader, left: number): number {
  const { token, start, end } = r;
  if (token === Token.Times) {
    r.report('foreign-power', start, end + 1, 'A power is written with `^`.', replace('Write ^', start, end + 1, '^'));
    r.advance();
    r.advance();
    return binary(r, left, readExpression(r, Strength.Sign), Token.Power);
  }
  r.report(
    'foreign-plus-minus',
    start,
    start + 3,
    'Limits are written with `±` or `+-`.',
    replace('Write ±', start, start + 3, '±'),
  );
  r.advance();
  r.advance();
  r.advance();
  return binary(r, left, readExpression(r, Strength.Reading + 1), Token.PlusMinus);
}

/** `=` where a comparison stands, or the comparison that it begins when turned round. */
function readAssign(r: Reader, left: number): number {
  const { start, end } = r;
  const turned = turnedComparisons[r.text[end]];
  if (turned && r.codes[end + 1] !== 61) {
    r.report(
      'turned-comparison',
      start,
      end + 1,
      `The sign is written \`${turned.sign}\`.`,
      replace(`Write ${turned.sign}`, start, end + 1, turned.sign),
    );
    r.advance();
    return comparison(r, left, turned.token);
  }
  if (!r.isLineBroken) {
    r.report(
      'equals-for-comparison',
      start,
      end,
      'A single `=` gives a name its value and cannot stand inside an expression. To compare, write `==`.',
      replace('Write ==', start, end, '=='),
    );
  }
  return comparison(r, left, Token.Assign);
}

/** Signs that begin with the equals sign and do not exist, by their second character. */
const turnedComparisons: Readonly<Record<string, { readonly sign: string; readonly token: Token }>> = {
  '>': { sign: '>=', token: Token.GreaterOrEqual },
  '<': { sign: '<=', token: Token.LessOrEqual },
};

/** The comparison whose sign is the current token. */
function comparison(r: Reader, left: number, token: Token): number {
  r.advance();
  r.runOn();
  const right = readExpression(r, Strength.Comparison + 1);
  const node = binary(r, left, right, token);
  if (strengths[r.token] === Strength.Comparison) {
    reportChain(r, right);
  }
  return node;
}

function binary(r: Reader, left: number, right: number, token: Token): number {
  const { tree } = r;
  tree.link(left, right);
  const kind = token === Token.PlusMinus ? Node.PlusMinus : token === Token.Where ? Node.Where : Node.Binary;
  const node = tree.parent(kind, tree.starts[left], tree.ends[right], left);
  tree.operators[node] = operators[token];
  return node;
}

function reportChain(r: Reader, middle: number): void {
  const again = r.text.slice(r.tree.starts[middle], r.tree.ends[middle]);
  r.report(
    'chained-comparison',
    r.start,
    r.end,
    `A comparison has two sides, and this is a third. Write two comparisons joined by \`and\`.`,
    replace(`Write "and ${again}" before it`, r.start, r.start, `and ${again} `),
  );
}

/** `expression in unit`; the unit is any word, so that the checker can say which unit was meant. */
function readConversion(r: Reader, left: number): number {
  const { tree, codes } = r;
  const from = skipBlanks(codes, r.end);
  let end = r.units.readUnit(codes, from);
  if (end <= from) {
    end = nameEnd(codes, from);
  }
  if (end <= from) {
    r.report(
      'missing-unit',
      r.start,
      r.end,
      '`in` converts to a unit, and none follows. Write the unit behind it, such as `in A`.',
    );
    r.advance();
    return left;
  }
  const node = tree.parent(Node.Convert, tree.starts[left], end, left);
  tree.units[node] = tree.unitTexts.add(from, end);
  r.lastStart = from;
  r.resume(end);
  return node;
}

/** `expression by meter` */
function readMeter(r: Reader, left: number): number {
  const { tree, start, end } = r;
  r.advance();
  if (r.token !== Token.Name) {
    const isNumber = r.token === Token.Number;
    r.report(
      'missing-meter',
      start,
      end,
      `\`by\` names the meter that took the reading, and no name follows. Write the name of a meter defined with \`meter(…)\`${isNumber ? ', or `±` before limits' : ''}.`,
      isNumber ? replace('Write ±', start, end, '±', false) : [],
    );
    return left;
  }
  tree.link(left, r.take(Node.Name));
  return tree.parent(Node.Reading, tree.starts[left], r.lastEnd, left);
}

function readIf(r: Reader, start: number): number {
  const { tree } = r;
  r.advance();
  r.runOn();
  const condition = readExpression(r);
  const first = condition;
  let last = readBranch(r, Token.Then, 'then', condition);
  last = readBranch(r, Token.Else, 'else', last);
  return tree.parent(Node.If, start, Math.max(r.tree.ends[last], start), first);
}

/** Reads `then expression` or `else expression` and links it behind `before`. */
function readBranch(r: Reader, token: Token, word: 'then' | 'else', before: number): number {
  const { tree } = r;
  if (r.token === Token.LineEnd) {
    r.runOnToOperator();
  }
  if (r.token === token) {
    r.advance();
    r.runOn();
    return tree.link(before, readExpression(r));
  }
  if (!r.isLineBroken) {
    r.report(
      `missing-${word}`,
      r.lastStart,
      r.lastEnd,
      `An \`if\` is written \`if condition then value else value\`, and its \`${word}\` is missing. Write \`${word}\` and a value here.`,
    );
  }
  return tree.link(before, r.absent());
}
