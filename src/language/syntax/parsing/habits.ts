import type { ProblemCode } from '../../../text';
import { type Reader, replace } from './reader';

/** A way of writing that other languages have and this one has not: what it looks like, and what to write instead. */
interface Habit {
  readonly code: ProblemCode;
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
    code: 'foreign-money',
    rest: /^\$\s*(\d[\d.]*)/,
    message: ([, amount]) => `Money has its currency behind it: \`${amount} USD\`.`,
    instead: ([, amount]) => `${amount} USD`,
  },
  {
    code: 'foreign-money',
    rest: /^\$/,
    after: /\d[^\S\n]*$/,
    message: () => 'Dollars are written `USD`.',
    instead: () => 'USD',
  },
  {
    code: 'foreign-fraction',
    rest: /^\s*[½¼¾]/,
    message: ([sign]) => `The character \`${sign.trim()}\` is no number here. Write \`${fractions[sign.trim()]}\`.`,
    instead: ([sign]) => fractions[sign.trim()],
  },
  {
    code: 'two-units',
    rest: /^\d[\d.]*\s*(in|ft)\b/,
    after: /\bft[^\S\n]*$/,
    message: ([inches]) => `A quantity has one unit. Add the parts: \`… ft + ${inches}\`.`,
    instead: ([inches]) => `+ ${inches}`,
  },
  {
    code: 'broken-unit',
    rest: /^[CF]\b/,
    after: /(deg|°)\s+$/,
    message: ([scale]) => `The unit of a temperature is one word: \`°${scale}\` or \`deg${scale}\`.`,
  },
  {
    code: 'foreign-length',
    rest: /^['’′]/,
    after: /\d[^\S\n]*$/,
    message: () => 'Feet are written `ft`.',
    instead: () => ' ft',
  },
  {
    code: 'foreign-length',
    rest: /^["”″]/,
    after: /\d[^\S\n]*$/,
    message: () => 'Inches are written `in`.',
    instead: () => ' in',
  },
];

const fractions: Readonly<Record<string, string>> = { '½': '0.5', '¼': '0.25', '¾': '0.75' };

/** Reports text that cannot be read as the habit it comes from; false when it is none that is known. */
export function reportHabit(r: Reader, from: number, until = r.lastEnd): boolean {
  const rest = r.text.slice(from, until);
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
