import { escapeMarkdown, showValue } from '../display';
import { type Hover, hoverAt } from '../editor';
import { type CellText, Node, type Program, parse, type Vocabulary } from '../language';
import { liveSpans } from '../notebook';
import type { Diagnostic, Span } from '../text';
import { readUnit } from '../units';

/** A value that prose shows: a code span that begins with `=`. */
export interface LiveValue {
  /** The code span in the cell's text, marks included. */
  readonly span: Span;
  /** What stands behind the equals sign. */
  readonly expression: string;
  /** As it reads in place of the code span; undefined where there is none. */
  readonly text?: string;
}

/** One code span, and the aside of the program that works it out. */
interface Live {
  readonly aside: CellText;
  /** The expression in the cell's text. */
  readonly span: Span;
  readonly whole: Span;
  /** How much further the aside begins before the expression. */
  readonly lead: number;
}

/** The live values of a prose cell. Each is an expression of its own, so that a slip in one leaves the others alone. */
export class LiveProse {
  private readonly lives: readonly Live[];

  constructor(
    readonly cell: string,
    readonly text: string,
    vocabulary: Vocabulary,
  ) {
    this.lives = liveSpans(text).map((span, index) => {
      const code = text.slice(span.start, span.end).replace(/[\r\n]/g, ' ');
      const isExpression = isShown(code, vocabulary);
      return {
        span,
        whole: wholeSpan(text, span),
        // In parentheses nothing but an expression can stand, so that prose never defines a name.
        lead: isExpression ? 0 : 1,
        aside: { id: `${cell}\n${index}`, text: isExpression ? code : `(${code})`, aside: true },
      };
    });
  }

  get asides(): readonly CellText[] {
    return this.lives.map(({ aside }) => aside);
  }

  values(program: Program): LiveValue[] {
    return this.lives.map(({ aside, span, whole }) => {
      const [result, ...more] = program.results(aside.id);
      const isWell = more.length === 0 && program.diagnostics(aside.id).every(({ severity }) => severity !== 'error');
      const value = isWell ? result?.value : undefined;
      const expression = this.text.slice(span.start, span.end).trim();
      return { span: whole, expression, ...(value && { text: showValue(value) }) };
    });
  }

  /** What is wrong with the expressions, at their places in the cell. */
  diagnostics(program: Program): Diagnostic[] {
    return this.lives.flatMap(({ aside, span, lead }): Diagnostic[] => {
      const at = (offset: number) => Math.max(span.start, Math.min(span.start + offset - lead, span.end));
      const inCell = ({ start, end }: Span): Span => ({ start: at(start), end: at(end) });
      const [result] = program.results(aside.id);
      const found = program.diagnostics(aside.id).map((problem) => ({
        ...problem,
        span: inCell(problem.span),
        fixes: problem.fixes?.map((fix) => ({
          ...fix,
          edits: fix.edits.map((edit) => ({ ...edit, span: inCell(edit.span) })),
        })),
      }));
      return found.length === 0 && result?.missing
        ? [
            {
              code: 'live-value-missing',
              severity: 'error' as const,
              span,
              message: `This shows no value, because ${result.missing.join(' and ')} has none: an error elsewhere keeps it from being worked out.`,
            },
          ]
        : found;
    });
  }

  /** What is to be told of an offset of the cell: the value shown there, and what a calculation cell tells of the name. */
  hover(program: Program, offset: number): Hover | undefined {
    const index = this.lives.findIndex(({ whole }) => whole.start <= offset && offset <= whole.end);
    const value = this.values(program)[index];
    if (!value) {
      return undefined;
    }
    const { aside, span, lead } = this.lives[index];
    const page = hoverAt({ program }, aside.id, offset - span.start + lead);
    const shown = value.text === undefined ? 'This shows no value.' : `Shows ${escapeMarkdown(value.text)}.`;
    return { span: value.span, markdown: page ? `${shown}\n\n---\n\n${page.markdown}` : shown };
  }

  /** The cell's Markdown with the values in place; a code span without a value stays and says so. */
  markdown(program: Program): string {
    let shown = '';
    let at = 0;
    for (const { span, text } of this.values(program)) {
      const code = this.text.slice(span.start, span.end);
      shown += this.text.slice(at, span.start) + (text === undefined ? `${code} (no value)` : escapeMarkdown(text));
      at = span.end;
    }
    return shown + this.text.slice(at);
  }
}

/** True for what is one expression and nothing else. */
function isShown(code: string, vocabulary: Vocabulary): boolean {
  const { statements, kinds } = parse(code, vocabulary, { readUnit });
  return statements.length === 1 && kinds[statements[0]] === Node.Show;
}

/** The paragraphs of a text that show live values, as plain lines with the values in place. */
export function liveParagraphs(text: string, values: readonly LiveValue[]): string[] {
  const paragraphs: string[] = [];
  let start = 0;
  for (const part of text.split(/(\n[ \t]*\n\s*)/)) {
    const end = start + part.length;
    const inside = values.filter(({ span }) => span.start >= start && span.end <= end);
    if (inside.length > 0) {
      let shown = '';
      let at = start;
      for (const { span, text: value } of inside) {
        shown += text.slice(at, span.start) + (value ?? `${text.slice(span.start, span.end)} (no value)`);
        at = span.end;
      }
      paragraphs.push((shown + text.slice(at, end)).replace(/\s+/g, ' ').trim());
    }
    start = end;
  }
  return paragraphs;
}

/** The code span around its expression: from its first mark to its last. */
function wholeSpan(text: string, { start, end }: Span): Span {
  let last = end;
  while (text[last] === '`') {
    last++;
  }
  let first = start - 1; // The equals sign.
  while (first > 0 && /\s/.test(text[first - 1])) {
    first--;
  }
  while (text[first - 1] === '`') {
    first--;
  }
  return { start: first, end: last };
}
