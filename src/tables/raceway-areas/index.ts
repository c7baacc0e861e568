import { eachRow, growsWithin, near } from '../checks';
import type { Column, Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface RacewayAreaRow {
  /** `EMT`, `PVC Sch 40` … */
  readonly type: string;
  /** `1/2`, `1-1/4`: a name, not a measure. */
  readonly tradeSize: string;
  readonly metricDesignator: number;
  readonly article: string;
  readonly internalDiameterIn: number;
  readonly areaIn2: {
    readonly total: number;
    readonly oneWire: number;
    readonly twoWires: number;
    readonly overTwoWires: number;
    readonly nipple: number;
  };
}

const area = (label: string): Column => ({ label, type: 'number', atLeast: 0.02, atMost: 60 });
const fractions = { oneWire: 0.53, twoWires: 0.31, overTwoWires: 0.4, nipple: 0.6 } as const;

/** NEC Chapter 9 Table 4: the areas of each raceway as printed. Never compute one from the trade size. */
export const racewayAreas: Subject<RacewayAreaRow> = {
  id: 'raceway-areas',
  needed: true,
  columns: {
    type: { label: 'raceway', type: 'text' },
    tradeSize: { label: 'trade size, in', type: 'text' },
    metricDesignator: { label: 'metric designator', type: 'number', atLeast: 10, atMost: 200 },
    article: { label: 'NEC article', type: 'text' },
    internalDiameterIn: { label: 'internal diameter, in', type: 'number', atLeast: 0.2, atMost: 8 },
    'areaIn2.total': area('area, in², 100 %'),
    'areaIn2.oneWire': area('area, in², one wire, 53 %'),
    'areaIn2.twoWires': area('area, in², two wires, 31 %'),
    'areaIn2.overTwoWires': area('area, in², over two wires, 40 %'),
    'areaIn2.nipple': area('area, in², nipple, 60 %'),
  },
  key: ['type', 'tradeSize'],
  checks: [
    growsWithin('internalDiameterIn', {
      group: (row) => row.type,
      order: (row) => row.metricDesignator,
      value: (row) => row.internalDiameterIn,
    }),
    // The diameter is printed to a thousandth of an inch, the area to a thousandth of a square inch.
    eachRow('the area is that of the bore', 'areaIn2.total', ({ internalDiameterIn: d, areaIn2 }) => {
      const circle = (Math.PI / 4) * d ** 2;
      return Math.abs(areaIn2.total - circle) <= 0.0006 + 0.0008 * d ? undefined : `${areaIn2.total} for ${circle}`;
    }),
    ...(Object.keys(fractions) as (keyof typeof fractions)[]).map((wires) =>
      near<RacewayAreaRow>(
        `areaIn2.${wires} is its share of the whole`,
        `areaIn2.${wires}`,
        (row) => row.areaIn2[wires],
        (row) => row.areaIn2.total * fractions[wires],
        0.012,
      ),
    ),
  ],
  files: [nec2023 as TableFile],
};
