import { children, Node, Operator, type SyntaxTree } from '../syntax/tree';
import type { Expression } from './expression';

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
  'unitStarts',
  'unitEnds',
] as const;

/**
 * A cell's tree with the rearranged formulas of its solves behind it. Nodes as written keep their numbers; each new
 * one stands, for reports, where the text is that it came from. Words that nobody wrote (a root, a number) are kept
 * behind the cell's own text.
 */
export class SolutionTree {
  private readonly arrays: Pick<Arrays, (typeof columns)[number]>;
  private text: string;

  constructor(private readonly written: SyntaxTree) {
    this.arrays = Object.fromEntries(columns.map((name) => [name, [...written[name]]])) as typeof this.arrays;
    this.text = `${written.text}\n`;
  }

  /** `name = expression`, standing at the unknown; its parts stand at the equation. */
  definition(unknown: number, expression: (equation: number) => number, equation: number): number {
    const name = this.copy(this.written.firstChildren[unknown]);
    const { starts, ends } = this.written;
    return this.parent(Node.Definition, starts[unknown], ends[unknown], [name, expression(equation)]);
  }

  /** An expression whose parts stand at the node `at`. */
  expression(expression: Expression, at: number): number {
    const { starts, ends } = this.written;
    const inner = (part: Expression) => this.expression(part, at);
    switch (expression.kind) {
      case 'written':
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
        const node = this.parent(Node.Binary, starts[at], ends[at], [inner(expression.left), inner(expression.right)]);
        this.arrays.operators[node] = expression.operator;
        return node;
      }
      case 'negated': {
        const node = this.parent(Node.Unary, starts[at], ends[at], [inner(expression.operand)]);
        this.arrays.operators[node] = Operator.Negate;
        return node;
      }
      case 'call': {
        const argument = this.parent(Node.Argument, starts[at], ends[at], [inner(expression.argument)]);
        return this.parent(Node.Call, starts[at], ends[at], [this.word(Node.Name, expression.name), argument]);
      }
    }
  }

  /** The search for an unknown between the bounds of a range. */
  root(unknown: number, range: number, left: Expression, right: Expression, at: number): number {
    const { starts, ends, firstChildren } = this.written;
    return this.parent(Node.Root, starts[at], ends[at], [
      this.copy(firstChildren[unknown]),
      ...[...children(this.written, range)].map((bound) => this.copy(bound)),
      this.expression(left, at),
      this.expression(right, at),
    ]);
  }

  finish(): SyntaxTree {
    const { written, arrays } = this;
    const typed = Object.fromEntries(
      columns.map((name) => {
        const Typed = written[name].constructor as new (values: ArrayLike<number>) => SyntaxTree[typeof name];
        return [name, new Typed(arrays[name])];
      }),
    ) as unknown as Pick<SyntaxTree, (typeof columns)[number]>;
    return { ...written, ...typed, text: this.text, count: arrays.kinds.length };
  }

  /** A node with all that is below it, once more. */
  private copy(node: number): number {
    const below = [...children(this.written, node)].map((child) => this.copy(child));
    const made = this.arrays.kinds.length;
    for (const name of columns) {
      this.arrays[name].push(this.written[name][node]);
    }
    this.adopt(made, below);
    return made;
  }

  private word(kind: Node, text: string): number {
    const start = this.text.length;
    this.text += `${text} `;
    return this.parent(kind, start, start + text.length, []);
  }

  private parent(kind: Node, start: number, end: number, below: readonly number[]): number {
    const { arrays } = this;
    const node = arrays.kinds.length;
    for (const name of columns) {
      arrays[name].push(0);
    }
    arrays.kinds[node] = kind;
    arrays.starts[node] = start;
    arrays.ends[node] = end;
    arrays.units[node] = -1;
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
