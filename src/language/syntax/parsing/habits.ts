import { type Reader, replace } from './reader';

/** A way of writing that other languages have and this one has not: what it looks like, and what to write instead. */
interface Habit {
  readonly code: string;
  /** How the text that cannot be read begins. */
  readonly rest: RegExp;
  /** What must stand right before it. */
  readonly after?: RegExp;
  readonly message: (found: RegExpExecArray) => string;
  /** Written in place of what `rest` matched; none where only its author knows. */
  readonly instead?: (found: RegExpExecArray) => string;
}

const habits: readonly Habit[] = [
  {
    code: 'needless-semicolon',
    rest: /^;+/,
    message: () => 'A line ends without a sign. Take the `;` out; a second statement begins on a line of its own.',
    instead: () => '',
  },
  {
    code: 'foreign-comment',
    rest: /^(#|%|\/\*)\s*/,
    message: ([, sign]) => `A comment begins with \`//\`, not with \`${sign}\`.`,
    instead: () => '// ',
  },
  {
    code: 'foreign-times',
    rest: /^[xX](?=[\s\d(.])/,
    message: ([sign]) => `\`${sign}\` does not multiply here. Write \`*\` or \`×\`.`,
    instead: () => '*',
  },
  {
    code: 'foreign-of',
    rest: /^of\b/,
    message: () => 'A share of something is a product: write `*` for `of`.',
    instead: () => '*',
  },
  {
    code: 'foreign-choice',
    rest: /^\?/,
    message: () => 'A choice is written in words: `if condition then value else value`.',
  },
  {
    code: 'needless-bracket',
    rest: /^[)\]}]+/,
    message: ([sign]) => `No bracket is open that \`${sign}\` closes. Take it out, or open one before.`,
    instead: () => '',
  },
  {
    code: 'foreign-length',
    rest: /^['’′]/,
    after: /\d\s*$/,
    message: () => 'Feet are written `ft`.',
    instead: () => ' ft',
  },
  {
    code: 'foreign-length',
    rest: /^["”″]/,
    after: /\d\s*$/,
    message: () => 'Inches are written `in`.',
    instead: () => ' in',
  },
];

/** Reports text that cannot be read as the habit it comes from; false when it is none that is known. */
export function reportHabit(r: Reader, from: number): boolean {
  const rest = r.text.slice(from, r.lastEnd);
  const before = r.text.slice(Math.max(0, from - 20), from);
  for (const { code, rest: pattern, after, message, instead } of habits) {
    const found = pattern.exec(rest);
    if (found && (!after || after.test(before))) {
      const end = from + found[0].length;
      const written = instead?.(found);
      const title = written ? `Write ${written.trim()}` : 'Take it out';
      r.report(code, from, end, message(found), written === undefined ? [] : replace(title, from, end, written, false));
      return true;
    }
  }
  return false;
}
