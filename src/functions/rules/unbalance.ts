import { type Call, defineFormula } from '../../language';

const formulasIn = (unit: 'V' | 'A' | 'Ω' | 'VA') => ({
  mean: defineFormula({
    symbol: 'x_mean',
    text: '(a + b + c) / 3',
    units: { a: unit, b: unit, c: unit },
    result: unit,
  }),
  percent: defineFormula({
    symbol: 'unbalance',
    text: 'max(abs(a - x_mean), abs(b - x_mean), abs(c - x_mean)) / x_mean',
    units: { a: unit, b: unit, c: unit, x_mean: unit },
    result: '%',
  }),
});
const formulas = { V: formulasIn('V'), A: formulasIn('A'), Ω: formulasIn('Ω'), VA: formulasIn('VA') };

/**
 * How unequal three amounts are: the largest distance from their mean, over the mean, in % (NEMA MG 1). Undefined where
 * the mean is not above zero.
 */
export function unbalanceOf(
  values: { readonly a: number; readonly b: number; readonly c: number },
  unit: 'V' | 'A' | 'Ω' | 'VA',
  call: Call,
): number | undefined {
  const { mean, percent } = formulas[unit];
  const x_mean = mean(call, values);
  return x_mean > 0 ? percent(call, { ...values, x_mean }) : undefined;
}
