import { type Codes, WordTable } from '../../../text';
import { contextWords, foreignWords, reservedWords, statementWords, Token } from './token';

/** A word that means something where it stands in the right place, and is an ordinary name elsewhere. */
export type ContextWord =
  | (typeof statementWords)[number]
  | (typeof contextWords)[number]
  | (typeof foreignWords)[number];

/** Every word that the language knows, so that one look-up tells that a name is none of them, as nearly all are. */
const words: readonly string[] = [...reservedWords.keys(), ...statementWords, ...contextWords, ...foreignWords];
const table = WordTable.of(words);
const tokens = Uint8Array.from(words, (word) => reservedWords.get(word) ?? Token.Name);

/** For each first letter the lengths of the words that begin with it, one bit each. */
const lengths = new Uint32Array(128);
for (const word of words) {
  lengths[word.charCodeAt(0)] |= 1 << word.length;
}
const longest = Math.max(...words.map((word) => word.length));

/** The number of the language's word at `start` … `end`, -1 for any other name. */
export function wordAt(codes: Codes, start: number, end: number, hash?: number): number {
  const length = end - start;
  return length <= longest && (lengths[codes[start]] & (1 << length)) !== 0 ? table.find(codes, start, end, hash) : -1;
}

/** The token of a name: a reserved word's own, or `Name`. */
export const tokenOfWord = (word: number): Token => (word < 0 ? Token.Name : tokens[word]);

/** True when the word of this number is `text`. */
export const isTheWord = (word: number, text: ContextWord): boolean => word >= 0 && words[word] === text;

/** The statement word of this number, if it is one. */
export const statementWordOf = (word: number): (typeof statementWords)[number] | undefined =>
  word < 0 ? undefined : statementWords[word - reservedWords.size];
