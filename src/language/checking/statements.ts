import { constants } from '../mathematics/constants';
import { checkEquations } from '../solving/check-equations';
import { Node } from '../syntax/tree';
import { misfit } from './arithmetic';
import { noDiagnostics, type Statement } from './binding';
import type { Checker } from './checker';
import { describe } from './describe';
import { check } from './expressions';
import { expectBoolean } from './operators';
import { checkSchedule } from './schedules/check-schedule';
import { reportMissingUnit } from './sums';
import { checkTaken } from './taken-names';
import type { Type } from './type';
import { plainNumberType, unknownType } from './types';

/** Checks one statement. True when its reports hang on which other names there are. */
export function checkStatement(statement: Statement): boolean {
  const { cell, node } = statement;
  const c = cell.checker();
  const { kinds, firstChildren, nextSiblings } = cell.tree;
  const kind = kinds[node] as Node;
  let type: Type = unknownType;
  switch (kind) {
    case Node.Definition:
      type = check(c, nextSiblings[firstChildren[node]]);
      break;
    case Node.Show:
      type = check(c, firstChildren[node]);
      break;
    case Node.BlockCall:
      type = check(c, node);
      break;
    case Node.Check: {
      const condition = firstChildren[node];
      type = check(c, condition);
      if (!expectBoolean(c, type, condition, '`check` needs an answer of yes or no, such as a comparison')) {
        type = unknownType;
      }
      break;
    }
    case Node.Input:
      type = checkInput(c, node);
      break;
    case Node.Use:
      type = checkTaken(c, statement);
      break;
    case Node.Schedule:
      type = checkSchedule(c, node);
      break;
    case Node.FunctionDefinition:
      checkFunction(c, node);
      break;
    case Node.Solve:
      checkEquations(c, statement);
      break;
    default: // An `allow` says nothing about values, and where the line could not be read the parser has spoken.
  }
  statement.type = c.diagnostics.length > 0 ? unknownType : type;
  statement.partDiagnostics =
    (kind === Node.Schedule ? cell.meaning.schedules.get(node)?.problems : undefined) ?? noDiagnostics;
  statement.checkDiagnostics = c.diagnostics.length > 0 ? c.diagnostics : noDiagnostics;
  return c.namesMissing;
}

/** `input run = 85 ft from 5 ft to 400 ft "meaning"`: the bounds are of the value's type. */
function checkInput(c: Checker, node: number): Type {
  const value = c.tree.nextSiblings[c.tree.firstChildren[node]];
  const type = check(c, value);
  const range = c.tree.nextSiblings[value];
  if (range < 0 || c.tree.kinds[range] !== Node.Range) {
    return type;
  }
  for (let bound = c.tree.firstChildren[range]; bound >= 0; bound = c.tree.nextSiblings[bound]) {
    const bounded = check(c, bound);
    if (type.kind !== 'quantity' || bounded.kind !== 'quantity') {
      continue;
    }
    if (misfit(type.quantity, bounded.quantity)) {
      if (bounded === plainNumberType()) {
        reportMissingUnit(c, bound, `${c.quote(value)} is ${describe(type)}`, type.unit.symbol);
      } else {
        c.report(
          'unlike-quantities',
          bound,
          `${c.quote(bound)} is ${describe(bounded)}, but the input is ${describe(type)}: the bounds are like the value.`,
        );
      }
    }
  }
  return type;
}

/** A function's body is checked for each call; here only what no call could mend. */
function checkFunction(c: Checker, node: number): void {
  const nameNode = c.tree.firstChildren[node];
  const text = c.text(nameNode);
  if (c.context.functions.has(text)) {
    c.report('name-taken', nameNode, `\`${text}\` is a function of the library already: choose another name.`);
  }
  const body = c.tree.nextSiblings[c.tree.nextSiblings[nameNode]];
  if (body >= 0) {
    reportUnknownNames(c, body);
  }
}

function reportUnknownNames(c: Checker, node: number): void {
  const name = c.meaning.nameAt(node);
  if (name && !name.isDefined && !constants.has(name.text)) {
    check(c, node);
  }
  for (let child = c.tree.firstChildren[node]; child >= 0; child = c.tree.nextSiblings[child]) {
    reportUnknownNames(c, child);
  }
}
