import { nameEnd, skipBlanks } from '../scanning/characters';
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

/** `12-AWG Cu`, `1/0 Cu`: reports a size without a proper unit and passes it; -1 when something else stands here. */
export function readMisspeltSize(r: Reader, start: number, numberEnd: number): number {
  const { text, vocabulary } = r;
  if (text.charCodeAt(numberEnd) === 45) {
    const end = nameEnd(text, numberEnd + 1);
    const unit = text.slice(numberEnd + 1, end);
    if (vocabulary.alwaysSizeUnits.has(unit)) {
      const meant = `${text.slice(start, numberEnd)} ${unit}`;
      return passSize(r, start, end, `A size is written without a hyphen: \`${meant}\`.`, meant);
    }
  }
  const sizeEnd = text.startsWith('/0', numberEnd) ? numberEnd + 2 : numberEnd;
  const at = skipBlanks(text, sizeEnd);
  const end = nameEnd(text, at);
  const word = text.slice(at, end);
  if (end === at || r.units.readUnit(text, at) > at || vocabulary.sizeUnits.has(word)) {
    return -1;
  }
  if (!vocabulary.designationWords.has(word)) {
    const next = skipBlanks(text, end);
    if (!vocabulary.designationWords.has(text.slice(next, nameEnd(text, next)))) {
      return -1;
    }
    const meant = `${text.slice(start, sizeEnd)} ${sizeUnit(r)}`;
    return passSize(r, start, end, `\`${word}\` is no unit of size. Write \`${meant}\`, kcmil or mm².`, meant);
  }
  const meant = `${text.slice(start, sizeEnd)} ${sizeUnit(r)}`;
  return passSize(
    r,
    start,
    sizeEnd,
    `A size has a unit, such as \`${meant}\` or mm²; none stands before \`${word}\`.`,
    meant,
  );
}

function passSize(r: Reader, start: number, end: number, message: string, meant: string): number {
  r.report('misspelt-size', start, end, message, replace(`Write ${meant}`, start, end, meant, false));
  r.resume(end);
  // The words that belong to the size.
  while (r.token === Token.Name && r.vocabulary.designationWords.has(r.currentText)) {
    r.advance();
  }
  return r.tree.leaf(Node.Error, start, Math.max(end, r.lastEnd));
}
