import { dimensionless, type Unit } from '../../units';
import type { FunctionDefinition, Parameter, ParameterType } from '../library';
import { Node, Operator } from '../syntax/tree';
import { misfit } from './arithmetic';
import { type Checker, replacing } from './checker';
import { describe, either } from './describe';
import { check } from './expressions';
import { itemOf } from './lists';
import type { BoundArgument } from './meaning';
import { nearest } from './nearest';
import { powerRoute, reportMissingUnit } from './sums';
import type { Type } from './type';
import { booleanType, listOf, ownUnit, type QuantityOf, textType, unknownType, writtenIn } from './types';

/** Checks what is written for one parameter; no nodes when its default is taken. */
export function checkArgument(
  c: Checker,
  definition: FunctionDefinition,
  parameter: string,
  spec: Parameter,
  nodes: readonly number[],
): BoundArgument {
  if (nodes.length === 0) {
    return { parameter, spec, nodes, ...defaultOf(spec) };
  }
  if ('choice' in spec) {
    return { parameter, spec, nodes, ...checkChoice(c, definition, parameter, spec.choice, nodes[0]) };
  }
  if ('text' in spec && spec.verbatim && /^\d/.test(c.text(nodes[0]))) {
    c.meaning.types[nodes[0]] = textType;
    return { parameter, spec, nodes, type: textType, word: c.text(nodes[0]).replace(/\s*([-/])\s*/g, '$1') };
  }
  let unit: Unit | undefined;
  let type: Type = unknownType;
  for (const node of nodes) {
    type = check(c, node);
    if (type.kind === 'unknown') {
      return { parameter, spec, nodes, type };
    }
    const fit = fitting(spec, type);
    if (!fit) {
      reportArgument(c, definition, parameter, spec, node, type);
      return { parameter, spec, nodes, type: unknownType };
    }
    unit ??= fit.unit;
  }
  return { parameter, spec, nodes, type, unit };
}

function defaultOf(spec: Parameter): { type: Type; unit?: Unit } {
  if ('unit' in spec) {
    const unit = ownUnit(spec.unit);
    return { type: writtenIn(unit), unit };
  }
  return { type: typeOfParameter(spec) };
}

/** The type of what a parameter takes; unknown where it takes several. */
function typeOfParameter(spec: ParameterType): Type {
  if ('unit' in spec) {
    return writtenIn(ownUnit(spec.unit));
  }
  if ('choice' in spec) {
    return { kind: 'choice', words: spec.choice };
  }
  if ('object' in spec) {
    return { kind: 'object', object: spec.object };
  }
  if ('listOf' in spec) {
    return listOf(typeOfParameter(spec.listOf));
  }
  return 'yesNo' in spec ? booleanType : 'text' in spec ? textType : unknownType;
}

/** The unit to hand the value over in, or undefined when the type does not fit. */
export function fitting(spec: ParameterType, type: Type): { unit?: Unit } | undefined {
  if ('unit' in spec) {
    const unit = ownUnit(spec.unit);
    return type.kind === 'quantity' && !misfit(type.quantity, unit.type) ? { unit } : undefined;
  }
  if ('units' in spec) {
    if (spec.units.length === 0) {
      return type.kind === 'quantity' || (type.kind === 'list' && type.element.kind === 'quantity') ? {} : undefined;
    }
    const units = spec.units.map(ownUnit);
    const unit =
      type.kind === 'quantity'
        ? (units.find((one) => one.type === type.quantity) ?? units.find((one) => !misfit(type.quantity, one.type)))
        : undefined;
    return unit && { unit };
  }
  if ('object' in spec) {
    return type.kind === 'object' && type.object.name === spec.object.name ? {} : undefined;
  }
  if ('listOf' in spec) {
    return type.kind === 'list' ? fitting(spec.listOf, type.element) : undefined;
  }
  if ('items' in spec) {
    return spec.items === 'any' || itemOf(type).kind === 'boolean' ? {} : undefined;
  }
  return ('yesNo' in spec && type.kind === 'boolean') || ('text' in spec && type.kind === 'text') ? {} : undefined;
}

function checkChoice(
  c: Checker,
  definition: FunctionDefinition,
  parameter: string,
  words: readonly string[],
  node: number,
): { type: Type; word?: string } {
  const choice: Type = { kind: 'choice', words };
  const text = c.tree.kinds[node] === Node.Text ? c.text(node).replace(/^"|"$/g, '') : c.text(node);
  if (words.includes(text)) {
    c.meaning.types[node] = choice;
    return { type: choice, word: text };
  }
  const name = c.meaning.nameAt(node);
  if (c.tree.kinds[node] !== Node.Name || name?.isDefined || c.locals?.has(text)) {
    const type = check(c, node);
    if (type.kind === 'unknown') {
      return { type };
    }
    if (type.kind === 'text' || (type.kind === 'choice' && type.words.some((word) => words.includes(word)))) {
      return { type: choice }; // Which word it is shows when it runs.
    }
  }
  const meant = nearest(text, words);
  c.report(
    'unknown-choice',
    node,
    `\`${parameter}\` of \`${definition.name}\` is ${either(words)}; ${c.quote(node)} is none of them.`,
    {
      fixes: (meant ? [meant] : words.length <= 4 ? words : []).map((word) =>
        replacing(`Write ${word}`, c.span(node), word),
      ),
    },
  );
  return { type: unknownType };
}

function reportArgument(
  c: Checker,
  definition: FunctionDefinition,
  parameter: string,
  spec: Parameter,
  node: number,
  type: Type,
): void {
  const owner = `\`${parameter}\` of \`${definition.name}\``;
  const expected = expectedOf(spec);
  const wanted = 'unit' in spec ? writtenIn(ownUnit(spec.unit)) : undefined;
  if (wanted && type.kind === 'quantity') {
    const problem = misfit(type.quantity, wanted.quantity);
    if (isBare(type)) {
      reportMissingUnit(c, node, `${owner} is ${expected}`, wanted.unit.symbol);
      return;
    }
    if (problem === 'power-kinds') {
      const route = powerRoute(c, type, wanted);
      c.report('mixed-power-kinds', node, `${owner} is ${expected}; ${c.quote(node)} is ${describe(type)}. ${route}`);
      return;
    }
  }
  const degrees = wanted?.quantity.kind === 'absolute' && type.kind === 'quantity' ? degreesFor(type) : undefined;
  if (degrees) {
    const text = c.text(node);
    const meant = `${text.slice(0, text.length - 1).trimEnd()} ${degrees}`;
    c.report(
      'degree-sign-missing',
      node,
      `${owner} is ${expected}; ${c.quote(node)} is ${describe(type)}. Write \`${meant}\`.`,
      {
        fixes: text.endsWith(degrees[1]) ? [replacing(`Write ${meant}`, c.span(node), meant)] : undefined,
      },
    );
    return;
  }
  const meant = wanted && fractionOf(c, node, wanted);
  c.report(
    'wrong-argument',
    node,
    `${owner} is ${expected} (${spec.meaning}); ${c.quote(node)} is ${describe(type)}.${meant ? ` The unit belongs to the number before it alone: write \`${meant}\`.` : ''}`,
    { fixes: meant ? [replacing(`Write ${meant}`, c.span(node), meant)] : undefined },
  );
}

/** `1 hp / 3` for `1/3 hp`, where a fraction of the wanted unit was meant; the parts of a fraction are small. */
function fractionOf(c: Checker, node: number, wanted: QuantityOf): string | undefined {
  const { kinds, firstChildren, nextSiblings, numbers, operators } = c.tree;
  if (kinds[node] !== Node.Binary || operators[node] !== Operator.Divide) {
    return undefined;
  }
  const over = firstChildren[node];
  const under = nextSiblings[over];
  const unit = kinds[over] === Node.Number && kinds[under] === Node.Quantity ? c.meaning.unitAt(under) : undefined;
  const isFraction = numbers[over] < numbers[under] && numbers[under] <= largestDenominator;
  return unit && !('problem' in unit) && isFraction && !misfit(unit.type, wanted.quantity)
    ? `${numbers[over]} ${unit.symbol} / ${numbers[under]}`
    : undefined;
}

/** No fraction of an inch or of a horsepower that is spoken has a larger one. */
const largestDenominator = 64;

/** Farads and coulombs where a temperature belongs: the degree sign was forgotten. */
const degreesFor = ({ unit }: QuantityOf): string | undefined =>
  unit.symbol === 'F' ? '°F' : unit.symbol === 'C' ? '°C' : undefined;

const isBare = (type: QuantityOf): boolean => type.quantity.dimension === dimensionless && type.unit.symbol === '';

function expectedOf(spec: ParameterType): string {
  if ('units' in spec) {
    return spec.units.length === 0
      ? 'a quantity'
      : either(spec.units.map((unit) => describe(writtenIn(ownUnit(unit)))));
  }
  if ('items' in spec) {
    return spec.items === 'any' ? 'a value or a list' : 'answers of yes or no';
  }
  return 'listOf' in spec ? `a list, each item ${expectedOf(spec.listOf)}` : describe(typeOfParameter(spec));
}
