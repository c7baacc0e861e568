import { toBase } from '../../units';
import { isLike } from '../measurement';
import { Node, Operator } from '../syntax/tree';
import { type Checker, replacing } from './checker';
import { describe } from './describe';
import { check } from './expressions';
import type { Meaning } from './meaning';
import type { Type } from './type';
import { type QuantityOf, unknownType } from './types';

/** `value ± limits`: the limits are of the value's kind, or a share of it in %. */
export function checkPlusMinus(c: Checker, node: number): Type {
  const valueNode = c.tree.firstChildren[node];
  const limitsNode = c.tree.nextSiblings[valueNode];
  const value = check(c, valueNode);
  const limits = check(c, limitsNode);
  if (value.kind === 'unknown' || limits.kind === 'unknown' || !expectQuantity(c, value, valueNode)) {
    return unknownType;
  }
  if (limits.kind === 'quantity' && limits.unit.symbol === '%' && value.quantity.kind === 'absolute') {
    c.report(
      'percent-of-temperature',
      limitsNode,
      'A percentage of a temperature hangs on its scale. Write the limits as a difference, such as `± 3 °C`.',
    );
    return unknownType;
  }
  const isPoint = limits.kind === 'quantity' && limits.quantity.kind === 'absolute';
  const isWritten = !isPoint || differenceWritten(c.meaning, limitsNode) !== undefined;
  if (isShareOf(c.meaning, valueNode, limitsNode) || (isLike(value, limits) && isWritten)) {
    return value;
  }
  const example = value.unit.symbol === '' ? '' : `, such as \`± 1 ${value.unit.symbol}\``;
  const how = value.quantity.kind === 'absolute' ? `as a difference${example}` : `in its unit${example}, or in %`;
  const isBare = c.tree.kinds[limitsNode] === Node.Number && value.unit.symbol !== '';
  const withUnit = isBare ? `${c.text(limitsNode)} ${value.unit.symbol}` : undefined;
  c.report(
    'wrong-limits',
    limitsNode,
    `${c.quote(limitsNode)} is ${describe(limits)}, which cannot limit ${describe(value)}. Write the limits ${how}.`,
    { fixes: withUnit === undefined ? undefined : [replacing(`Write ${withUnit}`, c.span(limitsNode), withUnit)] },
  );
  return unknownType;
}

/** `value by meter` */
export function checkReading(c: Checker, node: number): Type {
  const valueNode = c.tree.firstChildren[node];
  const value = check(c, valueNode);
  const meterNode = c.tree.nextSiblings[valueNode];
  if (meterNode < 0 || c.tree.kinds[meterNode] !== Node.Name) {
    return unknownType; // The parser has spoken.
  }
  const meter = check(c, meterNode);
  if (value.kind === 'unknown' || meter.kind === 'unknown' || !expectQuantity(c, value, valueNode)) {
    return unknownType;
  }
  if (meter.kind !== 'meter') {
    c.report(
      'not-a-meter',
      meterNode,
      `${c.quote(meterNode)} is ${describe(meter)}, no meter. Define one, \`${c.text(meterNode)} = meter(reading: …, digits: …)\`, or state limits with \`±\`.`,
    );
    return unknownType;
  }
  if (meter.measures && !isLike(value, meter.measures)) {
    c.report(
      'wrong-meter',
      node,
      `${c.quote(meterNode)} states its accuracy as ${describe(meter.measures)}, and ${c.quote(valueNode)} is ${describe(value)}. Define a meter for this range.`,
    );
    return unknownType;
  }
  return value;
}

function expectQuantity(c: Checker, type: Type, node: number): type is QuantityOf {
  if (type.kind !== 'quantity') {
    c.report(
      'not-a-quantity',
      node,
      `${c.quote(node)} is ${describe(type)}: only a quantity can be read or have limits.`,
    );
  }
  return type.kind === 'quantity';
}

/** True when limits are a share of their value: in %, unless the value is in % itself. */
export function isShareOf({ types }: Meaning, value: number, limits: number): boolean {
  const [of, share] = [types[value], types[limits]];
  return of.kind === 'quantity' && share.kind === 'quantity' && share.unit.symbol === '%' && of.unit.symbol !== '%';
}

/** A temperature written as limits is a difference: in the coherent SI unit; undefined for anything else. */
export function differenceWritten(meaning: Meaning, node: number): number | undefined {
  const { tree } = meaning;
  if (tree.kinds[node] === Node.Group) {
    return differenceWritten(meaning, tree.firstChildren[node]);
  }
  const unit = tree.kinds[node] === Node.Quantity ? meaning.unitAt(node) : undefined;
  return unit && !('problem' in unit) && unit.type.kind === 'absolute' ? tree.numbers[node] * unit.factor : undefined;
}

/** One count of the last digit of a number as written, in the coherent SI unit; undefined for anything else. */
export function lastDigitOf(meaning: Meaning, node: number): number | undefined {
  const { tree } = meaning;
  const kind = tree.kinds[node] as Node;
  const isNegative = kind === Node.Unary && tree.operators[node] === Operator.Negate;
  if (kind === Node.Group || isNegative) {
    return lastDigitOf(meaning, tree.firstChildren[node]);
  }
  const digit = 10 ** -tree.decimals[node];
  if (kind === Node.Number) {
    return digit;
  }
  const unit = kind === Node.Quantity ? meaning.unitAt(node) : undefined;
  return unit && !('problem' in unit) ? toBase(digit, unit) - toBase(0, unit) : undefined;
}
