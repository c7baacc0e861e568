import { doubtfulComparison } from './doubtful-comparison';
import type { Machine } from './machine';
import { instructionLength, Operation } from './operations';

/**
 * Runs instructions as the machine does and notes on a tape how each result hangs on what it was computed
 * from: linear propagation (JCGM 100, 5.1), exact for arithmetic and plain functions. Comparisons may come to neither yes nor no.
 */
export function runWithDoubt(machine: Machine, start: number, end: number): void {
  const { code, numbers, uncertain } = machine;
  for (let at = start; at < end; at += instructionLength) {
    const operation = code[at] as Operation;
    const target = code[at + 1];
    const a = code[at + 2];
    const b = code[at + 3];
    switch (operation) {
      case Operation.Jump:
        at += a * instructionLength;
        break;
      case Operation.Branch:
        at += numbers[target] === 1 ? 0 : (numbers[target] === 0 ? a : b) * instructionLength;
        break;
      case Operation.Site: {
        const site = machine.sites[a];
        if (site.runWithDoubt) {
          site.runWithDoubt(machine);
        } else {
          site.run(machine);
        }
        break;
      }
      case Operation.Copy:
        machine.run(at, at + instructionLength);
        uncertain.copy(target, a);
        break;
      case Operation.Less:
      case Operation.LessOrEqual:
      case Operation.Greater:
      case Operation.GreaterOrEqual:
      case Operation.Equal:
      case Operation.NotEqual: {
        const outcome = doubtfulComparison(machine, operation, a, b);
        machine.run(at, at + instructionLength);
        uncertain.clear(target, 1);
        if (outcome && Number.isFinite(numbers[target])) {
          numbers[target] = outcome.answer;
          uncertain.setDoubt(target, outcome.doubt);
        }
        break;
      }
      case Operation.And:
      case Operation.Or:
      case Operation.Not: {
        const doubt = uncertain.doubt(a) ?? (operation === Operation.Not ? undefined : uncertain.doubt(b));
        machine.run(at, at + instructionLength);
        uncertain.clear(target, 1);
        uncertain.setDoubt(target, numbers[target] === 0.5 ? doubt : undefined);
        break;
      }
      case Operation.NoValue:
        machine.run(at, at + instructionLength);
        uncertain.clear(target, a);
        break;
      default:
        arithmetic(machine, operation, at);
    }
  }
}

/** Runs an operation and notes its slopes by its operands as they are before it runs. */
function arithmetic(machine: Machine, operation: Operation, at: number): void {
  const { code, numbers, uncertain } = machine;
  const target = code[at + 1];
  const a = code[at + 2];
  const b = code[at + 3];
  const left = uncertain.stepOf(a);
  const right = operation === Operation.Negate || operation === Operation.One ? -1 : uncertain.stepOf(b);
  if (left < 0 && right < 0) {
    machine.run(at, at + instructionLength);
    uncertain.clear(target, 1);
    return;
  }
  const x = numbers[a];
  const y = numbers[b];
  let byLeft = 1;
  let byRight = 1;
  switch (operation) {
    case Operation.Negate:
      byLeft = -1;
      break;
    case Operation.One:
      byLeft = machine.slopesOfOne[b](x);
      break;
    case Operation.Subtract:
      byRight = -1;
      break;
    case Operation.Multiply:
      byLeft = y;
      byRight = x;
      break;
    case Operation.Divide:
      byLeft = 1 / y;
      byRight = -x / (y * y);
      break;
    case Operation.Power:
      byLeft = y * x ** (y - 1);
      // The slope by an exponent that is certain is never needed, and has no value for a negative base.
      byRight = right < 0 ? 0 : x ** y * Math.log(x);
      break;
    default:
  }
  machine.run(at, at + instructionLength);
  if (Number.isFinite(numbers[target])) {
    uncertain.setStep(target, left, byLeft, right, byRight);
  } else {
    uncertain.clear(target, 1);
  }
}
