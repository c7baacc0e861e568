/** A half-open range of UTF-16 offsets in one text: `start` is inside, `end` is not. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export const span = (start: number, end: number): Span => ({ start, end });

/** The smallest span that holds both. */
export const cover = (a: Span, b: Span): Span => ({
  start: Math.min(a.start, b.start),
  end: Math.max(a.end, b.end),
});

/** True when `offset` lies in the span or touches its end, as a text cursor does. */
export const touches = (s: Span, offset: number): boolean => s.start <= offset && offset <= s.end;

/** The same stretch of text, told from an origin that lies `by` further left. */
export const shift = (s: Span, by: number): Span => ({ start: s.start + by, end: s.end + by });
