import { doubtfulComparison } from './doubtful-comparison';
import { combine, type Gradient } from './gradient';
import type { Machine } from './machine';
import { instructionLength, Operation } from './operations';

/**
 * Runs instructions as the machine does and carries gradients along: linear propagation (JCGM 100, 5.1), exact for
 * arithmetic and plain functions. Comparisons may come to neither yes nor no.
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
      default: {
        const gradient = gradientOf(machine, operation, a, b);
        machine.run(at, at + instructionLength);
        uncertain.clear(target, 1);
        uncertain.setGradient(target, Number.isFinite(numbers[target]) ? gradient : undefined);
      }
    }
  }
}

/** The gradient of an operation's result, from its operands before it runs. */
function gradientOf(machine: Machine, operation: Operation, a: number, b: number): Gradient | undefined {
  const { numbers, uncertain } = machine;
  const left = uncertain.gradient(a);
  if (operation === Operation.Negate || operation === Operation.One) {
    const slope = operation === Operation.Negate ? -1 : machine.slopesOfOne[b](numbers[a]);
    return left && combine(left, slope, undefined, 0);
  }
  const right = uncertain.gradient(b);
  if (!left && !right) {
    return undefined;
  }
  const x = numbers[a];
  const y = numbers[b];
  switch (operation) {
    case Operation.Add:
      return combine(left, 1, right, 1);
    case Operation.Subtract:
      return combine(left, 1, right, -1);
    case Operation.Multiply:
      return combine(left, y, right, x);
    case Operation.Divide:
      return combine(left, 1 / y, right, -x / (y * y));
    case Operation.Power:
      // The slope by an exponent that is certain is never needed, and has no value for a negative base.
      return combine(left, y * x ** (y - 1), right, right ? x ** y * Math.log(x) : 0);
    default:
      return undefined;
  }
}
