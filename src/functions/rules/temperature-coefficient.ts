import { type Call, Failure } from '../../language';
import type { Material } from '../../tables';
import { tablesOf } from '../settings';
import { cellsOf } from './shown-cells';

/**
 * A metal's temperature coefficient in 1/°C, shown with its row; it holds at `referenceC` alone. Where the tables have
 * none, the failure names `parameter`, at which the caller asked for one.
 */
export function temperatureCoefficient(
  call: Call,
  material: Material,
  referenceC: number,
  parameter: string,
): number | Failure {
  const found = tablesOf(call).temperatureCoefficient(material, referenceC);
  const alpha = found?.row.alphaPerC;
  if (!found || alpha === undefined || alpha === null) {
    return new Failure(
      `The tables have no temperature coefficient of ${material} at ${referenceC} °C: ask for the resistance at ${referenceC} °C.`,
      parameter,
      'not-in-table',
    );
  }
  call.table({
    symbol: 'alpha',
    value: alpha,
    unit: '1/°C',
    source: found.source,
    row: cellsOf(found, 'material', 'reference, °C', 'α, 1/°C'),
    remark: `holds at ${referenceC} °C`,
  });
  return alpha;
}
