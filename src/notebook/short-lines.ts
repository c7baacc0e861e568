/** A text with less in its lines, and the way back to the text that it was made of. */
export interface ShortLines {
  readonly text: string;
  /** Where an offset lies in the whole text; one at the end of a line that was cut short, at that line's end. */
  whole(offset: number): number;
}

/** A line that begins with a letter and holds no sign of a table or of HTML, without its end. */
const wordy = /^([ \t]*\p{L})([^\n\r|<>]+)(?![^\n\r])/gmu;

/**
 * Cuts lines down to their indentation and first letter, where that alone decides which block of Markdown they belong to.
 * Most of a sheet are such lines: words of prose, statements of cells.
 */
export function shortLines(source: string): ShortLines {
  /** Where something was cut, in the short text, and how much was cut up to there. */
  const cuts: number[] = [];
  const lengths: number[] = [];
  let cut = 0;
  const text = source.replace(wordy, (_, kept: string, rest: string, at: number) => {
    cuts.push(at + kept.length - cut);
    cut += rest.length;
    lengths.push(cut);
    return kept;
  });
  return {
    text,
    whole(offset) {
      let low = 0;
      let high = cuts.length;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (cuts[middle] <= offset) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      return offset + (low === 0 ? 0 : lengths[low - 1]);
    },
  };
}
