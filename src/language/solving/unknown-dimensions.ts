import {
  bases,
  type Dimension,
  dimensionless,
  dimensionOf,
  divideDimensions,
  multiplyDimensions,
  quantityType,
  raiseDimension,
} from '../../units';
import { argumentNodes } from '../checking/arguments';
import type { Checker } from '../checking/checker';
import { check } from '../checking/expressions';
import { resultTypeOf } from '../checking/result-types';
import type { Type } from '../checking/type';
import { ownUnit, type QuantityOf } from '../checking/types';
import { Node, Operator, textOf } from '../syntax/tree';
import { mentions, valueChildren } from './expression';
import type { Sides } from './solution-parts';

/** A dimension that hangs on those of unknowns: `known` times each of theirs to a power. */
interface Form {
  readonly known: Dimension;
  readonly powers: ReadonlyMap<string, number>;
}

const plain: Form = { known: dimensionless, powers: new Map() };

/**
 * What kind of quantity each unknown must be for the equations to fit together, as far as they say: terms of a sum are
 * alike, an exponent is a number, an argument is what its function takes. What contradicts the rest is left out.
 */
export function dimensionsOf(
  c: Checker,
  equations: readonly Sides[],
  unknowns: readonly string[],
): Map<string, QuantityOf> {
  if (unknowns.length === 0) {
    return new Map();
  }
  const reader = new DimensionReader(c, new Set(unknowns));
  for (const { left, right } of equations) {
    reader.alike(reader.read(left), reader.read(right));
  }
  const found = new Map<string, QuantityOf>();
  for (const [name, dimension] of solved(reader.ones, unknowns)) {
    found.set(name, c.context.arithmetic.canonical(quantityType(dimension)));
  }
  return found;
}

/** Reads expressions and gathers what must be without dimension. */
class DimensionReader {
  readonly ones: Form[] = [];

  constructor(
    private readonly c: Checker,
    private readonly unknowns: ReadonlySet<string>,
  ) {}

  alike(a: Form | undefined, b: Form | undefined): void {
    if (a && b) {
      this.ones.push(times(a, b, -1));
    }
  }

  /** Undefined where it does not show. */
  read(node: number): Form | undefined {
    const { c } = this;
    const { kinds, firstChildren, nextSiblings } = c.tree;
    const first = firstChildren[node];
    if (kinds[node] === Node.Name && this.unknowns.has(textOf(c.tree, node))) {
      return { known: dimensionless, powers: new Map([[textOf(c.tree, node), 1]]) };
    }
    if (!mentions(c.tree, node, this.unknowns)) {
      return formOf(check(c, node));
    }
    switch (kinds[node] as Node) {
      case Node.Group:
      case Node.Unary:
        return this.read(first);
      case Node.PlusMinus:
      case Node.Reading:
        return this.read(first);
      case Node.Convert: {
        const inner = this.read(first);
        const unit = c.meaning.unitAt(node);
        const form = 'problem' in unit ? undefined : { known: unit.type.dimension, powers: plain.powers };
        this.alike(inner, form);
        return form ?? inner;
      }
      case Node.Binary:
        return this.binary(c.tree.operators[node] as Operator, first, nextSiblings[first]);
      case Node.Call:
        return this.call(node);
      default:
        for (const child of valueChildren(c.tree, node)) {
          this.read(child);
        }
        return undefined;
    }
  }

  private binary(operator: Operator, leftNode: number, rightNode: number): Form | undefined {
    const left = this.read(leftNode);
    if (operator === Operator.Power) {
      const { kinds, numbers } = this.c.tree;
      this.alike(this.read(rightNode), plain);
      return left && kinds[rightNode] === Node.Number ? times(plain, left, numbers[rightNode]) : undefined;
    }
    const right = this.read(rightNode);
    switch (operator) {
      case Operator.Add:
      case Operator.Subtract:
        this.alike(left, right);
        return left ?? right;
      case Operator.Multiply:
        return left && right && times(left, right, 1);
      case Operator.Divide:
        return left && right && times(left, right, -1);
      default:
        return undefined;
    }
  }

  private call(node: number): Form | undefined {
    const { c } = this;
    const { callee, items } = argumentNodes(c.tree, node);
    const name = textOf(c.tree, callee);
    const definition = c.context.functions.get(name);
    const forms = items.map(({ expression }) => this.read(expression));
    if (!definition) {
      return undefined;
    }
    if (name === 'sqrt') {
      return forms[0] && times(plain, forms[0], 0.5);
    }
    if (sameAsArguments.has(name)) {
      for (const form of forms.slice(1)) {
        this.alike(forms[0], form);
      }
      return forms[0];
    }
    const positional = Object.keys(definition.parameters).filter((one) => !definition.parameters[one].named);
    let position = 0;
    for (const [i, item] of items.entries()) {
      const parameter = item.name >= 0 ? textOf(c.tree, item.name) : positional[position++];
      const spec = parameter !== undefined && Object.hasOwn(definition.parameters, parameter);
      const declared = spec ? definition.parameters[parameter] : undefined;
      if (declared && 'unit' in declared) {
        this.alike(forms[i], { known: ownUnit(declared.unit).type.dimension, powers: plain.powers });
      }
    }
    return definition.infer ? undefined : formOf(resultTypeOf(definition, c.context.library.system));
  }
}

/** Mathematics whose result is of the kind of its arguments. */
const sameAsArguments: ReadonlySet<string> = new Set(['abs', 'min', 'max', 'sum', 'mean']);

const formOf = (type: Type): Form | undefined =>
  type.kind === 'quantity' ? { known: type.quantity.dimension, powers: plain.powers } : undefined;

/** `a b^power` */
function times(a: Form, b: Form, power: number): Form {
  const powers = new Map(a.powers);
  for (const [name, own] of b.powers) {
    powers.set(name, (powers.get(name) ?? 0) + own * power);
  }
  const raised = raiseDimension(b.known, Math.abs(power));
  return {
    known: power < 0 ? divideDimensions(a.known, raised) : multiplyDimensions(a.known, raised),
    powers: new Map([...powers].filter(([, own]) => Math.abs(own) > tiny)),
  };
}

const tiny = 1e-9;

/** Gauss-Jordan elimination: the unknowns whose dimension comes out alone. */
function solved(ones: readonly Form[], unknowns: readonly string[]): Map<string, Dimension> {
  const n = unknowns.length;
  // Powers of the unknowns, then the exponents of what is known.
  let rows = ones.map(({ known, powers }) => [...unknowns.map((name) => powers.get(name) ?? 0), ...known.exponents]);
  const pivots = new Map<number, number[]>();
  for (let column = 0; column < n; column++) {
    const row = rows.find((other) => Math.abs(other[column]) > tiny);
    if (!row) {
      continue;
    }
    const scaled = row.map((value) => value / row[column]);
    const without = (other: readonly number[]) =>
      other[column] === 0 ? [...other] : other.map((value, j) => value - other[column] * scaled[j]);
    rows = rows.filter((other) => other !== row).map(without);
    for (const [pivot, other] of pivots) {
      pivots.set(pivot, without(other));
    }
    pivots.set(column, scaled);
  }
  const found = new Map<string, Dimension>();
  for (const [column, row] of pivots) {
    if (row.slice(0, n).every((value, j) => j === column || Math.abs(value) <= tiny)) {
      found.set(unknowns[column], dimensionOf(Object.fromEntries(bases.map((base, i) => [base, -row[n + i]]))));
    }
  }
  return found;
}
