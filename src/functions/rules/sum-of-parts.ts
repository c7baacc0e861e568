import { type Call, defineFormula } from '../../language';

type Sum = ReturnType<typeof defineFormula<string>>;

/** Adds up parts that were just shown, as a step of its own: `A = A_1 + A_2`. All in one unit. */
export function sumOfParts(
  symbol: string,
  unit: string,
): (call: Call, parts: readonly number[], remark?: string) => number {
  const sums = new Map<number, Sum>();
  return (call, parts, remark) => {
    if (parts.length < 2) {
      return parts[0] ?? 0;
    }
    const [letter] = symbol.split('_');
    const names = parts.map((_, i) => `${letter}_${i + 1}`);
    const sum =
      sums.get(parts.length) ??
      defineFormula({
        symbol,
        text: names.join(' + '),
        units: Object.fromEntries(names.map((name) => [name, unit])),
        result: unit,
      });
    sums.set(parts.length, sum);
    const values = Object.fromEntries(names.map((name, i) => [name, parts[i]]));
    return sum(call, values, remark);
  };
}
