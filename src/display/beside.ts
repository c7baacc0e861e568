import { numberText, roundNumber, usualDigits, valueOf } from './number';

/** Doubles hold no more. */
const mostDigits = 17;

/**
 * A number rounded with so many digits that it stays on its side of a limit: 3.0004 beside a limit of 3 is `3.0004`, and
 * not `3`.
 */
export function showBeside(value: number, limit?: number): string {
  let digits = usualDigits;
  if (limit !== undefined) {
    const side = Math.sign(value - limit);
    while (digits < mostDigits && Math.sign(valueOf(roundNumber(value, digits)) - limit) !== side) {
      digits++;
    }
  }
  return numberText(roundNumber(value, digits));
}
