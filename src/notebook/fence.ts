import { type Line, linesOf } from './lines';

/** The first info word of a calculation cell's fence. */
export const cellWord = 'kft';

/** A fenced block, taken apart. Offsets count from where the block's text begins. */
export interface Fence {
  /** Spaces before the opening fence; as many are taken off each content line. */
  readonly indent: number;
  /** The fence itself: three or more of one character. */
  readonly run: string;
  /** What follows the opening fence on its line: `kft` and further words. */
  readonly info: string;
  readonly content: readonly Line[];
  /** The closing line; absent when the block is not closed. */
  readonly closing?: Line;
}

/** Takes apart a fenced block that begins at the start of a line; undefined when `source` is none. */
export function readFence(source: string): Fence | undefined {
  const opening = /^( {0,3})(`{3,}|~{3,})([^\r\n]*)/.exec(source);
  if (!opening) {
    return undefined;
  }
  const [, indent, run, info] = opening;
  const lines = linesOf(source).slice(1);
  const last = lines.at(-1);
  const closed = last !== undefined && closes(source.slice(last.start, last.end), run);
  const content = (closed ? lines.slice(0, -1) : lines).map((line) => withoutIndent(source, line, indent.length));
  return { indent: indent.length, run, info, content, closing: closed ? last : undefined };
}

function withoutIndent(source: string, line: Line, indent: number): Line {
  let start = line.start;
  while (start < line.end && start - line.start < indent && source[start] === ' ') {
    start++;
  }
  return { ...line, start };
}

/** True when a line ends the block that `run` opened. */
function closes(line: string, run: string): boolean {
  const closing = /^ {0,3}(`+|~+)[ \t]*$/.exec(line);
  return closing !== null && closing[1][0] === run[0] && closing[1].length >= run.length;
}

/** A fenced block around a cell's text, in the style of `like` as far as the text allows. Lines end with `\n`. */
export function writeFence(text: string, like?: Fence): string {
  const character = like?.run[0] ?? '`';
  const indent = ' '.repeat(like?.indent ?? 0);
  const runs = text.match(character === '~' ? /~+/g : /`+/g) ?? [];
  const longest = Math.max(0, ...runs.map((run) => run.length));
  const kept = like?.run.length ?? 3;
  const run = longest < kept ? (like?.run ?? '```') : character.repeat(longest + 1);
  const content = text === '' ? [] : text.split('\n').map((line) => (line === '' ? '' : indent + line));
  return [`${indent}${run}${like?.info ?? cellWord}`, ...content, indent + run].join('\n');
}
