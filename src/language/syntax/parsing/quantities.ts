import type { Codes } from '../../../text';
import { ascii, Character, hyphenatedEnd, isDigit, isNameStart, nameEnd, skipBlanks } from '../scanning/characters';
import { Token } from '../scanning/token';
import { isTheWord, tokenOfWord, wordAt } from '../scanning/words';
import { Node } from '../tree';
import { type Reader, replace } from './reader';
import { readMisspeltSize } from './sizes';

/** Reads a number, a number with its unit, or a size with its words (`12 AWG Cu THHN`). */
export function readNumberOrSize(r: Reader): number {
  const { codes, start } = r;
  const c = codes[r.end];
  if (c === 47) {
    const end = aughtSizeEnd(r, start);
    if (end > 0) {
      return readDesignation(r, start, skipBlanks(codes, r.end + 2), end, r.number.value);
    }
  } else if ((c === 44 || c === 95) && isDigit(codes[r.end + 1])) {
    r.end = separatedEnd(r, start, r.end);
  }
  const at = skipBlanks(codes, r.end);
  const known = isUnitStart(codes, at) ? r.units.readUnit(codes, at) : at;
  // The one unit that may be a word of the language is `in`.
  return known > at && codes[at] !== 105 ? readQuantity(r, at, known) : readNumber(r, at, known);
}

/** A number with the unit from `at` to `unitEnd`, or a size. */
function readQuantity(r: Reader, at: number, unitEnd: number): number {
  const { tree, start, number } = r;
  const unit = tree.unitTexts.add(at, unitEnd);
  if (r.isSizeUnit(unit) && beginsDesignation(r, unit, unitEnd)) {
    return readDesignation(r, start, at, unitEnd, number.value);
  }
  const node = tree.leaf(Node.Quantity, start, unitEnd);
  tree.numbers[node] = number.value;
  tree.decimals[node] = number.decimals;
  tree.units[node] = unit;
  r.lastStart = start;
  r.resume(unitEnd);
  return node;
}

/** A number behind which no unit that is known for sure ends at `known`: with a word that is none, or a number alone. */
function readNumber(r: Reader, at: number, known: number): number {
  const { codes, tree, start, end, number } = r;
  if (known === at && mayGoOnAsSize(codes, end, at)) {
    const misspelt = readMisspeltSize(r, start, end);
    if (misspelt >= 0) {
      return misspelt;
    }
  }
  const unitEnd = isUnitStart(codes, at) ? endOfUnit(r, at, known) : at;
  if (unitEnd > at) {
    return readQuantity(r, at, unitEnd);
  }
  const node = tree.leaf(Node.Number, start, end);
  tree.numbers[node] = number.value;
  tree.decimals[node] = number.decimals;
  r.lastStart = start;
  r.resume(end);
  return node;
}

/** `#12 Cu`, `#1/0 AWG Al`: a wire size after its sign. */
export function readHash(r: Reader): number {
  const { text, codes, start } = r;
  const digits = r.end;
  let end = digits;
  while (isDigit(codes[end])) {
    end++;
  }
  if (end === digits) {
    r.report(
      'missing-size',
      start,
      r.end,
      'The sign `#` begins a wire size, and no number follows. Write the size right behind it: `#12`.',
    );
    return r.take(Node.Error);
  }
  const value = Number(text.slice(digits, end));
  if (codes[end] === 47 && codes[end + 1] === 48) {
    end += 2;
  }
  const at = skipBlanks(codes, end);
  if (isNameStart(codes[at])) {
    const unitEnd = endOfUnit(r, at, r.units.readUnit(codes, at));
    if (unitEnd > at && r.vocabulary.sizeUnits.has(text.slice(at, unitEnd))) {
      return readDesignation(r, start, at, unitEnd, value);
    }
  }
  return readDesignation(r, start, end, end, value);
}

/** False where nothing behind a number could make a size of it, as behind most: no hyphen, no slash, no word. */
function mayGoOnAsSize(codes: Codes, numberEnd: number, at: number): boolean {
  const c = codes[numberEnd];
  return c === 45 || c === 47 || isNameStart(codes[at]);
}

/** The end of a size such as `1/0 AWG` that begins at `start`; 0 when it is a division. */
function aughtSizeEnd(r: Reader, start: number): number {
  const { text, codes } = r;
  const slash = r.end;
  const isAught =
    slash === start + 1 && codes[slash + 1] === 48 && !isDigit(codes[slash + 2]) && codes[slash + 2] !== 46;
  if (!isAught) {
    return 0;
  }
  const at = skipBlanks(codes, slash + 2);
  const end = isNameStart(codes[at]) ? endOfUnit(r, at, r.units.readUnit(codes, at)) : at;
  return end > at && r.vocabulary.sizeUnits.has(text.slice(at, end)) ? end : 0;
}

/** True when the number before a size unit is a size: the unit is never an area, or a word follows that no area has. */
function beginsDesignation(r: Reader, unit: number, unitEnd: number): boolean {
  return r.vocabulary.alwaysSizeUnits.has(r.tree.unitTexts.words[unit]) || wordEnd(r, unitEnd) > 0;
}

/** A size whose unit, if it has one, begins at `unitStart`, and the words behind it. */
function readDesignation(r: Reader, start: number, unitStart: number, sizeEnd: number, value: number): number {
  const { tree, codes } = r;
  const size = tree.leaf(Node.Size, start, sizeEnd);
  tree.numbers[size] = value;
  if (unitStart < sizeEnd) {
    tree.units[size] = tree.unitTexts.add(unitStart, sizeEnd);
  }
  let last = size;
  let end = sizeEnd;
  for (let next = wordEnd(r, end); next > 0; next = wordEnd(r, end)) {
    last = tree.link(last, tree.leaf(Node.Word, skipBlanks(codes, end), next));
    end = next;
  }
  r.lastStart = tree.starts[last];
  r.resume(end);
  return tree.parent(Node.Designation, start, end, size);
}

/** The end of the designation word that follows `at` on its line, 0 when none does. A word nobody knows counts, so that it can be named as wrong. */
function wordEnd(r: Reader, at: number): number {
  const { codes } = r;
  const from = skipBlanks(codes, at);
  const end = from > at ? hyphenatedEnd(codes, from) : from;
  return end > from && isFreeWord(codes, from, nameEnd(codes, from)) ? end : 0;
}

/** True for a word that is neither reserved nor the `from` or `to` of an input. */
function isFreeWord(codes: Codes, start: number, end: number): boolean {
  const word = wordAt(codes, start, end);
  return tokenOfWord(word) === Token.Name && !isTheWord(word, 'from') && !isTheWord(word, 'to');
}

function isUnitStart(codes: Codes, at: number): boolean {
  const c = codes[at];
  return (
    (c < 128 ? ascii[c] === Character.Letter : isNameStart(c)) ||
    c === 37 ||
    c === 0xb0 ||
    (c === 49 && codes[at + 1] === 47)
  );
}

/**
 * The end of the unit at `at`, where `end` is that of what the unit table knows. A plain word that is no unit counts as
 * one, so that the checker can say which was meant.
 */
function endOfUnit(r: Reader, at: number, end: number): number {
  const { text, codes } = r;
  if (end === at + 2 && codes[at] === 105 && codes[at + 1] === 110) {
    return convertsAfter(r, end) ? at : end;
  }
  if (end > at) {
    return end;
  }
  const word = nameEnd(codes, at);
  const isTimes = word === at + 1 && (text[at] === 'x' || text[at] === 'X');
  return word > at && !isTimes && isFreeWord(codes, at, word) ? word : at;
}

/** `5 in` is inches; `0.05 in %` converts, because a unit follows that cannot follow inches. */
function convertsAfter(r: Reader, end: number): boolean {
  const { codes } = r;
  const next = skipBlanks(codes, end);
  if (next === end || !isUnitStart(codes, next)) {
    return false;
  }
  const word = nameEnd(codes, next);
  const isKeyword = word > next && tokenOfWord(wordAt(codes, next, word)) !== Token.Name;
  return !isKeyword && r.units.readUnit(codes, next) > next;
}

/** The end of a number written with separators, reported; `numberEnd` when the comma parts two values. */
function separatedEnd(r: Reader, start: number, numberEnd: number): number {
  const { text, codes } = r;
  let end = numberEnd;
  let groups = 0;
  for (;;) {
    const c = codes[end];
    let next = end + 1;
    while (isDigit(codes[next])) {
      next++;
    }
    const isGroup = c === 44 ? next === end + 4 : c === 95 && next > end + 1;
    if (!isGroup) {
      break;
    }
    end = next;
    groups++;
  }
  const wholeStart = text.slice(start, numberEnd);
  if (groups > 0 && !wholeStart.includes('.') && wholeStart !== '0') {
    if (codes[end] === 46 && isDigit(codes[end + 1])) {
      for (end++; isDigit(codes[end]); end++) {}
    }
    const plain = text.slice(start, end).replace(/[,_]/g, '');
    const fixes = [...replace(`Write ${plain}`, start, end, plain, false)];
    if (r.depth > 0 && codes[numberEnd] === 44) {
      fixes.push(...replace('Part the values by a comma and a space', numberEnd, numberEnd + 1, ', ', false));
    }
    r.number.value = Number(plain);
    r.report(
      'thousands-separator',
      start,
      end,
      `A number is written without separators between its digits. Write \`${plain}\`${r.depth > 0 ? ', or a space behind the comma when these are two values' : ''}.`,
      fixes,
    );
    return end;
  }
  if (r.depth > 0 || codes[numberEnd] !== 44) {
    return numberEnd;
  }
  end = numberEnd + 1;
  while (isDigit(codes[end])) {
    end++;
  }
  const plain = text.slice(start, end).replaceAll('.', '').replace(',', '.');
  r.number.value = Number(plain);
  r.report(
    'decimal-comma',
    start,
    end,
    `The decimal sign is a point. Write \`${plain}\`.`,
    replace(`Write ${plain}`, start, end, plain, false),
  );
  return end;
}
