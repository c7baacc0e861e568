import { children, Node, Operator, type SyntaxTree, textOf } from '../syntax/tree';
import { type Expression, valueChildren } from './expression';
import type { Equation, Unknown, Way } from './plan';

type Arrays = { -readonly [K in keyof SyntaxTree]: SyntaxTree[K] extends ArrayLike<number> ? number[] : never };

const columns = [
  'kinds',
  'starts',
  'ends',
  'firstChildren',
  'nextSiblings',
  'operators',
  'numbers',
  'decimals',
  'units',
  'names',
] as const;

/**
 * A cell's tree with the rearranged formulas of its solves behind it. Nodes as written keep their numbers; each new
 * one stands, for reports, where the text is that it came from. Words that nobody wrote (a root, a number) are kept
 * behind the cell's own text.
 */
export class SolutionTree {
  private readonly arrays: Pick<Arrays, (typeof columns)[number]>;
  /** For each node the written one that it is or copies; -1 for one that nobody wrote. */
  private readonly origins: number[];
  private text: string;

  constructor(private readonly written: SyntaxTree) {
    this.arrays = Object.fromEntries(
      columns.map((name) => [name, [...written[name].subarray(0, written.count)]]),
    ) as typeof this.arrays;
    this.origins = Array.from({ length: written.count }, (_, node) => node);
    this.text = `${written.text}\n`;
  }

  /** A Definition that stands at the unknown. */
  definition(way: Exclude<Way, { kind: 'none' }>): number {
    const { node } = way.unknown;
    const { starts, ends } = this.written;
    const value = way.kind === 'alone' ? this.solution(way) : this.together(way);
    return this.parent(Node.Definition, [starts[node], ends[node]], [this.name(way.unknown), value]);
  }

  private solution({ unknown, equation, formulas }: Way & { kind: 'alone' }): number {
    const at = this.spanOf(equation.node);
    const list = this.parent(
      Node.List,
      at,
      formulas.map((formula) => this.expression(formula, at)),
    );
    return this.parent(Node.Solution, at, [
      this.name(unknown),
      list,
      this.equation(equation),
      ...this.copiedRange(unknown),
    ]);
  }

  private together({ unknown, unknowns, equations }: Way & { kind: 'together' }): number {
    const at = this.spanOf(equations[0].node);
    const inOrder = [unknown, ...unknowns.filter((other) => other !== unknown)];
    return this.parent(Node.Together, at, [
      this.name(unknowns[0]),
      ...inOrder.map((one) => this.copy(one.node)),
      ...equations.map((equation) => this.equation(equation)),
    ]);
  }

  private equation({ node, left, right }: Equation): number {
    const at = this.spanOf(node);
    const made = this.parent(Node.Equation, at, [this.expression(left, at), this.expression(right, at)]);
    this.origins[made] = node;
    return made;
  }

  private name = ({ node }: Unknown): number => this.copy(this.written.firstChildren[node]);

  private copiedRange({ node, hasBounds }: Unknown): number[] {
    const { firstChildren, nextSiblings } = this.written;
    return hasBounds ? [this.copy(nextSiblings[firstChildren[node]])] : [];
  }

  private spanOf = (node: number): Span => [this.written.starts[node], this.written.ends[node]];

  /** An expression whose parts that nobody wrote stand at `at`. */
  private expression(expression: Expression, at: Span): number {
    const inner = (part: Expression) => this.expression(part, at);
    switch (expression.kind) {
      case 'written':
        return this.copy(expression.node, expression.put);
      case 'unknown':
        return this.copy(expression.node);
      case 'number': {
        if (expression.node !== undefined) {
          return this.copy(expression.node);
        }
        const node = this.word(Node.Number, String(expression.value));
        this.arrays.numbers[node] = expression.value;
        return node;
      }
      case 'binary': {
        const node = this.parent(Node.Binary, at, [inner(expression.left), inner(expression.right)]);
        this.arrays.operators[node] = expression.operator;
        return node;
      }
      case 'negated': {
        const node = this.parent(Node.Unary, at, [inner(expression.operand)]);
        this.arrays.operators[node] = Operator.Negate;
        return node;
      }
      case 'converted':
        return this.adopted(expression.node, [inner(expression.operand)]);
      case 'call': {
        const argument = this.parent(Node.Argument, at, [inner(expression.argument)]);
        return this.parent(Node.Call, at, [this.word(Node.Name, expression.name), argument]);
      }
    }
  }

  finish(): { tree: SyntaxTree; origins: readonly number[] } {
    const { written, arrays, origins } = this;
    const typed = Object.fromEntries(
      columns.map((name) => {
        const Typed = written[name].constructor as new (values: ArrayLike<number>) => SyntaxTree[typeof name];
        return [name, new Typed(arrays[name])];
      }),
    ) as unknown as Pick<SyntaxTree, (typeof columns)[number]>;
    return { tree: { ...written, ...typed, text: this.text, count: arrays.kinds.length }, origins };
  }

  /** A node with all that is below it, once more; names in `put` give way to expressions. */
  private copy(node: number, put?: ReadonlyMap<string, Expression>): number {
    const { written } = this;
    const values = put && new Set(valueChildren(written, node));
    const below = [...children(written, node)].map((child) => {
      if (!values?.has(child)) {
        return this.copy(child);
      }
      const by = written.kinds[child] === Node.Name ? put?.get(textOf(written, child)) : undefined;
      return by ? this.expression(by, this.spanOf(child)) : this.copy(child, put);
    });
    return this.adopted(node, below);
  }

  /** A copy of one node above other children. */
  private adopted(node: number, below: readonly number[]): number {
    const made = this.arrays.kinds.length;
    for (const name of columns) {
      this.arrays[name].push(this.written[name][node]);
    }
    this.origins.push(node);
    this.adopt(made, below);
    return made;
  }

  private word(kind: Node, text: string): number {
    const start = this.text.length;
    this.text += `${text} `;
    return this.parent(kind, [start, start + text.length], []);
  }

  private parent(kind: Node, [start, end]: Span, below: readonly number[]): number {
    const { arrays } = this;
    const node = arrays.kinds.length;
    for (const name of columns) {
      arrays[name].push(0);
    }
    arrays.kinds[node] = kind;
    arrays.starts[node] = start;
    arrays.ends[node] = end;
    arrays.units[node] = -1;
    arrays.names[node] = -1;
    this.origins.push(-1);
    this.adopt(node, below);
    return node;
  }

  private adopt(node: number, below: readonly number[]): void {
    const { firstChildren, nextSiblings } = this.arrays;
    firstChildren[node] = below[0] ?? -1;
    nextSiblings[node] = -1;
    below.forEach((child, i) => {
      nextSiblings[child] = below[i + 1] ?? -1;
    });
  }
}

type Span = readonly [start: number, end: number];
