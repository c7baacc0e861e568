import type { Codes, Diagnostic, Fix, ProblemCode } from '../../../text';
import { Scanner } from '../scanning/scanner';
import { Token } from '../scanning/token';
import { Node } from '../tree';
import type { UnitReader } from '../unit-reader';
import type { Vocabulary } from '../vocabulary';
import type { TreeBuilder } from './tree-builder';

/** Brackets within brackets, and the height of a tree: deep enough for any sheet, shallow enough for every stack. */
export const maximumDepth = 200;

/** What all parts of the parser share: the tokens, the tree that grows, and the problems found. */
export class Reader extends Scanner {
  readonly diagnostics: Diagnostic[] = [];
  /** Calls of the parser within each other, for the bound on depth. */
  nesting = 0;
  /** Problems there were before the line that is being read: one line reports what cannot be read only once. */
  private known = 0;
  /** By a unit's number in the tree, once it was asked: whether it makes a size of the number before it. */
  private readonly sizeUnits: boolean[] = [];

  constructor(
    text: string,
    codes: Codes,
    readonly vocabulary: Vocabulary,
    readonly units: UnitReader,
    readonly tree: TreeBuilder,
  ) {
    super(text, codes);
  }

  /** True when nothing more stands here: at the line's end, and in a table at the cell's. */
  get isOver(): boolean {
    return this.token <= Token.LineEnd || (this.inRow && this.token === Token.Bar);
  }

  report(code: ProblemCode, start: number, end: number, message: string, fixes?: readonly Fix[]): void {
    this.diagnostics.push({
      code,
      severity: 'error',
      span: { start, end },
      message,
      ...(fixes && fixes.length > 0 ? { fixes } : undefined),
    });
  }

  /** From here on a problem with what cannot be read is a new one. */
  startLine(): void {
    this.known = this.diagnostics.length;
  }

  /** True when this line has shown a problem already, so that what follows from it is not worth another. */
  get isLineBroken(): boolean {
    return this.diagnostics.length > this.known;
  }

  /** Says that the line just begun is indented and nothing above it takes indented lines. */
  reportIndent(): void {
    this.report(
      'unexpected-indent',
      this.start,
      this.end,
      'This line is indented, and nothing above it takes indented lines. Begin it where the other lines begin; fields stand below `name = function` and read `field: value`.',
    );
  }

  /** A node for the current token, which is passed. */
  take(kind: Node): number {
    const node =
      kind === Node.Name ? this.tree.name(this.start, this.end, this.hash) : this.tree.leaf(kind, this.start, this.end);
    this.advance();
    return node;
  }

  /** A node for what is not there, of no width. */
  absent(at = this.lastEnd): number {
    return this.tree.leaf(Node.Error, at, at);
  }

  /** The current token as written. */
  get currentText(): string {
    return this.text.slice(this.start, this.end);
  }

  /** Passes everything up to one of the tokens or the line's end; the Error node holds it, -1 when there was nothing. */
  skipTo(...stops: readonly Token[]): number {
    const from = this.start;
    if (this.isOver || stops.includes(this.token)) {
      return -1;
    }
    while (!this.isOver && !stops.includes(this.token)) {
      this.advance();
    }
    return this.tree.leaf(Node.Error, from, this.lastEnd);
  }

  /** True for a unit, by its number in the tree, that makes a size of the number before it when a word follows. */
  isSizeUnit(unit: number): boolean {
    this.sizeUnits[unit] ??= this.vocabulary.sizeUnits.has(this.tree.unitTexts.words[unit]);
    return this.sizeUnits[unit];
  }
}

/** A fix of one edit. */
export const replace = (title: string, start: number, end: number, newText: string, safe = true): readonly Fix[] => [
  { title, edits: [{ span: { start, end }, newText }], safe },
];
