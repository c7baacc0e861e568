import type { Codes } from '../../../text';

/**
 * Which characters make names, numbers and white space. Names are Latin and Greek letters, digits, `_` and subscript
 * digits; the ohm sign and the micro sign count as letters because units begin with them.
 */

/** What a token that begins with a character may be. */
export enum Character {
  /** A sign, or nothing known. */
  Sign,
  Quote,
  LineBreak,
  Blank,
  /** From here on all may stand in a name; a subscript, as in `R₂`, begins no token. */
  Subscript,
  Digit,
  Letter,
}

/** For each code below 128. Nearly all are, and a loop over them that calls nothing takes half the time. */
export const ascii = new Uint8Array(128);
for (let c = 0; c < 128; c++) {
  const isLetter = (c >= 65 && c <= 90) || (c >= 97 && c <= 122) || c === 95;
  ascii[c] = isLetter ? Character.Letter : c >= 48 && c <= 57 ? Character.Digit : Character.Sign;
}
ascii[34] = Character.Quote;
for (const c of [9, 11, 12, 32]) {
  ascii[c] = Character.Blank;
}
for (const c of [10, 13]) {
  ascii[c] = Character.LineBreak;
}

const letter = /\p{L}/u;

function beyondAscii(c: number): Character {
  if ((c >= 0x370 && c <= 0x3ff && c !== 0x37e && c !== 0x387) || c === 0x2126 || c === 0xb5) {
    return Character.Letter;
  }
  if (c === 0x201c || c === 0x201d || c === 0x201e) {
    return Character.Quote; // Typographic ones, that text editors make of plain ones.
  }
  // No-break and thin spaces come with pasted text.
  if (c === 0xa0 || c === 0xfeff || (c >= 0x2000 && c <= 0x200b) || c === 0x202f || c === 0x205f) {
    return Character.Blank;
  }
  if (c >= 0x2080 && c <= 0x209c && !(c >= 0x208a && c <= 0x208f)) {
    return Character.Subscript;
  }
  return (c < 0xd800 || c > 0xdfff) && letter.test(String.fromCharCode(c)) ? Character.Letter : Character.Sign;
}

/** What a code stands for; codes are UTF-16 units. */
export const characterOf = (c: number): Character => (c < 128 ? ascii[c] : beyondAscii(c));

export const isDigit = (c: number): boolean => c >= 48 && c <= 57;

export const isNameStart = (c: number): boolean => characterOf(c) === Character.Letter;

export const isNamePart = (c: number): boolean => characterOf(c) >= Character.Subscript;

/** White space within a line. */
export const isBlank = (c: number): boolean => characterOf(c) === Character.Blank;

export const isLineBreak = (c: number): boolean => c === 10 || c === 13;

/** Plain and typographic quotation marks. */
export const isQuote = (c: number): boolean => characterOf(c) === Character.Quote;

/** The first offset from `at` on that holds no white space of the line. */
export function skipBlanks(codes: Codes, at: number): number {
  let offset = at;
  for (let c = codes[at]; c < 128 ? ascii[c] === Character.Blank : isBlank(c); c = codes[++offset]) {}
  return offset;
}

/** The end of the name that begins at `at`, or `at` when none does. */
export function nameEnd(codes: Codes, at: number): number {
  if (!isNameStart(codes[at])) {
    return at;
  }
  let offset = at + 1;
  while (isNamePart(codes[offset])) {
    offset++;
  }
  return offset;
}

/** The end of the word at `at`, hyphens inside it included: `XHHW-2`, `voltage-drop`. */
export function hyphenatedEnd(codes: Codes, at: number): number {
  let offset = nameEnd(codes, at);
  while (offset > at && codes[offset] === 45 && isNamePart(codes[offset + 1])) {
    offset += 2;
    while (isNamePart(codes[offset])) {
      offset++;
    }
  }
  return offset;
}

/** The offset of the line break that ends the line of `at`, or the text's end. */
export function lineEnd(text: string, at: number): number {
  let offset = at;
  while (offset < text.length && !isLineBreak(text.charCodeAt(offset))) {
    offset++;
  }
  return offset;
}
