import { readBlock } from './blocks';
import { hyphenatedEnd, nameEnd, skipBlanks } from './characters';
import { readExpression, Strength } from './expressions';
import { isWordToken, readText } from './operands';
import { type Reader, replace } from './reader';
import { readSchedule } from './schedules';
import { readSolve } from './solve';
import { statementWords, Token } from './token';
import { Node } from './tree';

/** Reads one statement, with the indented lines that belong to it, and whatever else stands on its line. */
export function readStatement(r: Reader): number {
  r.startLine();
  const node = readKind(r);
  return endLine(r, node);
}

function readKind(r: Reader): number {
  const { token, start } = r;
  if (isWordToken(token)) {
    const next = r.afterToken();
    if (r.isAssign(next)) {
      return readDefinition(r);
    }
    if (token === Token.Name) {
      const word = statementWordAt(r, next);
      if (word) {
        return readers[word](r, start);
      }
      if (r.text.charCodeAt(next) === 58) {
        return readDefinition(r);
      }
      if (r.text.charCodeAt(next) === 40 && isFunctionHead(r.text, next)) {
        return readFunction(r, start);
      }
    }
  }
  const expression = readExpression(r);
  return r.tree.parent(Node.Show, start, Math.max(r.lastEnd, r.tree.ends[expression]), expression);
}

/** What stands left on the line is reported once and kept in an Error node behind the statement's other children. */
export function endLine(r: Reader, node: number, ...stops: readonly Token[]): number {
  r.depth = 0;
  if (r.isLineOver || stops.includes(r.token)) {
    return node;
  }
  if (!r.isLineBroken) {
    reportRest(r);
  }
  const rest = r.skipTo(...stops);
  const { tree } = r;
  let last = tree.firstChildren[node];
  while (last >= 0 && tree.nextSiblings[last] >= 0) {
    last = tree.nextSiblings[last];
  }
  if (last >= 0) {
    tree.link(last, rest);
  }
  tree.ends[node] = Math.max(tree.ends[node], tree.ends[rest]);
  return node;
}

function reportRest(r: Reader): void {
  const { text, start, lastEnd } = r;
  const from = start;
  let end = start;
  for (let at = start; at < text.length && text[at] !== '\n' && text[at] !== '\r'; at++) {
    if (text.startsWith('//', at)) {
      break;
    }
    end = text[at] === ' ' || text[at] === '\t' ? end : at + 1;
  }
  const found = text.slice(from, end);
  const before = text.slice(r.lastStart, lastEnd);
  r.report(
    'unexpected-text',
    from,
    end,
    `Found \`${shorten(found)}\` behind \`${shorten(before)}\`, where the line should end or an operator follow. Take it out, write an operator before it, or begin a new line.`,
  );
}

const shorten = (text: string): string => (text.length > 30 ? `${text.slice(0, 29)}…` : text);

type StatementWord = (typeof statementWords)[number];

/** The word that makes this line a statement of its own; none when the word is used as an ordinary name. */
function statementWordAt(r: Reader, next: number): StatementWord | undefined {
  const word = statementWords.find((candidate) => r.isWord(candidate));
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

/** `name = expression`, and the calls and tables laid out below it. */
function readDefinition(r: Reader): number {
  const { tree, start } = r;
  if (r.token !== Token.Name) {
    r.report(
      'reserved-word',
      r.start,
      r.end,
      `\`${r.currentText}\` is a word of the language and cannot be a name. Choose another name.`,
    );
  }
  const name = r.take(Node.Name);
  if (r.token === Token.Colon) {
    r.report(
      'colon-for-equals',
      r.start,
      r.end,
      'A name gets its value with `=`; a colon gives a field its value, in an indented line below its call. Write `=`, or indent the line.',
      replace('Write =', r.start, r.end, ' =', false),
    );
  }
  r.advance();
  if (r.isWord('schedule') && isScheduleHead(r)) {
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

function isScheduleHead(r: Reader): boolean {
  const c = r.text.charAt(r.afterToken());
  return c === '' || c === '"' || c === '\n' || c === '\r' || c === '/' || c === '|';
}

/** True when the parenthesis at `at` holds the parameters of a definition: `f(a, b) = …`. */
function isFunctionHead(text: string, at: number): boolean {
  let depth = 0;
  for (let offset = at; offset < text.length; offset++) {
    const c = text.charAt(offset);
    if (c === '\n' || c === '\r' || c === '"') {
      return false;
    }
    depth += c === '(' ? 1 : c === ')' ? -1 : 0;
    if (depth === 0) {
      const next = skipBlanks(text, offset + 1);
      return text.charAt(next) === '=' && text.charAt(next + 1) !== '=';
    }
  }
  return false;
}

function readFunction(r: Reader, start: number): number {
  const { tree } = r;
  const name = r.take(Node.Name);
  const parametersStart = r.start;
  r.advance();
  let first = -1;
  let last = -1;
  while (r.token !== Token.CloseParenthesis && !r.isLineOver) {
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

/** `check expression "label"` */
function readCheck(r: Reader, start: number): number {
  const { tree } = r;
  r.advance();
  const condition = readExpression(r);
  readLabel(r, condition, 'label');
  return tree.parent(Node.Check, start, Math.max(r.lastEnd, tree.ends[condition]), condition);
}

/** Links the text in quotes that ends a statement behind `before`, when there is one; it may stand on an indented line. */
function readLabel(r: Reader, before: number, what: string): number {
  if (r.token === Token.LineEnd) {
    const at = r.lookBelow();
    if (at >= 0 && r.text.charAt(at) === '"' && r.indentBelow() > r.indent) {
      r.beginLine();
    }
  }
  if (r.token === Token.Text) {
    return r.tree.link(before, readText(r));
  }
  if (isWordToken(r.token) && !r.isLineBroken) {
    const from = r.start;
    const rest = r.skipTo();
    const end = r.lastEnd;
    r.report(
      'unquoted-text',
      from,
      end,
      `The ${what} stands in double quotes. Put quotation marks around it.`,
      replace('Put it in quotation marks', from, end, `"${r.text.slice(from, end).replaceAll('"', '')}"`, false),
    );
    return r.tree.link(before, rest);
  }
  return before;
}

/** `input run = 85 ft from 5 ft to 400 ft "one-way length"` */
function readInput(r: Reader, start: number): number {
  const { tree } = r;
  r.advance();
  const name = readStatementName(r, 'input', 'input run = 85 ft');
  let last = name;
  if (r.token === Token.Assign) {
    r.advance();
    r.runOn();
    last = tree.link(last, readExpression(r));
  } else {
    if (!r.isLineBroken) {
      r.report(
        'missing-equals',
        r.lastStart,
        r.lastEnd,
        'An input has a value to begin with. Write `=` and the value behind its name.',
      );
    }
    last = tree.link(last, r.absent());
  }
  if (r.isWord('from')) {
    const from = r.start;
    r.advance();
    last = tree.link(last, readRange(r, from, 'to'));
  }
  readLabel(r, last, 'meaning of an input');
  return tree.parent(Node.Input, start, r.lastEnd, name);
}

/** `low to high` or `low .. high`, after the word that leads to it. */
export function readRange(r: Reader, start: number, word: 'to' | '..'): number {
  const { tree } = r;
  const low = readExpression(r, Strength.Sum);
  let high: number;
  if (word === 'to' ? r.isWord('to') : r.token === Token.Range) {
    r.advance();
    high = readExpression(r, Strength.Sum);
  } else {
    if (!r.isLineBroken) {
      r.report(
        'missing-range-end',
        r.lastStart,
        r.lastEnd,
        `A range has two ends, and the second is missing. Write \`${word}\` and the upper end behind this.`,
      );
    }
    high = r.absent();
  }
  tree.link(low, high);
  return tree.parent(Node.Range, start, Math.max(r.lastEnd, tree.ends[high]), low);
}

/** The name that a statement word is about; an Error of no width when it is missing. */
function readStatementName(r: Reader, word: string, example: string): number {
  if (r.token === Token.Name) {
    return r.take(Node.Name);
  }
  if (!r.isLineBroken) {
    r.report(
      'missing-name',
      r.lastStart,
      r.lastEnd,
      `\`${word}\` is followed by a name, and none stands here. Write it as in \`${example}\`.`,
    );
  }
  return r.absent();
}

/** `use element, supply from "kiln.kft.md"` */
function readUse(r: Reader, start: number): number {
  const { tree } = r;
  const example = 'use element from "kiln.kft.md"';
  r.advance();
  const first = readStatementName(r, 'use', example);
  let last = first;
  while (r.token === Token.Comma) {
    r.advance();
    last = tree.link(last, readStatementName(r, 'use', example));
  }
  if (r.isWord('from')) {
    r.advance();
  }
  if (r.token === Token.Text) {
    last = tree.link(last, readText(r));
  } else {
    if (!r.isLineBroken) {
      r.report(
        'missing-file',
        r.lastStart,
        r.lastEnd,
        `\`use\` takes names from another sheet, and the sheet is missing. Write it as in \`${example}\`.`,
      );
    }
    last = tree.link(last, r.absent());
  }
  return tree.parent(Node.Use, start, r.lastEnd, first);
}

/** `allow lint-id "reason"` */
function readAllow(r: Reader, start: number): number {
  const { tree, text } = r;
  const example = 'allow voltage-drop "sized by the supplier"';
  r.advance();
  let lint: number;
  if (nameEnd(text, r.start) > r.start) {
    const end = hyphenatedEnd(text, r.start);
    lint = tree.leaf(Node.Name, r.start, end);
    r.lastStart = r.start;
    r.resume(end);
  } else {
    lint = readStatementName(r, 'allow', example);
  }
  const last = readLabel(r, lint, 'reason');
  if (last === lint && !r.isLineBroken && r.isLineOver) {
    r.report(
      'missing-reason',
      tree.starts[lint],
      tree.ends[lint],
      `A finding is allowed for a reason, which the report prints. Write it in quotes behind the name: \`${example}\`.`,
    );
  }
  return tree.parent(Node.Allow, start, r.lastEnd, lint);
}
