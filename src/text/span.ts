/** A half-open range of UTF-16 offsets in one text: `start` is inside, `end` is not. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export const span = (start: number, end: number): Span => ({ start, end });
