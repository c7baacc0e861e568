/** A number in the text of a message or a reason: at most four significant digits, no trailing zeros. */
export const figure = (value: number): string =>
  Math.abs(value) >= 1000 ? String(Math.round(value * 10) / 10) : String(Number(value.toPrecision(4)));
