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
export function readUnit(text: string, offset: number, sink?: Factor[]): number {
  let end = offset;
  if (codeAt(text, offset) === one && codeAt(text, offset + 1) === slash) {
    end = readDivisor(text, offset + 2, sink);
    if (end === offset + 2) {
      return offset;
    }
  } else {
    end = readFactor(text, offset, false, sink);
    if (end === offset) {
      return offset;
    }
  }
  for (;;) {
    const operator = codeAt(text, end);
    const next =
      operator === slash
        ? readDivisor(text, end + 1, sink)
        : isDot(operator)
          ? readFactor(text, end + 1, false, sink)
          : end + 1;
    if (next === end + 1) {
      return end;
    }
    end = next;
  }
}

/** What follows `/`: one factor, or several in brackets. */
function readDivisor(text: string, offset: number, sink: Factor[] | undefined): number {
  if (text.charCodeAt(offset) !== openBracket) {
    return readFactor(text, offset, true, sink);
  }
  const mark = sink?.length ?? 0;
  let end = offset;
  do {
    const start = end + 1;
    end = readFactor(text, start, true, sink);
    if (end === start) {
      break;
    }
  } while (isDot(text.charCodeAt(end)));
  if (text.charCodeAt(end) === closeBracket) {
    return end + 1;
  }
  if (sink) {
    sink.length = mark;
  }
  return offset;
}

function readFactor(text: string, offset: number, below: boolean, sink: Factor[] | undefined): number {
  const end = unitWordEnd(text, offset);
  if (end === offset) {
    return offset;
  }
  let word = unitWordAt(text, offset, end);
  let power = 1;
  let after = end;
  if (word) {
    const next = codeAt(text, end);
    if (next === caret || next > 127) {
      const exponent = readExponent(text, end);
      power = exponent.power;
      after = exponent.end;
    }
  } else {
    // `mm2`: a digit stands for the exponent of a length only, because `V2` is a name.
    power = codeAt(text, end - 1) - 48;
    word = power === 2 || power === 3 ? unitWordAt(text, offset, end - 1) : undefined;
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
function readExponent(text: string, at: number): { readonly power: number; readonly end: number } {
  const code = text.charCodeAt(at);
  if (code === caret) {
    const match = exponentText.exec(text.slice(at + 1, at + 10));
    return match
      ? { power: Number(match[1] ?? match[3]) / Number(match[2] ?? 1), end: at + 1 + match[0].length }
      : notRaised(at);
  }
  const minus = code === superscriptMinus;
  const digit = superscriptDigits.indexOf(text.charAt(minus ? at + 1 : at));
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

const isWordPart = (c: number): boolean =>
  c < 128
    ? (c >= 97 && c <= 122) || (c >= 65 && c <= 90) || (c >= 48 && c <= 57) || c === 95
    : c === 0xb5 || c === 0x3a9 || c === 0x3bc || (c >= 0x2080 && c <= 0x209c) || letter.test(String.fromCharCode(c));

/** The end of the word at `at` that could name a unit: letters and digits, after `°` or `Δ°`; or a lone sign. */
function unitWordEnd(text: string, at: number): number {
  const first = codeAt(text, at);
  if (isLoneSign(first)) {
    return isWordPart(codeAt(text, at + 1)) ? at : at + 1;
  }
  if (first >= 48 && first <= 57) {
    return at;
  }
  let end = first === delta && codeAt(text, at + 1) === degree ? at + 1 : at;
  if (codeAt(text, end) === degree) {
    end++;
  }
  while (isWordPart(codeAt(text, end))) {
    end++;
  }
  return end;
}

/** 0 past the end: the NaN that `charCodeAt` gives there would make every comparison of codes one of floats. */
const codeAt = (text: string, at: number): number => (at < text.length ? text.charCodeAt(at) : 0);
