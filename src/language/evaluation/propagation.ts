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
        arithmetic(machine, operation, target, a, b);
    }
  }
}

/** Does what the machine does for an operation, and notes the slopes by its operands as they are before it runs. */
function arithmetic(machine: Machine, operation: Operation, target: number, a: number, b: number): void {
  const { numbers, uncertain } = machine;
  const left = uncertain.stepOf(a);
  const right = operation === Operation.Negate || operation === Operation.One ? -1 : uncertain.stepOf(b);
  const x = numbers[a];
  const y = numbers[b];
  let value: number;
  let byLeft = 1;
  let byRight = 1;
  switch (operation) {
    case Operation.Add:
      value = x + y;
      break;
    case Operation.Subtract:
      value = x - y;
      byRight = -1;
      break;
    case Operation.Multiply:
      value = x * y;
      byLeft = y;
      byRight = x;
      break;
    case Operation.Divide:
      value = x / y + (y - y);
      byLeft = 1 / y;
      byRight = -x / (y * y);
      break;
    case Operation.Power:
      value = x ** y + (x - x);
      byLeft = left < 0 ? 0 : y * x ** (y - 1);
      // The slope by an exponent that is certain is never needed, and has no value for a negative base.
      byRight = right < 0 ? 0 : x ** y * Math.log(x);
      break;
    case Operation.Negate:
      value = -x;
      byLeft = -1;
      break;
    default:
      value = machine.functionsOfOne[b](x) + (x - x);
      byLeft = left < 0 ? 0 : machine.slopesOfOne[b](x);
  }
  numbers[target] = value;
  if (value - value === 0) {
    uncertain.setStep(target, left, byLeft, right, byRight);
  } else {
    uncertain.clear(target, 1);
  }
}
