import { children, Node, type SyntaxTree, textOf } from '../syntax/tree';
import { type Expression, holds, readExpression, substitute } from './expression';
import { type Isolated, isolate } from './isolation';

interface Equation {
  readonly node: number;
  readonly left: Expression;
  readonly right: Expression;
}

/** One unknown of a solve, and what was found for it. */
export type Solved = { readonly unknown: number; readonly name: string } & (
  | { readonly kind: 'isolated'; readonly equation: number; readonly isolated: Isolated }
  /** It cannot be isolated: the place where both sides are equal is searched for between the bounds of `range`. */
  | { readonly kind: 'sought'; readonly equation: Equation; readonly range: number }
  /** `report` is absent where another unknown of the same solve has said it. */
  | { readonly kind: 'failed'; readonly report?: { code: string; at: number; message: string } }
);

/** Finds each unknown of a Solve node from the equations below it. What is found may use other unknowns by name. */
export function solveSystem(tree: SyntaxTree, solve: number): Solved[] {
  const unknowns = [...children(tree, solve)].filter((node) => tree.kinds[node] === Node.Unknown);
  const named = unknowns.map((unknown) => ({ unknown, name: textOf(tree, tree.firstChildren[unknown]) }));
  const names = new Set(named.map(({ name }) => name));
  const equations = [...children(tree, solve)]
    .filter((node) => tree.kinds[node] === Node.Equation)
    .map((node): Equation => {
      const left = tree.firstChildren[node];
      return {
        node,
        left: readExpression(tree, left, names),
        right: readExpression(tree, tree.nextSiblings[left], names),
      };
    });
  const fail = (report: { code: string; at: number; message: string }): Solved[] =>
    named.map((one, i): Solved => ({ ...one, kind: 'failed', ...(i === 0 && { report }) }));
  const count = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`;
  const balance = `${count(names.size, 'unknown')} and ${count(equations.length, 'equation')}`;
  if (equations.length < named.length) {
    return fail({
      code: 'too-few-equations',
      at: named[equations.length].unknown,
      message: `Found ${balance}: each unknown needs an equation of its own. Add an equation, or give one unknown a value.`,
    });
  }
  if (equations.length > named.length) {
    return fail({
      code: 'too-many-equations',
      at: equations[named.length].node,
      message: `Found ${balance}. Take out one equation and write it as a \`check\`, or name another unknown.`,
    });
  }
  return new System(tree, equations, named).solve();
}

class System {
  private readonly left: Set<string>;
  private readonly solved = new Map<string, Solved>();

  constructor(
    private readonly tree: SyntaxTree,
    private equations: readonly Equation[],
    private readonly named: readonly { readonly unknown: number; readonly name: string }[],
  ) {
    this.left = new Set(named.map(({ name }) => name));
  }

  solve(): Solved[] {
    while (this.left.size > 0 && (this.fromOne(false) || this.bySubstitution() || this.fromOne(true))) {
      // Each round finds one unknown.
    }
    return this.named.map((one) => this.solved.get(one.name) ?? { ...one, kind: 'failed', ...this.reportFor(one) });
  }

  private unknownsIn({ left, right }: Equation): string[] {
    return [...this.left].filter((name) => holds(this.tree, left, name) || holds(this.tree, right, name));
  }

  /** From an equation with one unknown left: by turning it round, or else by a search. */
  private fromOne(mayBeSought: boolean): boolean {
    for (const equation of this.equations) {
      const [name, ...others] = this.unknownsIn(equation);
      if (name === undefined || others.length > 0) {
        continue;
      }
      const one = this.named.find((candidate) => candidate.name === name)!;
      const range = this.rangeOf(one.unknown);
      const isolated = this.isolated(equation, name);
      if (isolated && !(isolated.hasOpposite && range >= 0 && !this.startsAtZeroOrMore(range))) {
        this.take(equation, name, { ...one, kind: 'isolated', equation: equation.node, isolated });
        return true;
      }
      if (mayBeSought && range >= 0) {
        this.take(equation, name, { ...one, kind: 'sought', equation, range });
        return true;
      }
    }
    return false;
  }

  /** Turns one equation round for one of several unknowns and puts that in all the others. */
  private bySubstitution(): boolean {
    for (const equation of this.equations) {
      for (const name of this.unknownsIn(equation)) {
        const isolated = this.isolated(equation, name);
        if (!isolated || isolated.hasOpposite || isolated.notNegative.length > 0) {
          continue;
        }
        const others = this.equations.filter((other) => other !== equation);
        const replaced = others.flatMap((other): Equation[] => {
          const left = substitute(this.tree, other.left, name, isolated.value);
          const right = substitute(this.tree, other.right, name, isolated.value);
          return left && right ? [{ ...other, left, right }] : [];
        });
        if (replaced.length === others.length && others.length > 0) {
          const one = this.named.find((candidate) => candidate.name === name)!;
          this.take(equation, name, { ...one, kind: 'isolated', equation: equation.node, isolated });
          this.equations = replaced;
          return true;
        }
      }
    }
    return false;
  }

  private isolated({ left, right }: Equation, name: string): Isolated | undefined {
    return isolate(this.tree, left, right, name);
  }

  private take(equation: Equation, name: string, solved: Solved): void {
    this.solved.set(name, solved);
    this.left.delete(name);
    this.equations = this.equations.filter((other) => other !== equation);
  }

  private rangeOf(unknown: number): number {
    const range = this.tree.nextSiblings[this.tree.firstChildren[unknown]];
    return range >= 0 && this.tree.kinds[range] === Node.Range ? range : -1;
  }

  private startsAtZeroOrMore(range: number): boolean {
    const kind = this.tree.kinds[this.tree.firstChildren[range]];
    return kind === Node.Quantity || kind === Node.Number;
  }

  /** Why an unknown was not found. */
  private reportFor({ unknown, name }: { unknown: number; name: string }) {
    const own = this.equations.find((equation) => this.unknownsIn(equation).includes(name));
    if (!own) {
      return {
        report: {
          code: 'too-few-equations',
          at: unknown,
          message: `No equation is left to find \`${name}\` from: the others are used up, or say the same thing twice. Add an independent equation.`,
        },
      };
    }
    return this.unknownsIn(own).length === 1
      ? {
          report: {
            code: 'cannot-infer-unknown',
            at: unknown,
            message: `\`${name}\` cannot be brought to stand alone in \`${textOf(this.tree, own.node)}\`. Say where to search, \`${name} in low .. high\`, or add an equation.`,
          },
        }
      : {
          report: {
            code: 'not-available',
            at: unknown,
            message: `Searching for several unknowns at once is not available in this version: \`${name}\` and others hang on each other in \`${textOf(this.tree, own.node)}\`.`,
          },
        };
  }
}
