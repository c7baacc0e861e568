import { absoluteTemperature, temperatureDifference } from '../../units';
import { misfit } from '../checking/arithmetic';
import { Checker } from '../checking/checker';
import { check } from '../checking/expressions';
import type { Type } from '../checking/type';
import { type QuantityOf, unknownType } from '../checking/types';
import { type Bounds, type Sides, solutionParts, togetherParts } from './solution-parts';
import { dimensionsOf } from './unknown-dimensions';

/**
 * The type of an unknown that a formula gives or that is searched for between bounds; unknown where the equation does
 * not fit together. What is wrong is said of the equation as written (`checkEquations`), not here.
 */
export function checkSolution(c: Checker, node: number): Type {
  const { name, formulas, equation, bounds } = solutionParts(c.tree, node);
  const quiet = quietly(c);
  const given = bounds && typeOfBounds(quiet, bounds);
  const found = typeOfFormulas(quiet, formulas);
  const isFormula = found !== undefined && !(given && misfit(given.quantity, found.quantity));
  const type = bounds ? given : found;
  const { searches } = c.meaning;
  if (isFormula) {
    searches.delete(node);
  } else {
    searches.add(node);
  }
  const isKnown = type !== undefined && (isFormula || bounds !== undefined);
  return isKnown && sidesFit(c, equation, new Map([[name, type]])) ? type : unknownType;
}

/** The type of one of several unknowns that linear equations give together. */
export function checkTogether(c: Checker, node: number): Type {
  const { unknowns, equations } = togetherParts(c.tree, node);
  const types = typesOfUnknowns(c, unknowns, equations);
  const type = types.get(unknowns[0].name);
  return type && equations.every((equation) => sidesFit(c, equation, types)) ? type : unknownType;
}

/** The types of unknowns: those of their bounds, else in the unit that fits what the equations ask. */
export function typesOfUnknowns(
  c: Checker,
  unknowns: readonly { readonly name: string; readonly bounds?: Bounds }[],
  equations: readonly Sides[],
): Map<string, QuantityOf> {
  const types = new Map<string, QuantityOf>();
  for (const { name, bounds } of unknowns) {
    const type = bounds && typeOfBounds(quietly(c), bounds);
    if (type) {
      types.set(name, type);
    }
  }
  const open = unknowns.filter(({ name }) => !types.has(name)).map(({ name }) => name);
  const found = dimensionsOf(quietly(c, types), equations, open);
  const onScale = new Map([...found].map(([name, type]) => [name, onAScale(c, type)]));
  // A temperature is one on a scale where the equations fit so, else a difference.
  const isOnScale =
    [...found].some(([name, type]) => type !== onScale.get(name)) &&
    equations.every((equation) => sidesFit(c, equation, new Map([...types, ...onScale])));
  return new Map([...types, ...(isOnScale ? onScale : found)]);
}

const onAScale = (c: Checker, type: QuantityOf): QuantityOf =>
  type.quantity === temperatureDifference ? c.context.arithmetic.canonical(absoluteTemperature) : type;

/** The type of both ends of a range, or undefined. */
function typeOfBounds(c: Checker, { low, high }: Bounds): QuantityOf | undefined {
  const [a, b] = [check(c, low), check(c, high)];
  return a.kind === 'quantity' && b.kind === 'quantity' && !misfit(a.quantity, b.quantity) ? a : undefined;
}

function typeOfFormulas(c: Checker, formulas: readonly number[]): QuantityOf | undefined {
  const types = formulas.map((formula) => check(c, formula));
  const [first] = types;
  return first?.kind === 'quantity' && c.diagnostics.length === 0 && types.every(({ kind }) => kind === 'quantity')
    ? first
    : undefined;
}

function sidesFit(c: Checker, { left, right }: Sides, locals: ReadonlyMap<string, Type>): boolean {
  const inner = quietly(c, locals);
  const [a, b] = [check(inner, left), check(inner, right)];
  return (
    inner.diagnostics.length === 0 && a.kind === 'quantity' && b.kind === 'quantity' && !misfit(a.quantity, b.quantity)
  );
}

/** A checker whose reports nobody reads. */
const quietly = (c: Checker, locals?: ReadonlyMap<string, Type>): Checker =>
  new Checker(c.context, c.meaning, locals ?? c.locals, c.within);
