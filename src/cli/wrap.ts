/** A text in lines of at most `width` columns, each with `indent` before it; long words stay whole. */
export function wrap(text: string, width: number, indent = '', firstIndent = indent): string {
  const lines: string[] = [];
  let line = firstIndent;
  let empty = true;
  for (const word of text.split(/[ \n]+/)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join('\n');
}

/** Each line of a laid-out text that is too long, broken at spaces; what is carried over stands four columns deeper. */
export function wrapLines(text: string, width: number): string {
  return text
    .split('\n')
    .map((line) => (line.length <= width || isRowOfTable.test(line) ? line : broken(line, width)))
    .join('\n');
}

/** Columns that are broken stand below one another no more, so a row of a table is left to the terminal. */
const isRowOfTable = /\S {2,}\S.* {2,}\S/;

function broken(line: string, width: number): string {
  const indent = `${/^ */.exec(line)![0]}    `;
  const lines: string[] = [];
  let rest = line;
  while (rest.length > width) {
    const space = rest.lastIndexOf(' ', width);
    const at = space > indent.length ? space : rest.indexOf(' ', width);
    if (at < 0) {
      break;
    }
    lines.push(rest.slice(0, at).trimEnd());
    rest = indent + rest.slice(at).trimStart();
  }
  return [...lines, rest].join('\n');
}
