import { dimensionless } from '../../units';
import { Node, Operator, unitSpanOf } from '../syntax/tree';
import type { Misfit } from './arithmetic';
import { type Checker, replacing } from './checker';
import { describe } from './describe';
import type { QuantityOf } from './types';

const doing: Partial<Record<Operator, string>> = {
  [Operator.Add]: 'add',
  [Operator.Subtract]: 'subtract',
};

/** Reports two quantities that do not add, subtract or compare. */
export function reportMisfit(c: Checker, node: number, left: QuantityOf, right: QuantityOf, misfit: Misfit): void {
  const leftNode = c.tree.firstChildren[node];
  const rightNode = c.tree.nextSiblings[leftNode];
  const verb = doing[c.tree.operators[node] as Operator] ?? 'compare';
  const found = `${c.quote(leftNode)} is ${describe(left)}, ${c.quote(rightNode)} is ${describe(right)}`;
  switch (misfit) {
    case 'power-kinds':
      c.report('mixed-power-kinds', node, `${found}: they do not ${verb}. ${powerRoute(c, left, right)}`);
      return;
    case 'two-temperatures':
      c.report(
        'temperatures-added',
        node,
        `${found}: two temperatures on a scale do not add. Write the rise as a difference, such as \`5 K\` or \`5 Δ°C\`.`,
        { fixes: differenceFix(c, rightNode, right) },
      );
      return;
    case 'temperature-and-difference':
      c.report(
        'temperature-and-difference',
        node,
        `${found}: a temperature on a scale and a difference do not ${verb}. Write both as one or the other.`,
      );
      return;
    case 'temperature-factor':
      reportTemperatureFactor(c, node);
      return;
    case 'dimension':
      reportUnlike(c, node, left, right, `${found}: only like quantities ${verb}.`);
  }
}

export function reportTemperatureFactor(c: Checker, node: number): void {
  c.report(
    'temperature-factor',
    node,
    'A temperature on a scale has no ratio and no multiple, because its zero is arbitrary. Subtract a reference first, such as `T - 20 °C`, or write a difference in K.',
  );
}

/** How to bring two kinds of power to one. */
export function powerRoute(c: Checker, left: QuantityOf, right: QuantityOf): string {
  const kinds = [left.quantity.kind, right.quantity.kind];
  if (kinds.includes('reactive')) {
    return 'They join at right angles: apparent power² = real power² + reactive power².';
  }
  const named = c.context.functions.has('real_power') ? ' (`real_power`, `apparent_power`)' : '';
  return `Bring both to one kind by the power factor: real power = apparent power × power factor${named}.`;
}

function reportUnlike(c: Checker, node: number, left: QuantityOf, right: QuantityOf, message: string): void {
  const leftNode = c.tree.firstChildren[node];
  const rightNode = c.tree.nextSiblings[leftNode];
  const operator = c.tree.operators[node] as Operator;
  const isSum = operator === Operator.Add || operator === Operator.Subtract;
  if (isSum && right.unit.symbol === '%' && right.quantity.dimension === dimensionless) {
    const sign = operator === Operator.Add ? '+' : '-';
    const base = c.tree.kinds[leftNode] === Node.Binary ? `(${c.text(leftNode)})` : c.text(leftNode);
    const spelled = `${base} * (1 ${sign} ${c.text(rightNode)})`;
    c.report(
      'percent-of-what',
      node,
      `${c.quote(rightNode)} of what? A percentage is a number, and ${c.quote(leftNode)} is ${describe(left)}. Write \`${spelled}\` for ${c.quote(rightNode)} of ${c.quote(leftNode)}.`,
      { fixes: [replacing(`Write ${spelled}`, c.span(node), spelled)] },
    );
    return;
  }
  for (const [bare, bareType, other, otherType] of [
    [rightNode, right, leftNode, left],
    [leftNode, left, rightNode, right],
  ] as const) {
    if (isPlain(bareType)) {
      reportMissingUnit(c, bare, `${c.quote(other)} is ${describe(otherType)}`, otherType.unit.symbol);
      return;
    }
  }
  c.report('unlike-quantities', node, message);
}

const isPlain = (type: QuantityOf): boolean => type.quantity.dimension === dimensionless && type.unit.symbol === '';

/** Reports a plain number where a quantity belongs; where the number stands there as such, the unit is offered. */
export function reportMissingUnit(c: Checker, node: number, why: string, symbol: string): void {
  const inner = c.ungroup(node);
  const literal = c.tree.kinds[inner] === Node.Number;
  const written = `${c.text(inner)} ${symbol}`;
  c.report(
    'missing-unit',
    node,
    `${c.quote(node)} has no unit, and ${why}. ${literal ? `Write its unit, such as \`${written}\`.` : 'Give it one, or multiply it by a quantity that has one.'}`,
    literal ? { fixes: [replacing(`Write ${written}`, c.span(inner), written)] } : {},
  );
}

function differenceFix(c: Checker, node: number, type: QuantityOf) {
  const inner = c.ungroup(node);
  if (c.tree.kinds[inner] !== Node.Quantity) {
    return undefined;
  }
  const unit = type.unit.symbol === '°F' ? 'Δ°F' : 'Δ°C';
  return [replacing(`Write it as a difference in ${unit}`, unitSpanOf(c.tree, inner), unit)];
}
