import type { Conductor } from '../../../functions';
import type { Tables, TemperatureColumn } from '../../../tables';
import { captioned, table } from '../../markdown';
import { neighbours, sizeCell } from './next-sizes';

const columns: readonly TemperatureColumn[] = [60, 75, 90];

/** Ampacity by temperature column, for the size and its neighbours; the insulation's own column in bold. */
export function ampacityTable(tables: Tables, { size, material, insulation }: Conductor): string {
  const type = insulation === undefined ? undefined : tables.insulation(insulation);
  const source = tables.ampacity(size.text)?.source;
  if (!source) {
    return '';
  }
  const listed = tables.sizes.filter(({ text }) =>
    columns.some((column) => tables.ampacity(text)?.row.amperes[material][column] != null),
  );
  const rows = neighbours(listed, size).map(([place, { text }]) => {
    const amperes = columns.map((column) => {
      const rating = tables.ampacity(text)?.row.amperes[material][column] ?? null;
      const shown = rating === null ? '–' : `${rating} A`;
      return place === '' && column === type?.row.columnDryC ? `**${shown}**` : shown;
    });
    const made = tables.conductorProperties(text, 'stranded') ?? tables.conductorProperties(text, 'solid');
    const resistance = made ? `${made.row.ohmPerKft[material]} Ω/kft` : '–';
    return [sizeCell([place, { text }]), ...amperes, resistance];
  });
  if (rows.length === 0) {
    return '';
  }
  return captioned(
    'Ampacity',
    [source, ...(type ? [type.source] : [])],
    table([material, ...columns.map((column) => `${column} °C`), 'DC at 75 °C'], rows),
    'At 30 °C ambient and with at most three current-carrying conductors together, before correction, adjustment and the limits of terminals.',
  );
}
