import { type Codes, codesOf } from '../text';
import { type UnitWord, unitWordAt, unitWords } from './unit-words';

/** One factor of a unit expression: `ft²` in a denominator is the word `ft` with the power -2. */
export interface Factor {
  readonly word: UnitWord;
  readonly power: number;
  readonly below: boolean;
}

/**
 * The end of the longest unit expression that starts at `offset`, or `offset` when none does. `/`, `·` and `^` belong
 * to the unit only when written tight with a unit behind them; `sink` receives the factors.
 */
export function readUnit(codes: Codes, offset: number, sink?: Factor[]): number {
  let end = offset;
  if (codes[offset] === one && codes[offset + 1] === slash) {
    end = readDivisor(codes, offset + 2, sink);
    if (end === offset + 2) {
      return offset;
    }
  } else {
    end = readFactor(codes, offset, false, sink);
    if (end === offset) {
      return offset;
    }
  }
  for (;;) {
    const operator = codes[end];
    const next =
      operator === slash
        ? readDivisor(codes, end + 1, sink)
        : isDot(operator)
          ? readFactor(codes, end + 1, false, sink)
          : end + 1;
    if (next === end + 1) {
      return end;
    }
    end = next;
  }
}

/** True when a text is a unit from its beginning to its end. */
export const isUnit = (text: string): boolean => readUnit(codesOf(text), 0) === text.length;

/** What follows `/`: one factor, or several in brackets. */
function readDivisor(codes: Codes, offset: number, sink: Factor[] | undefined): number {
  if (codes[offset] !== openBracket) {
    return readFactor(codes, offset, true, sink);
  }
  const mark = sink?.length ?? 0;
  let end = offset;
  do {
    const start = end + 1;
    end = readFactor(codes, start, true, sink);
    if (end === start) {
      break;
    }
  } while (isDot(codes[end]));
  if (codes[end] === closeBracket) {
    return end + 1;
  }
  if (sink) {
    sink.length = mark;
  }
  return offset;
}

function readFactor(codes: Codes, offset: number, below: boolean, sink: Factor[] | undefined): number {
  const end = unitWordEnd(codes, offset);
  if (end === offset) {
    return offset;
  }
  let word = unitWordAt(codes, offset, end);
  let power = 1;
  let after = end;
  if (word) {
    const next = codes[end];
    if (next === caret || next > 127) {
      const exponent = readExponent(codes, end);
      power = exponent.power;
      after = exponent.end;
    }
  } else {
    // `mm2`: a digit stands for the exponent of a length only, because `V2` is a name.
    power = codes[end - 1] - 48;
    word = power === 2 || power === 3 ? unitWordAt(codes, offset, end - 1) : undefined;
    if (!word || !isLength(word)) {
      return offset;
    }
  }
  sink?.push({ word, power, below });
  return after;
}

const isLength = (word: UnitWord): boolean => word.unit.dimension === unitWords.get('m')?.unit.dimension;

const notRaised = (end: number) => ({ power: 1, end });

/** An exponent at `at`: `²`, `⁻¹`, `^2`, `^-1`, `^(1/2)`; nothing else is taken. */
function readExponent(codes: Codes, at: number): { readonly power: number; readonly end: number } {
  const code = codes[at];
  if (code === caret) {
    const match = exponentText.exec(String.fromCharCode(...codes.subarray(at + 1, at + 10)));
    return match
      ? { power: Number(match[1] ?? match[3]) / Number(match[2] ?? 1), end: at + 1 + match[0].length }
      : notRaised(at);
  }
  const minus = code === superscriptMinus;
  const digit = superscriptDigits.indexOf(String.fromCharCode(codes[minus ? at + 1 : at]));
  return digit > 0 ? { power: minus ? -digit : digit, end: minus ? at + 2 : at + 1 } : notRaised(at);
}

/** One digit is enough for any unit in use; `2.5`, `2x` and `12` are left to the operator. */
const exponentText = /^(?:\((-?[1-9])\/([2-6])\)|(-?[1-9])(?![\w.]))/;

export const superscriptDigits = '⁰¹²³⁴⁵⁶⁷⁸⁹';

const slash = 47;
const one = 49;
const openBracket = 40;
const closeBracket = 41;
const caret = 94;
const superscriptMinus = 0x207b;
const degree = 0xb0;
const delta = 0x394;

/** Middle dot and the mathematical dot operator. */
const isDot = (c: number): boolean => c === 0xb7 || c === 0x22c5;

/** Signs that are a whole unit word: per cent, and degrees Celsius and Fahrenheit as one character. */
const isLoneSign = (c: number): boolean => c === 37 || c === 0x2103 || c === 0x2109;

const letter = /\p{L}/u;

/** 1 for each code below 128 of a letter, a digit or `_`. */
const ascii = Uint8Array.from({ length: 128 }, (_, c) => (/\w/.test(String.fromCharCode(c)) ? 1 : 0));

const isWordPart = (c: number): boolean =>
  c < 128
    ? ascii[c] === 1
    : c === 0xb5 || c === 0x3a9 || c === 0x3bc || (c >= 0x2080 && c <= 0x209c) || letter.test(String.fromCharCode(c));

/** The end of the word at `at` that could name a unit: letters and digits, after `°` or `Δ°`; or a lone sign. */
function unitWordEnd(codes: Codes, at: number): number {
  const first = codes[at];
  if (isLoneSign(first)) {
    return isWordPart(codes[at + 1]) ? at : at + 1;
  }
  if (first >= 48 && first <= 57) {
    return at;
  }
  let end = first === delta && codes[at + 1] === degree ? at + 1 : at;
  if (codes[end] === degree) {
    end++;
  }
  for (let c = codes[end]; c < 128 ? ascii[c] === 1 : isWordPart(c); c = codes[++end]) {}
  return end;
}
