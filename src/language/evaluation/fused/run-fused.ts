import type { Machine } from '../machine';
import { Fused, fusedLength, operationBits, operationMask } from './fused';

/**
 * Runs fused code: the same arithmetic as the machine's, number by number, in the same order. The loop calls nothing, so
 * that what it works on stays in registers; a division keeps a divisor that is not finite from giving a clean zero.
 */
export function runFused({ numbers: r, objects }: Machine, code: Int32Array): void {
  for (let at = 0; at < code.length; at += fusedLength) {
    const head = code[at];
    const target = head >>> operationBits;
    const x = r[code[at + 1]];
    const y = r[code[at + 2]];
    switch (head & operationMask) {
      case Fused.Copy:
        r[target] = x;
        objects[target] = objects[code[at + 1]];
        break;
      case Fused.Negate:
        r[target] = -x;
        break;
      case Fused.Add:
        r[target] = x + y;
        break;
      case Fused.Subtract:
        r[target] = x - y;
        break;
      case Fused.Multiply:
        r[target] = x * y;
        break;
      case Fused.Divide:
        r[target] = x / y + (y - y);
        break;
      case Fused.AddAdd:
        r[target] = x + y + r[code[at + 3]];
        break;
      case Fused.AddMultiply:
        r[target] = (x + y) * r[code[at + 3]];
        break;
      case Fused.AddSubtract:
        r[target] = x + y - r[code[at + 3]];
        break;
      case Fused.AddSubtractFrom:
        r[target] = r[code[at + 3]] - (x + y);
        break;
      case Fused.AddDivide: {
        const z = r[code[at + 3]];
        r[target] = (x + y) / z + (z - z);
        break;
      }
      case Fused.AddDivideInto: {
        const divisor = x + y;
        r[target] = r[code[at + 3]] / divisor + (divisor - divisor);
        break;
      }
      case Fused.SubtractAdd:
        r[target] = x - y + r[code[at + 3]];
        break;
      case Fused.SubtractMultiply:
        r[target] = (x - y) * r[code[at + 3]];
        break;
      case Fused.SubtractSubtract:
        r[target] = x - y - r[code[at + 3]];
        break;
      case Fused.SubtractSubtractFrom:
        r[target] = r[code[at + 3]] - (x - y);
        break;
      case Fused.SubtractDivide: {
        const z = r[code[at + 3]];
        r[target] = (x - y) / z + (z - z);
        break;
      }
      case Fused.SubtractDivideInto: {
        const divisor = x - y;
        r[target] = r[code[at + 3]] / divisor + (divisor - divisor);
        break;
      }
      case Fused.MultiplyAdd:
        r[target] = x * y + r[code[at + 3]];
        break;
      case Fused.MultiplyMultiply:
        r[target] = x * y * r[code[at + 3]];
        break;
      case Fused.MultiplySubtract:
        r[target] = x * y - r[code[at + 3]];
        break;
      case Fused.MultiplySubtractFrom:
        r[target] = r[code[at + 3]] - x * y;
        break;
      case Fused.MultiplyDivide: {
        const z = r[code[at + 3]];
        r[target] = (x * y) / z + (z - z);
        break;
      }
      case Fused.MultiplyDivideInto: {
        const divisor = x * y;
        r[target] = r[code[at + 3]] / divisor + (divisor - divisor);
        break;
      }
      case Fused.DivideAdd:
        r[target] = x / y + (y - y) + r[code[at + 3]];
        break;
      case Fused.DivideMultiply:
        r[target] = (x / y + (y - y)) * r[code[at + 3]];
        break;
      case Fused.DivideSubtract:
        r[target] = x / y + (y - y) - r[code[at + 3]];
        break;
      case Fused.DivideSubtractFrom:
        r[target] = r[code[at + 3]] - (x / y + (y - y));
        break;
      case Fused.DivideDivide: {
        const z = r[code[at + 3]];
        r[target] = (x / y + (y - y)) / z + (z - z);
        break;
      }
      case Fused.DivideDivideInto: {
        const divisor = x / y + (y - y);
        r[target] = r[code[at + 3]] / divisor + (divisor - divisor);
        break;
      }
    }
  }
}
