import { isBroken } from '../syntax/navigation';
import { children, Node, type SyntaxTree, textOf } from '../syntax/tree';
import { type Expression, holds, number, readExpression, readWhole, sizeOf, substitute, subtract } from './expression';
import { isAlwaysZero, isLiteral } from './identity';
import { isolate } from './isolation';
import { isLinear } from './linearity';
import { polynomialOf } from './polynomial';
import { type Report, reports } from './reports';

export interface Equation {
  readonly node: number;
  readonly left: Expression;
  readonly right: Expression;
}

/** One name behind `solve`. */
export interface Unknown {
  readonly node: number;
  readonly name: string;
  readonly hasBounds: boolean;
}

/** How one unknown is found. What is found may use other unknowns by name. */
export type Way = {
  readonly unknown: Unknown;
} /** From one equation: by a formula, of which there may be several, or else by a search between its bounds. */ & (
  | { readonly kind: 'alone'; readonly equation: Equation; readonly formulas: readonly Expression[] }
  /** From as many linear equations as there are unknowns. */
  | { readonly kind: 'together'; readonly equations: readonly Equation[]; readonly unknowns: readonly Unknown[] }
  | { readonly kind: 'none' }
);

export interface Plan {
  readonly ways: readonly Way[];
  /** Why there is no way for some of them. */
  readonly report?: Report;
}

/** Longer expressions are not worked with: nobody could read them, and time must stay bounded. */
const longest = 200;
/** Longer equations, in characters, are not turned round at all. */
const longestWritten = 2000;
/** More unknowns than this are not solved for at once. */
const mostUnknowns = 12;

/** Finds a way to each unknown of a Solve node from the equations below it, without knowing what anything stands for. */
export function planOf(tree: SyntaxTree, solve: number): Plan {
  const below = [...children(tree, solve)];
  const unknowns = below.filter((node) => tree.kinds[node] === Node.Unknown).map((node) => unknownAt(tree, node));
  const names = new Set(unknowns.map(({ name }) => name));
  const none = (report?: Report): Plan => ({
    ways: unknowns.map((unknown): Way => ({ kind: 'none', unknown })),
    ...(report && { report }),
  });
  if (isBroken(tree, solve) || names.size < unknowns.length) {
    return none(); // Reported already, or as a name that is defined twice.
  }
  const equations = below
    .filter((node) => tree.kinds[node] === Node.Equation)
    .map((node): Equation => {
      const left = tree.firstChildren[node];
      const right = tree.nextSiblings[left];
      const isShort = tree.ends[node] - tree.starts[node] <= longestWritten;
      const read = (side: number): Expression =>
        isShort ? readExpression(tree, side, names) : readWhole(tree, side, names);
      return { node, left: read(left), right: read(right) };
    });
  if (unknowns.length > mostUnknowns) {
    return none(reports.tooManyUnknowns(unknowns, mostUnknowns));
  }
  const idle = unknowns.find(({ name }) => !equations.some((equation) => isIn(equation, name)));
  if (idle) {
    return none(reports.inNoEquation(idle));
  }
  if (equations.length < unknowns.length) {
    return none(reports.tooFew(unknowns, equations.length));
  }
  if (equations.length > unknowns.length) {
    return none(reports.tooMany(unknowns, equations));
  }
  return new Planner(tree, equations, unknowns).plan();
}

function unknownAt(tree: SyntaxTree, node: number): Unknown {
  const name = tree.firstChildren[node];
  const range = tree.nextSiblings[name];
  return { node, name: textOf(tree, name), hasBounds: range >= 0 && tree.kinds[range] === Node.Range };
}

const isIn = ({ left, right }: Equation, name: string): boolean => holds(left, name) || holds(right, name);

/** True when a step found a way to an unknown, a report when there is none. */
type Found = boolean | Report;

class Planner {
  private readonly ways = new Map<Unknown, Way>();
  /** What was found out about an equation: the unknowns in it, whether they cancel out, what each is when alone. */
  private readonly held = new Map<Equation, ReadonlySet<Unknown>>();
  private readonly empty = new Map<Equation, boolean>();
  private readonly formulas = new Map<Equation, Map<string, readonly Expression[]>>();

  constructor(
    private readonly tree: SyntaxTree,
    private equations: readonly Equation[],
    private readonly unknowns: readonly Unknown[],
  ) {}

  plan(): Plan {
    let found: Found = true;
    while (this.left.length > 0 && found === true) {
      found = this.fromOne() || this.fromLast() || this.bySubstitution() || this.stuck();
    }
    const ways = this.unknowns.map((unknown): Way => this.ways.get(unknown) ?? { kind: 'none', unknown });
    return { ways, ...(typeof found === 'object' && { report: found }) };
  }

  private get left(): Unknown[] {
    return this.unknowns.filter((unknown) => !this.ways.has(unknown));
  }

  private unknownsIn(equation: Equation): Unknown[] {
    return this.left.filter((unknown) => this.isIn(equation, unknown));
  }

  private isIn(equation: Equation, unknown: Unknown): boolean {
    let held = this.held.get(equation);
    if (!held) {
      held = new Set(this.unknowns.filter(({ name }) => isIn(equation, name)));
      this.held.set(equation, held);
    }
    return held.has(unknown);
  }

  /** From an equation with one unknown left. One that has none left says nothing new, or contradicts the others. */
  private fromOne(): Found {
    for (const equation of this.equations) {
      const [unknown, ...others] = this.unknownsIn(equation);
      if (!unknown || this.saysNothing(equation)) {
        return this.isContradiction(equation)
          ? reports.contradicts(this.tree, equation)
          : reports.repeats(this.tree, equation);
      }
      if (others.length > 0) {
        continue;
      }
      const formulas = this.isolated(equation, unknown);
      if (formulas.length === 0 && !unknown.hasBounds) {
        return reports.notAlone(this.tree, equation, unknown);
      }
      return this.take({ kind: 'alone', unknown, equation, formulas });
    }
    return false;
  }

  /** An unknown that stands in one equation only is found from it last, once all else in it is known. */
  private fromLast(): boolean {
    for (const unknown of this.left) {
      const [equation, ...others] = this.equations.filter((one) => this.isIn(one, unknown));
      if (equation && others.length === 0) {
        const formulas = this.isolated(equation, unknown);
        if (formulas.length > 0 || unknown.hasBounds) {
          return this.take({ kind: 'alone', unknown, equation, formulas });
        }
      }
    }
    return false;
  }

  /**
   * Turns one equation round for one of several unknowns and puts that in all the others: the shortest, and rather one
   * without bounds. Three and more linear equations are solved together, because their formulas are too long to read.
   */
  private bySubstitution(): boolean {
    const { left } = this;
    const isIdle = left.some((unknown) => !this.equations.some((equation) => this.isIn(equation, unknown)));
    if (isIdle) {
      return false;
    }
    if (left.length > 2 && this.areLinear()) {
      return this.together();
    }
    const choices = this.equations
      .flatMap((equation) =>
        this.unknownsIn(equation).flatMap((unknown) => {
          const formulas = this.isolated(equation, unknown);
          return formulas.length === 1 ? [{ equation, unknown, formula: formulas[0] }] : [];
        }),
      )
      .map((choice) => ({ ...choice, cost: this.costOf(choice) }))
      .sort((a, b) => a.cost - b.cost);
    for (const { equation, unknown, formula } of choices) {
      const put = (side: Expression) => substitute(side, unknown.name, formula);
      const others = this.equations.filter((other) => other !== equation);
      const replaced = others.map((other) =>
        this.isIn(other, unknown) ? { ...other, left: put(other.left), right: put(other.right) } : other,
      );
      if (replaced.every((other) => sizeOf(other.left) + sizeOf(other.right) <= longest)) {
        this.take({ kind: 'alone', unknown, equation, formulas: [formula] });
        this.equations = replaced;
        return true;
      }
    }
    return this.areLinear() && this.together();
  }

  private costOf({
    equation,
    unknown,
    formula,
  }: {
    equation: Equation;
    unknown: Unknown;
    formula: Expression;
  }): number {
    const stands = [equation.left, equation.right].some(
      (side) => side.kind === 'unknown' && side.name === unknown.name,
    );
    return sizeOf(formula) + (unknown.hasBounds ? longest : 0) - (stands ? 1.5 : 0);
  }

  private areLinear(): boolean {
    const names = new Set(this.left.map(({ name }) => name));
    return this.equations.every(({ left, right }) => isLinear(left, names) && isLinear(right, names));
  }

  private together(): boolean {
    const { left: unknowns, equations } = this;
    for (const unknown of unknowns) {
      this.ways.set(unknown, { kind: 'together', unknown, equations, unknowns });
    }
    this.equations = [];
    return true;
  }

  private stuck(): Report {
    const { left, equations } = this;
    const idle = left.find((unknown) => !equations.some((equation) => this.isIn(equation, unknown)));
    return idle ? reports.noneLeft(idle) : reports.tangled(this.tree, left, equations[0]);
  }

  /** True when what is left of an equation, once the unknowns cancel out, is of numbers alone that are not equal. */
  private isContradiction(equation: Equation): boolean {
    const { left, right } = equation;
    const [unknown] = this.unknownsIn(equation);
    const polynomial = unknown && polynomialOf(this.tree, left, right, unknown.name);
    const rest = polynomial ? (polynomial.get(0) ?? number(0)) : subtract(left, right);
    return isLiteral(this.tree, rest) && !isAlwaysZero(this.tree, rest);
  }

  /** True when the unknowns of an equation cancel out. */
  private saysNothing(equation: Equation): boolean {
    let isEmpty = this.empty.get(equation);
    if (isEmpty === undefined) {
      const { left, right } = equation;
      isEmpty = this.unknownsIn(equation).every(({ name }) => {
        const polynomial = polynomialOf(this.tree, left, right, name);
        return polynomial !== undefined && [...polynomial.keys()].every((degree) => degree === 0);
      });
      this.empty.set(equation, isEmpty);
    }
    return isEmpty;
  }

  private isolated(equation: Equation, { name }: Unknown): readonly Expression[] {
    let known = this.formulas.get(equation);
    if (!known) {
      known = new Map();
      this.formulas.set(equation, known);
    }
    let formulas = known.get(name);
    if (!formulas) {
      formulas = isolate(this.tree, equation.left, equation.right, name);
      known.set(name, formulas);
    }
    return formulas;
  }

  private take(way: Way & { kind: 'alone' }): true {
    this.ways.set(way.unknown, way);
    this.equations = this.equations.filter((other) => other !== way.equation);
    return true;
  }
}
