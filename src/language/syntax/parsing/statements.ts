import { nameEnd, skipBlanks } from '../scanning/characters';
import { holdsParameters, isAssign } from '../scanning/line-starts';
import { foreignWords, type statementWords, Token } from '../scanning/token';
import { statementWordOf } from '../scanning/words';
import { Node } from '../tree';
import { readAllow } from './allow';
import { readCheck } from './check';
import { readDefinition, readFunction } from './definitions';
import { readExpression } from './expressions';
import { readInput } from './input';
import { endLine } from './line-rest';
import { isWordToken } from './operands';
import { type Reader, replace } from './reader';
import { readSolve } from './solve';
import { readUse } from './use';

/** Reads one statement, with the indented lines that belong to it, and whatever else stands on its line. */
export function readStatement(r: Reader): number {
  r.startLine();
  const node = readKind(r);
  return endLine(r, node);
}

function readKind(r: Reader): number {
  if (isWordToken(r.token)) {
    const next = r.afterToken();
    if (isAssign(r.codes, next)) {
      return readDefinition(r);
    }
    const node = r.token === Token.Name ? readNamed(r, next) : -1;
    if (node >= 0) {
      return node;
    }
  }
  const { start } = r;
  const expression = readExpression(r);
  return r.tree.parent(Node.Show, start, Math.max(r.lastEnd, r.tree.ends[expression]), expression);
}

/** A statement that its first word makes one, or what stands behind that at `next`; -1 for an expression. */
function readNamed(r: Reader, next: number): number {
  const foreign = readForeignStart(r, next);
  if (foreign >= 0) {
    return foreign;
  }
  const word = statementWordAt(r, next);
  if (word) {
    return readers[word](r, r.start);
  }
  if (r.codes[next] === 58) {
    return readDefinition(r);
  }
  return r.codes[next] === 40 && holdsParameters(r.codes, next) ? readFunction(r, r.start) : -1;
}

/** `let a = 5`, as other languages begin a definition: reports the word, and leaves the rest as what cannot be read; else -1. */
function readForeignStart(r: Reader, next: number): number {
  const word = foreignWords.find((candidate) => r.isWord(candidate));
  const end = nameEnd(r.codes, next);
  if (!word || end === next || !isAssign(r.codes, skipBlanks(r.codes, end))) {
    return -1;
  }
  const { start } = r;
  r.report(
    'foreign-definition',
    r.start,
    r.end,
    `A definition is written \`name = …\`, without a word before it. Take \`${word}\` out.`,
    replace(`Take out ${word}`, r.start, next, ''),
  );
  const passed = r.take(Node.Error);
  return r.tree.parent(Node.Show, start, r.tree.ends[passed], passed);
}

type StatementWord = (typeof statementWords)[number];

/** The word that makes this line a statement of its own; none when the word is used as an ordinary name. */
function statementWordAt(r: Reader, next: number): StatementWord | undefined {
  const word = statementWordOf(r.word);
  if (!word) {
    return undefined;
  }
  const c = r.text.charAt(next);
  const operandFollows = next >= r.text.length || !/[=*/^.:,)\]<>×·÷±+|!≤≥≠]/.test(c);
  return operandFollows && (word === 'check' || !/[-−(]/.test(c)) ? word : undefined;
}

const readers: Readonly<Record<StatementWord, (r: Reader, start: number) => number>> = {
  check: readCheck,
  solve: readSolve,
  input: readInput,
  use: readUse,
  allow: readAllow,
};
