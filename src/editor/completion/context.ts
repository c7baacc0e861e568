import type { Vocabulary } from '../../language';
import type { Span } from '../../text';
import { nameBefore } from '../name-before';
import { type FileWanted, fileContextAt } from './file-context';

/** What the text before the cursor asks for. `word` is the part typed already. */
export type Wanted =
  | { readonly kind: 'nothing' }
  | FileWanted
  | { readonly kind: 'lint' }
  /** A word after a conductor's size; `said` are the words that are there. */
  | { readonly kind: 'conductor word'; readonly said: readonly string[] }
  | { readonly kind: 'unit' }
  | { readonly kind: 'member'; readonly of: string }
  /** The name of a parameter of a form or a call. */
  | { readonly kind: 'parameter'; readonly function: string; readonly said: readonly string[]; readonly form: boolean }
  | { readonly kind: 'argument'; readonly function: string; readonly parameter: string }
  | { readonly kind: 'expression'; readonly startsLine: boolean };

export interface Context {
  readonly wanted: Wanted;
  /** The word being typed, to be replaced. */
  readonly replaces: Span;
}

/** So much before the cursor is looked at for words, which end at it: looking for them in a long line would take its square. */
const lookBack = 1000;

const wordBefore = /[\p{L}\p{N}_%°Ω²µ-]*$/u;
const size = /(?:#\d+|\d+(?:\/0|\.\d+)?\s*(?:AWG|kcmil|MCM|mm²|mm2))((?:\s+[\w-]+)*?)\s+[\w-]*$/;
const numberThenWord = /(?:^|[^\p{L}\p{N}_.])\d[\d.]*(?:e[+-]?\d+)? ?[\p{L}°%Ωµ]*$/u;
const member = /([\p{L}_][\p{L}\p{N}_]*)\.[\p{L}\p{N}_]*$/u;
const fieldName = /^[ \t]+[\p{L}\p{N}_]*$/u;
const fieldValue = /^[ \t]+([\p{L}_][\p{L}\p{N}_]*):[ \t]*[\w-]*$/u;
const formHead = /^[ \t]*[\p{L}_][\p{L}\p{N}_]*[ \t]*=[ \t]*([\p{L}_][\p{L}\p{N}_]*)[ \t]*(?:\/\/.*)?$/u;

/** Reads lines rather than the tree, since what is being typed is seldom whole. */
export function contextAt(text: string, offset: number, vocabulary: Vocabulary): Context {
  const inFile = fileContextAt(text, offset);
  if (inFile) {
    return inFile;
  }
  const lineStart = text.lastIndexOf('\n', offset - 1) + 1;
  const before = text.slice(lineStart, offset);
  const word = wordBefore.exec(before.slice(-lookBack))![0];
  return { wanted: wantedAfter(text, lineStart, before, vocabulary), replaces: replaced(word, offset) };
}

/** Digits in front of a unit are no part of the word: `240V`. */
function replaced(word: string, offset: number): Span {
  const letters = /^\d/.test(word) ? word.replace(/^[\d.]+/, '') : word;
  return { start: offset - letters.length, end: offset };
}

function wantedAfter(text: string, lineStart: number, before: string, vocabulary: Vocabulary): Wanted {
  if (before.includes('//') || (before.match(/"/g) ?? []).length % 2 === 1) {
    return { kind: 'nothing' };
  }
  if (/^\s*allow\s+[\w-]*$/.test(before)) {
    return { kind: 'lint' };
  }
  const near = before.slice(-lookBack);
  const said = size
    .exec(near)?.[1]
    .split(/\s+/)
    .filter((part) => part !== '');
  if (said?.every((part) => vocabulary.designationWords.has(part))) {
    return { kind: 'conductor word', said };
  }
  const of = member.exec(near)?.[1];
  if (of !== undefined) {
    return { kind: 'member', of };
  }
  if (numberThenWord.test(near)) {
    return { kind: 'unit' };
  }
  return (
    inForm(text, lineStart, before) ?? inCall(before) ?? { kind: 'expression', startsLine: /^\s*\S*$/.test(before) }
  );
}

/** The field of a form, by the first line above that is not indented. */
function inForm(text: string, lineStart: number, before: string): Wanted | undefined {
  const parameter = fieldValue.exec(before)?.[1];
  if (parameter === undefined && !fieldName.test(before)) {
    return undefined;
  }
  const said: string[] = [];
  const above = text.slice(0, lineStart).split('\n').slice(0, -1).reverse();
  for (const line of above) {
    const head = formHead.exec(line)?.[1];
    if (head !== undefined) {
      return parameter === undefined
        ? { kind: 'parameter', function: head, said, form: true }
        : { kind: 'argument', function: head, parameter };
    }
    const field = /^[ \t]+([\p{L}_][\p{L}\p{N}_]*):/u.exec(line)?.[1];
    if (field === undefined && line.trim() !== '') {
      return undefined;
    }
    said.push(...(field === undefined ? [] : [field]));
  }
  return undefined;
}

/** The argument of the innermost call that is still open on this line. */
function inCall(before: string): Wanted | undefined {
  let depth = 0;
  for (let i = before.length - 1; i >= 0; i--) {
    if (before[i] === ')') {
      depth++;
    } else if (before[i] === '(' && depth-- === 0) {
      const called = nameBefore(before, i);
      const written = before.slice(i + 1).split(',');
      const parameter = /^\s*([\p{L}_][\p{L}\p{N}_]*):\s*[\w-]*$/u.exec(written.at(-1)!)?.[1];
      if (called === undefined) {
        return undefined;
      }
      return parameter !== undefined
        ? { kind: 'argument', function: called, parameter }
        : /^\s*[\p{L}\p{N}_]*$/u.test(written.at(-1)!)
          ? {
              kind: 'parameter',
              function: called,
              said: written.flatMap((part) => /^\s*(\w+):/.exec(part)?.[1] ?? []),
              form: false,
            }
          : undefined;
    }
  }
  return undefined;
}
