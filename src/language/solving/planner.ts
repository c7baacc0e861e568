import type { SyntaxTree } from '../syntax/tree';
import { type Expression, holds, number, sizeOf, substitute, subtract } from './expression';
import { isAlwaysZero, isLiteral } from './identity';
import { isolate } from './isolation';
import { isLinear } from './linearity';
import type { Equation, Plan, Unknown, Way } from './plan';
import { polynomialOf } from './polynomial';
import { type Report, reports } from './reports';

/** Longer expressions are not worked with: nobody could read them, and time must stay bounded. */
const longest = 200;
/** Of three and more linear equations, formulas no longer than this are shown. */
const longestShown = 6;

/** True when an unknown stands in an equation. */
export const isIn = ({ left, right }: Equation, name: string): boolean => holds(left, name) || holds(right, name);

/** True when a step found a way to an unknown, a report when there is none. */
type Found = boolean | Report;

export class Planner {
  private ways = new Map<Unknown, Way>();
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
    const found = this.finish();
    const ways = this.unknowns.map((unknown): Way => this.ways.get(unknown) ?? { kind: 'none', unknown });
    return { ways, ...(typeof found === 'object' && { report: found }) };
  }

  /** Finds a way to one unknown after the other, until there is one to each, or none to any. */
  private finish(): Found {
    let found: Found = true;
    while (this.left.length > 0 && found === true) {
      found = this.fromOne() || this.fromLast() || this.bySubstitution() || this.stuck();
    }
    return found;
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
   * without bounds. Three and more linear equations are solved together where their formulas are too long to read.
   */
  private bySubstitution(): boolean {
    const { left } = this;
    const isIdle = left.some((unknown) => !this.equations.some((equation) => this.isIn(equation, unknown)));
    if (isIdle) {
      return false;
    }
    const choices = this.choices();
    const areLinear = this.areLinear();
    if (left.length > 2 && areLinear) {
      return this.byShortFormulas(choices) || this.together();
    }
    return choices.some((choice) => this.put(choice)) || (areLinear && this.together());
  }

  /** Puts one formula after the other in its unknown's place, unless what that comes to in the end is too long to read. */
  private byShortFormulas(choices: readonly Choice[]): boolean {
    const { equations } = this;
    const before = new Map(this.ways);
    const first = choices.find((choice) => standsAlone(choice) && sizeOf(choice.formula) <= longestShown);
    const isReadable = (way: Way) =>
      way.kind === 'alone' && way.formulas.every((formula) => sizeOf(formula) <= longestShown);
    if (
      first &&
      this.put(first) &&
      this.finish() === true &&
      [...this.ways].every(([unknown, way]) => before.has(unknown) || isReadable(way))
    ) {
      return true;
    }
    this.equations = equations;
    this.ways = before;
    return false;
  }

  /** Unknowns that one formula gives, the shortest first. */
  private choices(): Choice[] {
    const choices = this.equations.flatMap((equation) =>
      this.unknownsIn(equation).flatMap((unknown) => {
        const formulas = this.isolated(equation, unknown);
        return formulas.length === 1 ? [{ equation, unknown, formula: formulas[0] }] : [];
      }),
    );
    const costs = new Map(choices.map((choice) => [choice, costOf(choice)]));
    return choices.sort((a, b) => costs.get(a)! - costs.get(b)!);
  }

  /** Puts a formula in its unknown's place; false where that makes an equation too long. */
  private put({ equation, unknown, formula }: Choice): boolean {
    const into = (side: Expression) => substitute(side, unknown.name, formula);
    const replaced = this.equations
      .filter((other) => other !== equation)
      .map((other) =>
        this.isIn(other, unknown) ? { ...other, left: into(other.left), right: into(other.right) } : other,
      );
    if (replaced.some((other) => sizeOf(other.left) + sizeOf(other.right) > longest)) {
      return false;
    }
    this.take({ kind: 'alone', unknown, equation, formulas: [formula] });
    this.equations = replaced;
    return true;
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

/** An unknown, the equation that gives it and the formula. */
interface Choice {
  readonly equation: Equation;
  readonly unknown: Unknown;
  readonly formula: Expression;
}

const standsAlone = ({ equation, unknown }: Choice): boolean =>
  [equation.left, equation.right].some((side) => side.kind === 'unknown' && side.name === unknown.name);

const costOf = (choice: Choice): number =>
  sizeOf(choice.formula) + (choice.unknown.hasBounds ? longest : 0) - (standsAlone(choice) ? 1.5 : 0);
