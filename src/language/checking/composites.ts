import { unitSpanOf } from '../syntax/tree';
import { convertedTo, misfit } from './arithmetic';
import { type Checker, replacing } from './checker';
import { describe } from './describe';
import { check, reportUnknownUnit } from './expressions';
import { nearest } from './nearest';
import { expectBoolean } from './operators';
import { areLike, reportOverRange } from './over-range';
import { powerRoute } from './sums';
import type { Type } from './type';
import { listOf, type QuantityOf, unknownType, writtenIn } from './types';

/** `expression in unit`; a list is converted item by item. */
export function checkConversion(c: Checker, node: number): Type {
  const operand = c.tree.firstChildren[node];
  const type = check(c, operand);
  const unit = c.meaning.unitAt(node);
  if ('problem' in unit) {
    reportUnknownUnit(c, node, unit);
    return unknownType;
  }
  const quantity = type.kind === 'list' ? type.element : type;
  if (quantity.kind === 'unknown') {
    return unknownType;
  }
  if (quantity.kind !== 'quantity') {
    c.report('not-a-quantity', operand, `${c.quote(operand)} is ${describe(type)}: \`in\` converts quantities.`);
    return unknownType;
  }
  // An absolute temperature in kelvin is still a temperature on a scale.
  const isKelvin = quantity.quantity.kind === 'absolute' && unit.offset === 0;
  const problem =
    isKelvin && unit.type.dimension === quantity.quantity.dimension ? undefined : misfit(quantity.quantity, unit.type);
  if (problem) {
    reportConversion(c, node, operand, quantity, writtenIn(unit), problem);
    return unknownType;
  }
  const converted = convertedTo(quantity, unit);
  return type.kind === 'list' ? listOf(converted) : converted;
}

function reportConversion(
  c: Checker,
  node: number,
  operand: number,
  from: QuantityOf,
  to: QuantityOf,
  problem: ReturnType<typeof misfit>,
): void {
  const found = `${c.quote(operand)} is ${describe(from)}`;
  const unitSpan = unitSpanOf(c.tree, node);
  if (problem === 'power-kinds') {
    c.report('mixed-power-kinds', node, `${found}: it does not convert to ${describe(to)}. ${powerRoute(c, from, to)}`);
  } else if (problem === 'temperature-and-difference') {
    const unit = to.unit.symbol === '°F' ? 'Δ°F' : 'Δ°C';
    c.report(
      'temperature-and-difference',
      node,
      `${found}: ${to.unit.symbol} shows temperatures on a scale. Show a difference in ${unit} or K.`,
      { fixes: [replacing(`Show it in ${unit}`, unitSpan, unit)] },
    );
  } else {
    c.report(
      'wrong-conversion',
      node,
      `${found}: it does not convert to ${to.unit.symbol}, the unit of ${describe(to)}.`,
    );
  }
}

/** `record.field` */
export function checkMember(c: Checker, node: number): Type {
  const owner = c.tree.firstChildren[node];
  const fieldNode = c.tree.nextSiblings[owner];
  const type = check(c, owner);
  if (type.kind === 'unknown') {
    return unknownType;
  }
  if (type.kind === 'schedule') {
    return checkColumnOf(c, owner, fieldNode, type);
  }
  if (type.kind !== 'record') {
    c.report('no-fields', fieldNode, `${c.quote(owner)} is ${describe(type)}: it has no fields.`);
    return unknownType;
  }
  const field = c.text(fieldNode);
  const found = type.fields.get(field);
  if (!found) {
    const meant = nearest(field, type.fields.keys());
    const all = [...type.fields.keys()].map((name) => `\`${name}\``).join(', ');
    c.report(
      'unknown-field',
      fieldNode,
      `${c.quote(owner)} has no field \`${field}\`. ${meant ? `Did you mean \`${meant}\`?` : `It has ${all}.`}`,
      { fixes: meant ? [replacing(`Replace ${field} by ${meant}`, c.span(fieldNode), meant)] : undefined },
    );
    return unknownType;
  }
  return found;
}

/** `schedule.column`: the values of all rows. */
function checkColumnOf(c: Checker, owner: number, node: number, { columns }: Type & { kind: 'schedule' }): Type {
  const name = c.text(node);
  const found = columns.get(name);
  if (found?.kind === 'unknown') {
    c.report(
      'empty-column',
      node,
      `No row of ${c.quote(owner)} has a value in \`${name}\`: its cells are empty or cannot be used, or its formula has an error.`,
    );
  } else if (!found) {
    const meant = nearest(name, columns.keys());
    const all = [...columns.keys()].map((one) => `\`${one}\``).join(', ');
    c.report(
      'unknown-column',
      node,
      `${c.quote(owner)} has no column \`${name}\`. ${meant ? `Did you mean \`${meant}\`?` : `It has ${all}.`}`,
      { fixes: meant ? [replacing(`Replace ${name} by ${meant}`, c.span(node), meant)] : undefined },
    );
  }
  return found && found.kind !== 'unknown' ? listOf(found) : unknownType;
}

/** `if condition then a else b` */
export function checkIf(c: Checker, node: number): Type {
  const conditionNode = c.tree.firstChildren[node];
  const thenNode = c.tree.nextSiblings[conditionNode];
  const elseNode = thenNode < 0 ? -1 : c.tree.nextSiblings[thenNode];
  expectBoolean(c, check(c, conditionNode), conditionNode, '`if` needs an answer of yes or no, such as a comparison');
  if (elseNode < 0) {
    return unknownType; // Incomplete: the parser has spoken.
  }
  const a = check(c, thenNode);
  const b = check(c, elseNode);
  if (a.kind === 'unknown' || b.kind === 'unknown') {
    return unknownType;
  }
  const common = commonType(a, b);
  if (!common) {
    c.report(
      'unlike-branches',
      node,
      `${c.quote(thenNode)} is ${describe(a)}, ${c.quote(elseNode)} is ${describe(b)}: both must be of one type, whichever is taken.`,
    );
    return unknownType;
  }
  return common;
}

/** `[a, b, c]` */
export function checkList(c: Checker, node: number): Type {
  let element: Type | undefined;
  let first = -1;
  for (let item = c.tree.firstChildren[node]; item >= 0; item = c.tree.nextSiblings[item]) {
    const type = flat(check(c, item));
    if (type.kind === 'bound') {
      reportOverRange(c, item);
      return unknownType;
    }
    if (type.kind === 'unknown') {
      element = unknownType;
      continue;
    }
    if (!element) {
      element = type;
      first = item;
    } else if (element.kind !== 'unknown') {
      const common = commonType(element, type);
      if (!common) {
        c.report(
          'unlike-items',
          item,
          `${c.quote(first)} is ${describe(element)}, ${c.quote(item)} is ${describe(type)}: the items of a list are of one type.`,
        );
      }
      element = common ?? unknownType;
    }
  }
  if (!element) {
    c.report('empty-list', node, 'A list needs at least one item: write them between the brackets, with commas.');
    return unknownType;
  }
  return element.kind === 'unknown' ? unknownType : listOf(element);
}

/** A bundle in a list stands for what is in it: `[3 * a, b]` holds four. */
const flat = (type: Type): Type => (type.kind === 'list' && type.element.kind === 'object' ? type.element : type);

/** The type of a value that is one or the other; the first one's unit is kept. */
export function commonType(a: Type, b: Type): Type | undefined {
  if (a === b) {
    return a;
  }
  if (a.kind === 'quantity' && b.kind === 'quantity') {
    return misfit(a.quantity, b.quantity)
      ? undefined
      : a.quantity.kind === 'plain'
        ? a.quantity === b.quantity
          ? a
          : b
        : a;
  }
  if (a.kind === 'choice' && b.kind === 'choice') {
    return { kind: 'choice', words: [...new Set([...a.words, ...b.words])] };
  }
  if (a.kind === 'object' && b.kind === 'object') {
    return a.object.name === b.object.name ? a : undefined;
  }
  if (a.kind === 'list' && b.kind === 'list') {
    const element = commonType(a.element, b.element);
    return element && listOf(element);
  }
  if (a.kind === 'bound' && b.kind === 'bound') {
    return areLike(a, b) ? a : undefined;
  }
  return a.kind === b.kind && a.kind !== 'record' && a.kind !== 'schedule' ? a : undefined;
}
