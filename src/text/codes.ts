/**
 * A text as its UTF-16 codes, with noughts behind them. To read one there costs a fraction of `charCodeAt`, which looks
 * each time how the text is stored, and a look ahead needs no bound. A nought may stand in a text, too: where it matters
 * the text's length tells its end.
 */
export type Codes = Uint16Array;

/** The noughts behind a text: as many as any look ahead goes beyond its end. */
const margin = 4;

/** The codes of a text; in `kept`, whatever it holds, where that is long enough. */
export function codesOf(text: string, kept?: Codes): Codes {
  const { length } = text;
  const codes = kept && kept.length >= length + margin ? kept : new Uint16Array(length + margin);
  for (let at = 0; at < length; at++) {
    codes[at] = text.charCodeAt(at);
  }
  return codes.fill(0, length, length + margin);
}
