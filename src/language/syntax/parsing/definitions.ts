import { Token } from '../scanning/token';
import { Node } from '../tree';
import { readBlock } from './blocks';
import { readExpression } from './expressions';
import { type Reader, replace } from './reader';
import { readSchedule } from './schedules';

/** `name = expression`, and the calls and tables laid out below it. */
export function readDefinition(r: Reader): number {
  const { tree, start } = r;
  if (r.token !== Token.Name) {
    reportReserved(r);
  }
  const name = r.take(Node.Name);
  if (r.token === Token.Colon) {
    passColon(r);
  }
  r.advance();
  if (r.word >= 0 && r.isWord('schedule') && isScheduleHead(r)) {
    return readSchedule(r, start, name);
  }
  r.runOn();
  const value = readExpression(r);
  if (tree.kinds[value] === Node.Name && r.token === Token.LineEnd && r.indentBelow() > r.indent) {
    const block = readBlock(r, start, name, value);
    if (block >= 0) {
      return block;
    }
  }
  tree.link(name, value);
  return tree.parent(Node.Definition, start, Math.max(r.lastEnd, tree.ends[value]), name);
}

function reportReserved(r: Reader): void {
  r.report(
    'reserved-word',
    r.start,
    r.end,
    `\`${r.currentText}\` is a word of the language and cannot be a name. Choose another name.`,
  );
}

/** Reports `name: value` and `name := value`, up to what stands for the `=`. */
function passColon(r: Reader): void {
  const isWalrus = r.codes[r.end] === 61;
  const end = r.end + (isWalrus ? 1 : 0);
  r.report(
    'colon-for-equals',
    r.start,
    end,
    'A name gets its value with `=`; a colon gives a field its value, in an indented line below its call. Write `=`, or indent the line.',
    replace('Write =', r.start, end, isWalrus ? '=' : ' =', false),
  );
  if (isWalrus) {
    r.advance();
  }
}

function isScheduleHead(r: Reader): boolean {
  const c = r.text.charAt(r.afterToken());
  return c === '' || c === '"' || c === '\n' || c === '\r' || c === '/' || c === '|';
}

/** `f(a, b) = expression` */
export function readFunction(r: Reader, start: number): number {
  const { tree } = r;
  const name = r.take(Node.Name);
  const parametersStart = r.start;
  r.advance();
  let first = -1;
  let last = -1;
  while (r.token !== Token.CloseParenthesis && !r.isOver) {
    if (r.token !== Token.Name && !r.isLineBroken) {
      r.report(
        'bad-parameter',
        r.start,
        r.end,
        `Found \`${r.currentText}\` where the name of a parameter was expected. Between the parentheses of a definition stand names parted by commas.`,
      );
    }
    const parameter = r.token === Token.Name ? r.take(Node.Name) : r.skipTo(Token.Comma, Token.CloseParenthesis);
    if (parameter >= 0) {
      first = first < 0 ? parameter : first;
      last = last < 0 ? parameter : tree.link(last, parameter);
    }
    if (r.token === Token.Comma) {
      r.advance();
    }
  }
  r.advance();
  const parameters = tree.parent(Node.Parameters, parametersStart, r.lastEnd, first);
  tree.link(name, parameters);
  r.advance();
  r.runOn();
  const value = tree.link(parameters, readExpression(r));
  return tree.parent(Node.FunctionDefinition, start, Math.max(r.lastEnd, tree.ends[value]), name);
}
