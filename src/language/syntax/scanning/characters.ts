/**
 * Which characters make names, numbers and white space. Names are Latin and Greek letters, digits, `_` and subscript
 * digits; the ohm sign and the micro sign count as letters because units begin with them.
 */

const nameStart = 1;
const namePart = 2;
const digit = 4;

const ascii = new Uint8Array(128);
for (let c = 0; c < 128; c++) {
  const isDigit = c >= 48 && c <= 57;
  const isLetter = (c >= 65 && c <= 90) || (c >= 97 && c <= 122) || c === 95;
  ascii[c] = isDigit ? digit | namePart : isLetter ? nameStart | namePart : 0;
}

const letter = /\p{L}/u;

/** True for subscript digits and letters (`R₂`), which may stand in a name but not begin it. */
const isSubscript = (c: number): boolean => c >= 0x2080 && c <= 0x209c && !(c >= 0x208a && c <= 0x208f);

const isOtherLetter = (c: number): boolean =>
  (c >= 0x370 && c <= 0x3ff && c !== 0x37e && c !== 0x387) ||
  c === 0x2126 ||
  c === 0xb5 ||
  (!isSubscript(c) && (c < 0xd800 || c > 0xdfff) && letter.test(String.fromCharCode(c)));

/** Codes are UTF-16 units; NaN, which reading past the end of a text gives, is in no class. */
export const isDigit = (c: number): boolean => c >= 48 && c <= 57;

export const isNameStart = (c: number): boolean =>
  c < 128 ? (ascii[c] & nameStart) !== 0 : c >= 128 && isOtherLetter(c);

const isNamePart = (c: number): boolean =>
  c < 128 ? (ascii[c] & namePart) !== 0 : c >= 128 && (isSubscript(c) || isOtherLetter(c));

/** White space within a line; no-break and thin spaces come with pasted text. */
export const isBlank = (c: number): boolean =>
  c === 32 ||
  c === 9 ||
  c === 0xa0 ||
  c === 0xfeff ||
  (c >= 0x2000 && c <= 0x200b) ||
  c === 0x202f ||
  c === 0x205f ||
  c === 11 ||
  c === 12;

export const isLineBreak = (c: number): boolean => c === 10 || c === 13;

/** The first offset from `at` on that holds no white space of the line. */
export function skipBlanks(text: string, at: number): number {
  let offset = at;
  while (isBlank(text.charCodeAt(offset))) {
    offset++;
  }
  return offset;
}

/** The end of the name that begins at `at`, or `at` when none does. */
export function nameEnd(text: string, at: number): number {
  if (!isNameStart(text.charCodeAt(at))) {
    return at;
  }
  let offset = at + 1;
  while (isNamePart(text.charCodeAt(offset))) {
    offset++;
  }
  return offset;
}

/** The end of the word at `at`, hyphens inside it included: `XHHW-2`, `voltage-drop`. */
export function hyphenatedEnd(text: string, at: number): number {
  let offset = nameEnd(text, at);
  while (offset > at && text.charCodeAt(offset) === 45 && isNamePart(text.charCodeAt(offset + 1))) {
    offset += 2;
    while (isNamePart(text.charCodeAt(offset))) {
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
