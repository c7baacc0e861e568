import { parseUnit, toBase } from '../../units';
import { Node, Operator, type SyntaxTree, textOf } from '../syntax/tree';
import { type Expression, valueChildren } from './expression';

/** Two values taken for every part that stays whole: a chance hit at one of them is not one at both. */
const trials = [1, 2];

/** Rounding leaves this much of the largest term. */
const rounding = 1e-9;

/**
 * True when an expression is zero whatever its parts are, as `R - R` is: tried with arbitrary numbers in the place of
 * names and of parts that stay whole, the same for the same text.
 */
export const isAlwaysZero = (tree: SyntaxTree, expression: Expression): boolean =>
  trials.every((trial) => {
    const { value, largest } = evaluate(tree, expression, trial);
    return Math.abs(value) <= rounding * largest;
  });

/** True when an expression is of literals alone, so that it is what it is whatever the sheet says. */
export function isLiteral(tree: SyntaxTree, expression: Expression): boolean {
  switch (expression.kind) {
    case 'number':
      return true;
    case 'written':
      return !expression.put && isLiteralNode(tree, expression.node);
    case 'binary':
      return isLiteral(tree, expression.left) && isLiteral(tree, expression.right);
    case 'negated':
    case 'converted':
      return isLiteral(tree, expression.operand);
    default:
      return false;
  }
}

const literalKinds: ReadonlySet<Node> = new Set([
  Node.Number,
  Node.Quantity,
  Node.Group,
  Node.Convert,
  Node.Unary,
  Node.Binary,
]);

const isLiteralNode = (tree: SyntaxTree, node: number): boolean =>
  literalKinds.has(tree.kinds[node]) && valueChildren(tree, node).every((child) => isLiteralNode(tree, child));

interface Trial {
  readonly value: number;
  /** The largest number that went into the value. */
  readonly largest: number;
}

function evaluate(tree: SyntaxTree, expression: Expression, trial: number): Trial {
  const inner = (part: Expression) => evaluate(tree, part, trial);
  switch (expression.kind) {
    case 'number':
      return { value: expression.value, largest: Math.abs(expression.value) };
    case 'unknown':
      return arbitrary(expression.name, trial);
    case 'written':
      return expression.put
        ? arbitrary(textWith(tree, expression, trial), trial)
        : evaluateWritten(tree, expression.node, trial);
    case 'negated': {
      const { value, largest } = inner(expression.operand);
      return { value: -value, largest };
    }
    case 'converted':
      return inner(expression.operand);
    case 'call':
      return arbitrary(`${expression.name} of ${inner(expression.argument).value}`, trial);
    case 'binary':
      return combine(expression.operator, inner(expression.left), inner(expression.right));
  }
}

/** A part as written: its literals are what they say, its arithmetic is done. */
function evaluateWritten(tree: SyntaxTree, node: number, trial: number): Trial {
  const { kinds, operators, firstChildren, nextSiblings, numbers } = tree;
  const first = firstChildren[node];
  switch (kinds[node] as Node) {
    case Node.Number:
      return { value: numbers[node], largest: Math.abs(numbers[node]) };
    case Node.Quantity: {
      const unit = parseUnit(tree.unitTexts[tree.units[node]]);
      const value = 'problem' in unit ? numbers[node] : toBase(numbers[node], unit);
      return { value, largest: Math.abs(value) };
    }
    case Node.Group:
    case Node.Convert:
      return evaluateWritten(tree, first, trial);
    case Node.Unary: {
      const { value, largest } = evaluateWritten(tree, first, trial);
      return { value: operators[node] === Operator.Negate ? -value : value, largest };
    }
    case Node.Binary:
      return combine(
        operators[node] as Operator,
        evaluateWritten(tree, first, trial),
        evaluateWritten(tree, nextSiblings[first], trial),
      );
    default:
      return arbitrary(textOf(tree, node).replace(/\s+/g, ''), trial);
  }
}

function combine(operator: Operator, a: Trial, b: Trial): Trial {
  switch (operator) {
    case Operator.Add:
      return { value: a.value + b.value, largest: Math.max(a.largest, b.largest) };
    case Operator.Subtract:
      return { value: a.value - b.value, largest: Math.max(a.largest, b.largest) };
    case Operator.Multiply:
      return { value: a.value * b.value, largest: a.largest * b.largest };
    case Operator.Divide:
      return { value: a.value / b.value, largest: a.largest / Math.abs(b.value) };
    default: {
      const value = Math.abs(a.value) ** b.value;
      return { value, largest: value };
    }
  }
}

/** A part as written, with the numbers of what was put into it. */
function textWith(tree: SyntaxTree, { node, put }: Expression & { kind: 'written' }, trial: number): string {
  const text = textOf(tree, node).replace(/\s+/g, '');
  return [text, ...[...(put ?? [])].map(([name, part]) => `${name}:${evaluate(tree, part, trial).value}`)].join('|');
}

/** A number between 1 and 2 that follows from the text (FNV-1a). */
function arbitrary(text: string, trial: number): Trial {
  let hash = 0x811c9dc5 ^ trial;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  const value = 1 + (hash >>> 0) / 2 ** 32;
  return { value, largest: value };
}
