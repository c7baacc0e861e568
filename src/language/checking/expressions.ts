import type { Span } from '../../text';
import type { UnitProblem } from '../../units';
import { constants } from '../mathematics/constants';
import { checkSolution, checkTogether } from '../solving/check-solution';
import { Node, nameOf, unitSpanOf } from '../syntax/tree';
import { checkCall } from './calls';
import { type Checker, replacing } from './checker';
import { checkConversion, checkIf, checkList, checkMember } from './composites';
import { checkDesignation } from './designations';
import { checkWhere } from './lists';
import { nearest } from './nearest';
import { checkBinary, checkUnary } from './operators';
import { checkOverRange } from './over-range';
import { checkPlusMinus, checkReading } from './readings';
import type { Type } from './type';
import { booleanType, plainNumberType, textType, unknownType } from './types';

/** Infers the type of an expression, notes it for every node and reports what is wrong. */
export function check(c: Checker, node: number): Type {
  let type: Type | undefined;
  switch (c.tree.kinds[node] as Node) {
    case Node.Number:
      type = plainNumberType();
      break;
    case Node.Quantity:
      type = c.meaning.quantityAt(node) ?? checkQuantity(c, node);
      break;
    case Node.Name: {
      const name = c.locals ? undefined : c.meaning.nameAt(node);
      type = name?.definition && name.type.kind !== 'unknown' ? name.type : checkName(c, node);
      break;
    }
    case Node.Group:
      type = check(c, c.tree.firstChildren[node]);
      break;
    case Node.Binary:
      type = checkBinary(c, node);
      break;
    case Node.Unary:
      type = checkUnary(c, node);
      break;
    case Node.Convert:
      type = checkConversion(c, node);
      break;
    default:
      type = infer(c, node);
  }
  c.meaning.types[node] = type;
  return type;
}

/** The type of what expressions are made of less often. */
function infer(c: Checker, node: number): Type {
  switch (c.tree.kinds[node] as Node) {
    case Node.Member:
      return checkMember(c, node);
    case Node.Call:
    case Node.BlockCall:
      return checkCall(c, node);
    case Node.Designation:
      return checkDesignation(c, node);
    case Node.If:
      return checkIf(c, node);
    case Node.List:
      return checkList(c, node);
    case Node.Text:
      return textType;
    case Node.Yes:
    case Node.No:
      return booleanType;
    case Node.PlusMinus:
      return checkPlusMinus(c, node);
    case Node.Reading:
      return checkReading(c, node);
    case Node.Solution:
      return checkSolution(c, node);
    case Node.Together:
      return checkTogether(c, node);
    case Node.OverRange:
      return checkOverRange(c, node);
    case Node.Where:
      return checkWhere(c, node);
    default:
      return unknownType; // An Error node: the parser has spoken.
  }
}

/** Of a quantity whose unit is none. */
function checkQuantity(c: Checker, node: number): Type {
  const unit = c.meaning.unitAt(node);
  if ('problem' in unit) {
    reportUnknownUnit(c, node, unit);
  }
  return unknownType;
}

/** Reports a unit that is none, at the unit's own text. */
export function reportUnknownUnit(c: Checker, node: number, unit: UnitProblem): void {
  const { unitTexts, units } = c.tree;
  const span = unitSpanOf(c.tree, node);
  const text = unitTexts[units[node]];
  const suggestion = isPrefix(text) ? undefined : unit.suggestion;
  const choices = twoFigures(c, node);
  if (choices) {
    const written = c.tree.text.slice(choices.span.start, choices.span.end);
    const advice = `\`/\` divides, so \`${written}\` is no single value. Write the one that is meant, ${choices.each.map((one) => `\`${one}\``).join(' or ')}, or each under a name of its own.`;
    c.report('unknown-unit', span, `${unit.problem} ${advice}`, {
      fixes: choices.each.map((one) => replacing(`Write ${one}`, choices.span, one)),
    });
    return;
  }
  const advice = suggestion === undefined ? adviceOn(text) : `Did you mean \`${suggestion}\`?`;
  const message = unit.problem.endsWith('a unit.') ? `${unit.problem} ${advice}` : unit.problem;
  c.report('unknown-unit', span, message, {
    fixes: suggestion === undefined ? undefined : [replacing(`Replace ${text} by ${suggestion}`, span, suggestion)],
  });
}

/** Two figures of one unit, parted by a letter and a stroke: `480Y/277 V`. They name a system elsewhere. */
function twoFigures(
  c: Checker,
  node: number,
): { readonly span: Span; readonly each: readonly [string, string] } | undefined {
  const start = c.tree.starts[node];
  const [written, first, second, unit] =
    /^(\d[\d.]*)\s?\p{L}{1,5}\/(\d[\d.]*)\s?(\p{L}+)/u.exec(c.tree.text.slice(start, start + 40)) ?? [];
  return written === undefined || unitSpanOf(c.tree, node).start > start + written.length
    ? undefined
    : { span: { start, end: start + written.length }, each: [`${first} ${unit}`, `${second} ${unit}`] };
}

const isPrefix = (text: string): boolean => /^[kMGuµμnp]$/.test(text);

/** Every name that may stand here. */
export function* namesKnown(c: Checker): Generator<string> {
  yield* c.locals?.keys() ?? [];
  for (const name of c.context.names.defined()) {
    yield name.text;
  }
}

/** What to do about a word that stands where a unit stands and is like none. */
function adviceOn(text: string): string {
  return isPrefix(text)
    ? `It is a prefix and stands before a unit, such as \`${text}Ω\` or \`${text}W\`.`
    : 'Write one such as V, A, Ω, kW or ft, or take the word out.';
}

function checkName(c: Checker, node: number): Type {
  const local = c.locals?.get(nameOf(c.tree, node));
  if (local) {
    return local;
  }
  const name = c.meaning.nameAt(node);
  if (!name?.isDefined) {
    const text = c.text(node);
    const constant = constants.get(text);
    if (constant) {
      return plainNumberType();
    }
    reportUnknownName(c, node, text);
    return unknownType;
  }
  const definition = name.origin;
  if (definition && definition.cell.tree.kinds[definition.node] === Node.FunctionDefinition) {
    c.report('function-not-called', node, `\`${name.text}\` is a function: write its arguments, \`${name.text}(…)\`.`);
    return unknownType;
  }
  return name.type;
}

function reportUnknownName(c: Checker, node: number, text: string): void {
  c.namesMissing = true;
  if (c.context.functions.has(text)) {
    c.report('function-not-called', node, `\`${text}\` is a function: write its arguments, \`${text}(…)\`.`);
    return;
  }
  const answer = text === 'true' ? 'yes' : text === 'false' ? 'no' : undefined;
  if (answer) {
    c.report('foreign-answer', node, `Answers are \`yes\` and \`no\`. Write \`${answer}\`.`, {
      fixes: [replacing(`Write ${answer}`, c.span(node), answer)],
    });
    return;
  }
  const meant = nearest(text, namesKnown(c));
  c.report(
    'unknown-name',
    node,
    meant
      ? `\`${text}\` is not defined. Did you mean \`${meant}\`?`
      : `\`${text}\` is not defined. Define it in a line of its own, \`${text} = …\`; a text needs double quotes.`,
    { fixes: meant ? [replacing(`Replace ${text} by ${meant}`, c.span(node), meant)] : undefined },
  );
}
