/** A place as people count it: both from 1, columns in UTF-16 units. */
export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/** Turns offsets into lines and columns and back. The only place where that is done outside the editor hosts. */
export class LineIndex {
  private readonly starts: number[] = [0];

  constructor(private readonly text: string) {
    for (let i = 0; i < text.length; i++) {
      const c = text.charCodeAt(i);
      if (c === 13 && text.charCodeAt(i + 1) === 10) {
        i++;
      } else if (c !== 10 && c !== 13) {
        continue;
      }
      this.starts.push(i + 1);
    }
  }

  get lineCount(): number {
    return this.starts.length;
  }

  /** Offsets outside the text count as its nearest end. */
  at(offset: number): LineColumn {
    const wanted = Math.max(0, Math.min(offset, this.text.length));
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.starts[middle] <= wanted) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return { line: low + 1, column: wanted - this.starts[low] + 1 };
  }

  /** The offset of a line and column; a column past the line's end counts as its end. */
  offset({ line, column }: LineColumn): number {
    const index = Math.max(0, Math.min(line - 1, this.starts.length - 1));
    const next = index + 1 < this.starts.length ? this.starts[index + 1] : this.text.length;
    return Math.min(this.starts[index] + Math.max(0, column - 1), next);
  }
}
