import { type Codes, type Diagnostic, WordTable } from '../../../text';
import { type Comment, Node, type SyntaxTree } from '../tree';

/**
 * Grows the parallel arrays of one tree. The arrays are kept from parse to parse and copied to size at the end, so
 * that reading a cell makes no garbage but its result.
 */
export class TreeBuilder {
  private capacity = 0;
  count = 0;
  kinds!: Uint8Array;
  starts!: Int32Array;
  ends!: Int32Array;
  firstChildren!: Int32Array;
  nextSiblings!: Int32Array;
  operators!: Uint8Array;
  numbers!: Float64Array;
  decimals!: Int8Array;
  units!: Int32Array;
  names!: Int32Array;
  /** Height of the tree below each node; not part of the result. */
  heights!: Uint16Array;
  readonly unitTexts = new WordTable();
  private readonly nameTexts = new WordTable();

  constructor() {
    this.grow(1024);
  }

  /** Begins the tree of a text. All that most nodes lack is cleared at once for all of them. */
  begin(text: string, codes: Codes): void {
    const { count } = this;
    this.firstChildren.fill(-1, 0, count);
    this.nextSiblings.fill(-1, 0, count);
    this.operators.fill(0, 0, count);
    this.numbers.fill(0, 0, count);
    this.decimals.fill(0, 0, count);
    this.units.fill(-1, 0, count);
    this.names.fill(-1, 0, count);
    this.heights.fill(0, 0, count);
    this.count = 0;
    this.unitTexts.begin(text, codes);
    this.nameTexts.begin(text, codes);
  }

  /** A node without children. */
  leaf(kind: Node, start: number, end: number): number {
    if (this.count === this.capacity) {
      this.grow(this.capacity * 2);
    }
    const node = this.count++;
    this.kinds[node] = kind;
    this.starts[node] = start;
    this.ends[node] = end;
    return node;
  }

  /** A node whose children begin with `first`, already linked to its siblings. */
  parent(kind: Node, start: number, end: number, first: number): number {
    const node = this.leaf(kind, start, end);
    this.firstChildren[node] = first;
    let height = 0;
    for (let child = first; child >= 0; child = this.nextSiblings[child]) {
      if (this.heights[child] >= height) {
        height = this.heights[child] + 1;
      }
    }
    this.heights[node] = height;
    return node;
  }

  /** Makes `next` the sibling after `node`, and returns it. */
  link(node: number, next: number): number {
    this.nextSiblings[node] = next;
    return next;
  }

  /** A Name that stands at `start` … `end` of the text; `hash` is that of its codes. */
  name(start: number, end: number, hash?: number): number {
    const node = this.leaf(Node.Name, start, end);
    this.names[node] = this.nameTexts.add(start, end, hash);
    return node;
  }

  finish(
    text: string,
    statements: readonly number[],
    comments: readonly Comment[],
    diagnostics: readonly Diagnostic[],
  ): SyntaxTree {
    const { count } = this;
    return {
      text,
      count,
      kinds: this.kinds.slice(0, count),
      starts: this.starts.slice(0, count),
      ends: this.ends.slice(0, count),
      firstChildren: this.firstChildren.slice(0, count),
      nextSiblings: this.nextSiblings.slice(0, count),
      operators: this.operators.slice(0, count),
      numbers: this.numbers.slice(0, count),
      decimals: this.decimals.slice(0, count),
      units: this.units.slice(0, count),
      unitTexts: this.unitTexts.words,
      names: this.names.slice(0, count),
      nameTexts: this.nameTexts.words,
      statements,
      comments,
      diagnostics,
    };
  }

  private grow(capacity: number): void {
    const larger = <T extends { set(from: T): void }>(array: T, from: T | undefined): T => {
      if (from) {
        array.set(from);
      }
      return array;
    };
    const none = () => new Int32Array(capacity).fill(-1);
    this.kinds = larger(new Uint8Array(capacity), this.kinds);
    this.starts = larger(new Int32Array(capacity), this.starts);
    this.ends = larger(new Int32Array(capacity), this.ends);
    this.firstChildren = larger(none(), this.firstChildren);
    this.nextSiblings = larger(none(), this.nextSiblings);
    this.operators = larger(new Uint8Array(capacity), this.operators);
    this.numbers = larger(new Float64Array(capacity), this.numbers);
    this.decimals = larger(new Int8Array(capacity), this.decimals);
    this.units = larger(none(), this.units);
    this.names = larger(none(), this.names);
    this.heights = larger(new Uint16Array(capacity), this.heights);
    this.capacity = capacity;
  }
}
