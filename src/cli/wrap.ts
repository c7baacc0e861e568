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
