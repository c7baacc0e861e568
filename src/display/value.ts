import type { QuantityValue, Value } from '../language';
import type { Unit } from '../units';
import { messageText } from './escape';
import { numberText, type RoundedNumber, unbounded } from './number';
import { shownQuantity } from './quantity';

/** Any value as people read it, on one line: `15.72 A ± 0.16 A`, `10 AWG Cu THHN`, `cannot tell`. */
export function showValue(value: Value, digits?: number): string {
  switch (value.kind) {
    case 'quantity':
      return showQuantity(value, digits);
    case 'boolean':
      return value.value === 'cannot tell' ? value.value : value.value ? 'yes' : 'no';
    case 'text':
    case 'choice':
      return oneLine(value.value);
    case 'object':
      return oneLine(value.object.text(value.value));
    case 'record':
      return [...value.fields].map(([field, inner]) => `${field}: ${showValue(inner, digits)}`).join(', ');
    case 'list':
      return value.schedule ? scheduleText(value.items.length) : showList(value.items, digits);
    case 'meter':
      return `meter ± (${value.terms.map((term) => showQuantity(term, digits)).join(' + ')})`;
    case 'absent':
      return `none (${messageText(oneLine(value.because))})`;
  }
}

/** A list longer than this is told by its first items and its length. */
const longList = 12;
const shownOfLong = 5;

/** Items in brackets; so many of one thing behind each other as a bundle of it. */
function showList(items: readonly Value[], digits?: number): string {
  const isBundle = items.every((item) => item.kind === 'object');
  const texts = isBundle
    ? runsOf(items.map((item) => showValue(item)))
    : items.slice(0, items.length > longList ? shownOfLong : longList).map((item) => showValue(item, digits));
  const [first] = texts;
  return isBundle && texts.length === 1 && items.length > 1
    ? first
    : items.length > longList && !isBundle
      ? `[${texts.join(', ')}, …] (${items.length} items)`
      : `[${texts.join(', ')}]`;
}

/** `3 × (12 AWG Cu)` for three of the same in a row. */
function runsOf(texts: readonly string[]): string[] {
  const runs: { text: string; count: number }[] = [];
  for (const text of texts) {
    const last = runs.at(-1);
    if (last?.text === text) {
      last.count++;
    } else {
      runs.push({ text, count: 1 });
    }
  }
  const shown = runs.map(({ text, count }) => (count > 1 ? `${count} × (${text})` : text));
  return runs.length > longList ? [...shown.slice(0, shownOfLong), `… (${texts.length} items)`] : shown;
}

const scheduleText = (rows: number): string => `schedule of ${rows} ${rows === 1 ? 'row' : 'rows'}`;

/** The number of a quantity alone, for a table whose heading has the unit. */
export const showMagnitude = (q: QuantityValue, digits?: number): string => showQuantity(q, digits, false);

function showQuantity(q: QuantityValue, digits?: number, unitToo = true): string {
  const shown = shownQuantity(q, digits);
  const text = (number: RoundedNumber) => (unitToo ? withUnit(numberText(number), shown.unit) : numberText(number));
  switch (shown.form) {
    case 'plain':
      return text(shown.value);
    case 'plus-minus':
      return `${text(shown.value)} ± ${text(shown.limits)}`;
    case 'interval':
      return `${text(shown.value)} (${text(shown.low)} to ${text(shown.high)})`;
    case 'at least':
    case 'at most':
      return `${shown.form} ${text(shown.value)}`;
    case 'unbounded':
      return unitToo ? withUnit(unbounded(shown.value), shown.unit) : unbounded(shown.value);
  }
}

/** A number and its unit with a space between, but for the degree of angle: `30°`. */
export const withUnit = (number: string, unit: Pick<Unit, 'symbol'>): string =>
  unit.symbol === '' ? number : unit.symbol === '°' ? number + unit.symbol : `${number} ${unit.symbol}`;

/** Text of the sheet's author on one line; line breaks and control characters become spaces. */
export const oneLine = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ');
