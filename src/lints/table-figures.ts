import type { TradeSettings } from '../functions';
import type { ConductorProperties, Stranding } from '../tables';

const strandings: readonly Stranding[] = ['stranded', 'solid'];

/**
 * Names the conductor whose printed 75 °C resistance is exactly `value` in `unit` (`Ω/kft` or `Ω/km`), such as
 * `75 °C figure of 12 AWG stranded copper`; absent when the table has no such figure.
 */
export function tableFigureText(settings: unknown, value: number, unit: string): string | undefined {
  const { tables } = settings as TradeSettings;
  const column = unit === 'Ω/kft' ? 'ohmPerKft' : unit === 'Ω/km' ? 'ohmPerKm' : undefined;
  if (!column) {
    return undefined;
  }
  for (const size of tables.sizes) {
    for (const stranding of strandings) {
      const found = tables.conductorProperties(size.text, stranding);
      const metal = found && metalWith(found.row[column], value);
      if (found && metal) {
        return `75 °C figure of ${size.text} ${stranding} ${metal} (${found.source.standard} ${found.source.edition}, ${found.source.table})`;
      }
    }
  }
  return undefined;
}

function metalWith(figures: ConductorProperties['ohmPerKft'], value: number): string | undefined {
  return figures.Cu === value
    ? 'copper'
    : figures.coatedCu === value
      ? 'coated copper'
      : figures.Al === value
        ? 'aluminum'
        : undefined;
}
