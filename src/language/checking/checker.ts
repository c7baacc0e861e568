import type { Diagnostic, RelatedPlace, Span } from '../../text';
import type { FunctionDefinition, Library } from '../library';
import type { GivenRows, SheetProblem } from '../program';
import { Node, type SyntaxTree, spanOf, textOf } from '../syntax/tree';
import type { Arithmetic } from './arithmetic';
import type { Cell, Name } from './binding';
import type { Meaning } from './meaning';
import type { NameTable } from './name-table';
import type { Type } from './type';

/** All that checking needs and that lasts: one for a sheet. */
export interface CheckingContext {
  readonly library: Library;
  /** The library's functions and plain mathematics. */
  readonly functions: ReadonlyMap<string, FunctionDefinition>;
  readonly arithmetic: Arithmetic;
  readonly names: NameTable;
  /** The rows of a file beside the sheet that a schedule names. */
  readonly rows: (file: string) => GivenRows | SheetProblem;
  /** Where a stretch of a cell stands in the file of a sheet that names are taken from; undefined for the sheet worked on. */
  readonly place: (cell: string, span: Span) => RelatedPlace['file'];
}

/** Another place that helps to understand a report, in this sheet or in one that names are taken from. */
export function relatedPlace({ id, context }: Cell, span: Span, message: string): RelatedPlace {
  const file = context.place(id, span);
  return file ? { file, span, message } : { cell: id, span, message };
}

/** Calls of the sheet's functions within each other, and in one statement: enough for any sheet, few enough to end soon. */
const deepest = 50;
const mostCalls = 2000;

/** The functions of the sheet whose bodies are being checked, outermost first, as the calls of one statement go. */
export class CallPath {
  constructor(
    private readonly functions: readonly Name[] = [],
    private readonly made = { calls: 0 },
  ) {}

  includes(name: Name): boolean {
    return this.functions.includes(name);
  }

  /** The path into one more call; undefined when that is one too many. */
  into(name: Name): CallPath | undefined {
    this.made.calls++;
    return this.functions.length < deepest && this.made.calls <= mostCalls
      ? new CallPath([...this.functions, name], this.made)
      : undefined;
  }
}

export const tooManyCalls = `This leads to more than ${deepest} calls within one another, or ${mostCalls} in all. Give a part of it a name on a line of its own.`;

/** Where reports go while expressions are checked: their tree, what is found out about it, and its local names. */
export class Checker {
  readonly tree: SyntaxTree;
  diagnostics: Diagnostic[] = [];
  /** True when a name was not found: what could be meant hangs on all other names. */
  namesMissing = false;
  private path: CallPath | undefined;

  constructor(
    readonly context: CheckingContext,
    readonly meaning: Meaning,
    readonly locals?: ReadonlyMap<string, Type>,
    within?: CallPath,
  ) {
    this.tree = meaning.tree;
    this.path = within;
  }

  /** The calls that the expression stands in; most expressions have none, and need no path. */
  get within(): CallPath {
    this.path ??= new CallPath();
    return this.path;
  }

  /** Makes ready for the next statement of a cell, as if nothing had been checked before. */
  begin(): void {
    this.namesMissing = false;
    this.path = undefined;
    if (this.diagnostics.length > 0) {
      this.diagnostics = [];
    }
  }

  text(node: number): string {
    return textOf(this.tree, node);
  }

  span(node: number): Span {
    return spanOf(this.tree, node);
  }

  /** An expression as written, short enough for a message. */
  quote(node: number): string {
    const text = this.text(node).replace(/\s+/g, ' ');
    return `\`${text.length > 40 ? `${text.slice(0, 39)}…` : text}\``;
  }

  report(
    code: Diagnostic['code'],
    at: number | Span,
    message: string,
    more: Pick<Diagnostic, 'fixes' | 'related'> = {},
  ): void {
    const span = typeof at === 'number' ? this.span(at) : at;
    this.diagnostics.push({ code, severity: 'error', span, message, ...more });
  }

  /** The expression inside parentheses. */
  ungroup(node: number): number {
    let inner = node;
    while (this.tree.kinds[inner] === Node.Group) {
      inner = this.tree.firstChildren[inner];
    }
    return inner;
  }
}

/** A fix that replaces one stretch of text. */
export const replacing = (title: string, span: Span, newText: string, safe = false) => ({
  title,
  edits: [{ span, newText }],
  safe,
});
