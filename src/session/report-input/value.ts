import { showValue } from '../../display';
import type { Value } from '../../language';
import type { ReportValue } from '../../report';
import { fromBase } from '../../units';

/** A named result as rows of a table: one for a plain value, one a field for a record, one a row for a list. */
export function reportValue(name: string, value: Value): ReportValue[] {
  switch (value.kind) {
    case 'record':
      return [...value.fields].flatMap(([field, inner]) => reportValue(`${name}.${field}`, inner));
    case 'list':
      return value.items.flatMap((item, i) => reportValue(`${name}[${i + 1}]`, item));
    case 'quantity': {
      const { base, unit, uncertainty } = value;
      const number = fromBase(base, unit);
      const limits = uncertainty && { low: fromBase(uncertainty.low, unit), high: fromBase(uncertainty.high, unit) };
      return [
        {
          name,
          text: showValue(value),
          unit: unit.symbol,
          ...(Number.isFinite(number) && { value: number }),
          ...(limits && Number.isFinite(limits.low) && { low: limits.low }),
          ...(limits && Number.isFinite(limits.high) && { high: limits.high }),
        },
      ];
    }
    default:
      return [{ name, text: showValue(value) }];
  }
}
