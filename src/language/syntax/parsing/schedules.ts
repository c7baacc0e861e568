import { lineEnd } from '../scanning/characters';
import { isAssign } from '../scanning/line-starts';
import { Token } from '../scanning/token';
import { Node } from '../tree';
import { readIndented } from './blocks';
import { readExpression } from './expressions';
import { endLine } from './line-rest';
import { readText } from './operands';
import { type Reader, replace } from './reader';

/** `name = schedule` with a table and computed columns below it, or `name = schedule "file.csv"`. */
export function readSchedule(r: Reader, start: number, name: number): number {
  const { tree } = r;
  const word = r.start;
  r.advance();
  let last = name;
  let width = -1;
  if (r.token === Token.Text) {
    last = tree.link(last, readText(r));
    width = 0;
  }
  if (!r.isOver) {
    const rest = r.isLineBroken ? -1 : r.start;
    if (rest >= 0) {
      r.report(
        'unexpected-text',
        rest,
        lineEnd(r.text, rest),
        'The rows of a schedule stand in the lines below it, each indented by two spaces. Begin a new line here.',
      );
    }
    last = tree.link(last, r.skipTo());
  }
  const head = last;
  last = readIndented(r, last, () => {
    if (r.token !== Token.Bar) {
      return readColumn(r);
    }
    if (width < 0) {
      const header = readHeader(r);
      width = countChildren(r, header);
      if (width === 0) {
        reportNoColumns(r, header);
      }
      return header;
    }
    return isSeparator(r.text, r.start) ? skipSeparator(r) : readRow(r, width);
  });
  if (last === head && width < 0 && !r.isLineBroken) {
    r.report(
      'missing-table',
      word,
      r.lastEnd,
      'A schedule has rows, and none follow. Write a table below this line, each row indented and between `|`, or the name of a file in quotes.',
    );
  }
  return tree.parent(Node.Schedule, start, Math.max(r.lastEnd, tree.ends[last]), name);
}

function reportNoColumns(r: Reader, header: number): void {
  r.report(
    'bad-column-name',
    r.tree.starts[header],
    r.tree.ends[header],
    'The heading of this table names no column. Write a name for each column between `|`.',
  );
}

function countChildren(r: Reader, node: number): number {
  let count = 0;
  for (let child = r.tree.firstChildren[node]; child >= 0; child = r.tree.nextSiblings[child]) {
    count++;
  }
  return count;
}

/** True when the row at `at` holds nothing but dashes and colons between its bars. */
function isSeparator(text: string, at: number): boolean {
  let dashes = 0;
  for (let offset = at, end = lineEnd(text, at); offset < end; offset++) {
    const c = text.charAt(offset);
    if (c === '-') {
      dashes++;
    } else if (c !== '|' && c !== ':' && c !== ' ' && c !== '\t') {
      return false;
    }
  }
  return dashes > 0;
}

function skipSeparator(r: Reader): number {
  r.inRow = true;
  passLine(r);
  r.inRow = false;
  return -1;
}

/** Passes what stands left on the line, cells included, and returns where it ends. */
function passLine(r: Reader): number {
  while (r.token > Token.LineEnd) {
    r.advance();
  }
  return r.lastEnd;
}

/** Reads the cells of the row that begins at the current bar, each with `readCell`, and passes the closing bar. */
function readCells(r: Reader, kind: Node, width: number, readCell: (r: Reader) => number): number {
  const { tree, start } = r;
  r.inRow = true;
  let first = -1;
  let last = -1;
  let count = 0;
  const add = (node: number) => {
    first = first < 0 ? node : first;
    last = last < 0 ? node : tree.link(last, node);
    count++;
  };
  while (r.token === Token.Bar) {
    r.advance();
    if (r.token <= Token.LineEnd) {
      break;
    }
    if (width >= 0 && count === width) {
      reportWidth(r, start, width, 'more');
      const from = r.start;
      add(tree.leaf(Node.Error, from, passLine(r)));
      break;
    }
    add(r.token === Token.Bar ? tree.leaf(Node.Empty, r.lastEnd, r.lastEnd) : readCell(r));
  }
  if (width > count) {
    reportWidth(r, start, width, 'fewer');
    while (count < width) {
      add(tree.leaf(Node.Empty, r.lastEnd, r.lastEnd));
    }
  }
  r.inRow = false;
  return tree.parent(kind, start, r.lastEnd, first);
}

function reportWidth(r: Reader, start: number, width: number, what: 'more' | 'fewer'): void {
  if (!r.isLineBroken) {
    r.report(
      'row-width',
      start,
      trimmedLineEnd(r.text, start),
      `This row has ${what} cells than the ${width} of the heading. Give it one cell for each column.`,
    );
  }
}

function trimmedLineEnd(text: string, at: number): number {
  let end = lineEnd(text, at);
  while (end > at && ' \t'.includes(text.charAt(end - 1))) {
    end--;
  }
  return end;
}

/** True when a cell ends at `at`: with a bar, a comment or the line. */
const endsCell = (text: string, at: number): boolean =>
  at >= text.length || '|\n\r'.includes(text.charAt(at)) || text.startsWith('//', at);

function readHeader(r: Reader): number {
  return readCells(r, Node.HeaderRow, -1, () => {
    if (r.token === Token.Name && endsCell(r.text, r.afterToken())) {
      return r.take(Node.Name);
    }
    const { start } = r;
    const cell = r.skipTo();
    const end = r.lastEnd;
    const found = r.text.slice(start, end);
    const name = found.replace(/[^\p{L}\p{N}_]+/gu, '_').replace(/^[\d_]+|_+$/gu, '');
    r.report(
      'bad-column-name',
      start,
      end,
      `The heading \`${found}\` is not one name, and formulas name columns by it. Write letters, digits and \`_\` without spaces.`,
      name ? replace(`Write ${name}`, start, end, name, false) : undefined,
    );
    return cell;
  });
}

function readRow(r: Reader, width: number): number {
  return readCells(r, Node.Row, width, () => {
    r.startLine();
    const { start } = r;
    const cell = readExpression(r);
    if (r.isOver) {
      return cell;
    }
    r.skipTo();
    const end = r.lastEnd;
    const found = r.text.slice(start, end);
    if (!r.isLineBroken) {
      r.report(
        'unexpected-text',
        start,
        end,
        `The cell \`${found}\` is not one value. Write a number with its unit, a name or a formula, or put text in double quotes.`,
        replace('Put it in quotation marks', start, end, `"${found.replaceAll('"', '')}"`, false),
      );
    }
    return r.tree.leaf(Node.Error, start, end);
  });
}

/** `name = expression`, a computed column below the rows. */
function readColumn(r: Reader): number {
  const { tree, start } = r;
  if (r.token !== Token.Name || !isAssign(r.codes, r.afterToken())) {
    r.report(
      'unexpected-text',
      start,
      trimmedLineEnd(r.text, start),
      'Below a schedule stand its rows, each between `|`, and computed columns such as `amps = load / voltage`. This line is neither.',
    );
    return r.skipTo();
  }
  const name = r.take(Node.Name);
  r.advance();
  r.runOn();
  const value = tree.link(name, readExpression(r));
  return endLine(r, tree.parent(Node.Column, start, Math.max(r.lastEnd, tree.ends[value]), name));
}
