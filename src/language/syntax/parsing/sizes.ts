import { hyphenatedEnd, nameEnd, skipBlanks } from '../scanning/characters';
import { Token } from '../scanning/token';
import { Node } from '../tree';
import { type Reader, replace } from './reader';

/** The unit that a size gets in a proposal: the first of those that always make one. */
const sizeUnit = (r: Reader): string => [...r.vocabulary.alwaysSizeUnits][0] ?? '';

/** `AWG 12 Cu`: reports the size written the wrong way round and passes it; -1 when something else stands here. */
export function readTurnedSize(r: Reader, start: number): number {
  const { text } = r;
  const unit = r.currentText;
  const found = /^[^\S\r\n]*(?:#|No\.?\s*)?(\d+(?:\/0)?)/.exec(text.slice(r.end, r.end + 20));
  if (!found) {
    return -1;
  }
  const end = r.end + found[0].length;
  const meant = `${found[1]} ${unit}`;
  return passSize(r, start, end, `The number of a size stands before its unit: \`${meant}\`.`, meant);
}

/** `12-AWG Cu`, `1/0 Cu`, `12awg Cu`: reports a size without a proper unit and passes it; -1 when something else stands here. */
export function readMisspeltSize(r: Reader, start: number, numberEnd: number): number {
  const { text, codes, vocabulary } = r;
  const counted = readCountedSize(r, start, numberEnd);
  if (counted >= 0) {
    return counted;
  }
  const isHyphen = text.charCodeAt(numberEnd) === 45;
  const sizeEnd = text.startsWith('/0', numberEnd) ? numberEnd + 2 : numberEnd;
  const at = isHyphen ? numberEnd + 1 : skipBlanks(codes, sizeEnd);
  const end = nameEnd(codes, at);
  const word = text.slice(at, end);
  const unit = foldedIn(isHyphen ? vocabulary.alwaysSizeUnits : vocabulary.sizeUnits, word);
  if (unit && (isHyphen || unit !== word)) {
    const meant = `${text.slice(start, sizeEnd)} ${unit}`;
    return passSize(
      r,
      start,
      end,
      `A size is written \`${meant}\`: its unit behind a blank, its capitals as they are.`,
      meant,
    );
  }
  if (isHyphen) {
    return -1;
  }
  const meant = `${text.slice(start, sizeEnd)} ${sizeUnit(r)}`;
  if (end === at) {
    const isAught = sizeEnd > numberEnd && vocabulary.alwaysSizeUnits.size > 0 && !/[\d.]/.test(text.charAt(sizeEnd));
    return isAught
      ? passSize(r, start, sizeEnd, `As a division this has no value. As a size it has a unit: \`${meant}\`.`, meant)
      : -1;
  }
  if (r.units.readUnit(codes, at) > at || vocabulary.sizeUnits.has(word)) {
    return -1;
  }
  if (!foldedIn(vocabulary.designationWords, word)) {
    const next = skipBlanks(codes, end);
    if (!foldedIn(vocabulary.designationWords, text.slice(next, nameEnd(codes, next)))) {
      return -1;
    }
    return passSize(r, start, end, `\`${word}\` is no unit of size. Write \`${meant}\`, kcmil or mm².`, meant);
  }
  const message = `A size has a unit, such as \`${meant}\` or mm²; none stands before \`${word}\`.`;
  return passSize(r, start, sizeEnd, message, meant);
}

/** `12/2 NM-B`, `14-3 AWG NM-B`: a size and how many there are of it in a cable. */
function readCountedSize(r: Reader, start: number, numberEnd: number): number {
  const { text, codes, vocabulary } = r;
  const count = /^[/-][1-9](?![\d.])/.exec(text.slice(numberEnd, numberEnd + 3));
  if (!count || !/^\d+$/.test(text.slice(start, numberEnd))) {
    return -1;
  }
  const countEnd = numberEnd + 2;
  const at = skipBlanks(codes, countEnd);
  const end = hyphenatedEnd(codes, at);
  const isWord =
    end > at &&
    (foldedIn(vocabulary.designationWords, text.slice(at, end)) || foldedIn(vocabulary.sizeUnits, text.slice(at, end)));
  if (!isWord || (at === countEnd && end > at && r.units.readUnit(codes, at) > at)) {
    return -1;
  }
  const meant = `${text.slice(start, numberEnd)} ${sizeUnit(r)}`;
  const written = text.slice(start, countEnd);
  const message = `\`${written}\` says a size and how many there are of it. Write the size alone: \`${meant}\`.`;
  return passSize(r, start, foldedIn(vocabulary.sizeUnits, text.slice(at, end)) ? end : countEnd, message, meant);
}

/** The word of a set that a text spells, capitals aside. */
function foldedIn(words: ReadonlySet<string>, text: string): string | undefined {
  if (words.has(text)) {
    return text;
  }
  const folded = text.toLowerCase();
  for (const word of words) {
    if (word.toLowerCase() === folded) {
      return word;
    }
  }
  return undefined;
}

function passSize(r: Reader, start: number, end: number, message: string, meant: string): number {
  r.report('misspelt-size', start, end, message, replace(`Write ${meant}`, start, end, meant, false));
  const { text, codes } = r;
  r.resume(end);
  // The words that belong to the size.
  while (
    r.token === Token.Name &&
    foldedIn(r.vocabulary.designationWords, text.slice(r.start, hyphenatedEnd(codes, r.start)))
  ) {
    r.resume(hyphenatedEnd(codes, r.start));
  }
  return r.tree.leaf(Node.Error, start, Math.max(end, r.lastEnd));
}
