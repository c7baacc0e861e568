import { misfit } from '../checking/arithmetic';
import type { Name, Statement } from '../checking/binding';
import { Checker } from '../checking/checker';
import { describe } from '../checking/describe';
import { check } from '../checking/expressions';
import { reportMisfit, reportMissingUnit } from '../checking/sums';
import type { Type } from '../checking/type';
import { plainNumberType, unknownType } from '../checking/types';
import { Node } from '../syntax/tree';
import { typesOfUnknowns } from './check-solution';
import { type Bounds, type Sides, solutionParts, solveParts, type UnknownParts } from './solution-parts';
import { dimensionsOf } from './unknown-dimensions';

/** Checks the equations of a `solve` as they are written, and says why there is no way to an unknown. */
export function checkEquations(c: Checker, statement: Statement): void {
  const { unknowns, equations } = solveParts(c.tree, statement.node);
  const report = statement.cell.solved.get(statement.node)?.report;
  if (report) {
    c.report(report.code, report.at, report.message);
  }
  if (report?.code === 'too-many-unknowns') {
    return; // Nothing here was looked at.
  }
  for (const { bounds } of unknowns) {
    if (bounds) {
      checkBounds(c, bounds);
    }
  }
  const types = new Map<string, Type>();
  for (const { name } of unknowns) {
    const known = c.context.names.find(name)?.type;
    if (known && known.kind !== 'unknown') {
      types.set(name, known);
    }
  }
  if (types.size < unknowns.length) {
    for (const [name, type] of typesOfUnknowns(c, unknowns, equations)) {
      types.set(name, types.get(name) ?? type);
    }
    reportOddBounds(c, unknowns, equations, types);
  }
  for (const { node, name } of unknowns) {
    c.meaning.types[c.tree.firstChildren[node]] = types.get(name) ?? unknownType;
  }
  const inner = new Checker(c.context, c.meaning, withUnknowns(unknowns, types), c.within);
  for (const equation of equations) {
    checkSides(inner, equation);
  }
  c.diagnostics.push(...inner.diagnostics);
  c.namesMissing ||= inner.namesMissing;
  if (c.diagnostics.length === 0) {
    reportNoWay(c, statement);
  }
}

const withUnknowns = (unknowns: readonly UnknownParts[], types: ReadonlyMap<string, Type>): Map<string, Type> =>
  new Map(unknowns.map(({ name }) => [name, types.get(name) ?? unknownType]));

/** Both ends of a range are quantities, and alike. */
function checkBounds(c: Checker, { low, high }: Bounds): void {
  const [a, b] = [check(c, low), check(c, high)];
  for (const [type, node] of [
    [a, low],
    [b, high],
  ] as const) {
    if (type.kind !== 'quantity' && type.kind !== 'unknown') {
      c.report('not-a-quantity', node, `${c.quote(node)} is ${describe(type)}: the bounds of a search are quantities.`);
      return;
    }
  }
  if (a.kind !== 'quantity' || b.kind !== 'quantity' || !misfit(a.quantity, b.quantity)) {
    return;
  }
  const [bare, other, whole] = b === plainNumberType() ? [high, low, a] : [low, high, b];
  if (a === plainNumberType() || b === plainNumberType()) {
    reportMissingUnit(c, bare, `${c.quote(other)} is ${describe(whole)}`, whole.unit.symbol);
  } else {
    c.report(
      'unlike-quantities',
      high,
      `${c.quote(high)} is ${describe(b)}, but ${c.quote(low)} is ${describe(a)}: both bounds are of one kind.`,
    );
  }
}

/** Reports bounds of another kind than the equations ask of the unknown; nothing more is said of that one. */
function reportOddBounds(
  c: Checker,
  unknowns: readonly UnknownParts[],
  equations: readonly Sides[],
  types: Map<string, Type>,
): void {
  const bounded = unknowns.filter(({ bounds, name }) => bounds && types.get(name)?.kind === 'quantity');
  if (bounded.length === 0) {
    return;
  }
  const quiet = new Checker(c.context, c.meaning, c.locals, c.within);
  const asked = dimensionsOf(
    quiet,
    equations,
    unknowns.map(({ name }) => name),
  );
  for (const { name, bounds } of bounded) {
    const [given, wanted] = [types.get(name), asked.get(name)];
    if (given?.kind === 'quantity' && wanted && given.quantity.dimension !== wanted.quantity.dimension) {
      types.set(name, unknownType);
      if (given === plainNumberType()) {
        reportMissingUnit(c, bounds!.low, `in these equations \`${name}\` is ${describe(wanted)}`, wanted.unit.symbol);
      } else {
        c.report(
          'unlike-quantities',
          bounds!.low,
          `${c.quote(bounds!.low)} is ${describe(given)}, but in these equations \`${name}\` is ${describe(wanted)}.`,
        );
      }
    }
  }
}

function checkSides(c: Checker, { node, left, right }: Sides): void {
  const [a, b] = [check(c, left), check(c, right)];
  for (const [type, side] of [
    [a, left],
    [b, right],
  ] as const) {
    if (type.kind !== 'quantity' && type.kind !== 'unknown') {
      c.report('not-a-quantity', side, `${c.quote(side)} is ${describe(type)}: an equation is between quantities.`);
      return;
    }
  }
  const problem = a.kind === 'quantity' && b.kind === 'quantity' ? misfit(a.quantity, b.quantity) : undefined;
  if (problem && a.kind === 'quantity' && b.kind === 'quantity') {
    reportMisfit(c, node, a, b, problem);
  }
}

/** Each equation fits, and yet an unknown has no type: its formula does not fit, or nothing tells its unit. */
function reportNoWay(c: Checker, { cell, unknowns }: Statement): void {
  const { tree } = cell;
  for (const own of unknowns) {
    const { expression } = own;
    if (own.type.kind !== 'unknown' || expression < 0 || !own.uses.every(isKnown)) {
      continue;
    }
    const name = own.defines?.text ?? '';
    if (tree.kinds[expression] === Node.Solution) {
      const { equation } = solutionParts(tree, expression);
      const written = cell.meaning.writtenNode(equation.node);
      c.report(
        'needs-bounds',
        own.node,
        `\`${name}\` cannot be brought to stand alone in ${c.quote(written)}, because its parts do not combine otherwise. Say between which values to search for it, such as \`${name} in low .. high\`.`,
      );
    } else {
      c.report(
        'needs-bounds',
        own.node,
        `The equations do not tell what kind of quantity \`${name}\` is. Give it bounds with their unit, such as \`${name} in low .. high\`.`,
      );
    }
    return;
  }
}

const isKnown = ({ type, definition }: Name): boolean => type.kind !== 'unknown' || definition?.givesFunction === true;
