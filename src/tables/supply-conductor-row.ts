import { areaOf, eachRow, rising } from './checks';
import type { Check, Column } from './subject';

/** A row chosen by the area of the largest ungrounded supply conductor, in either metal. */
export interface SupplyConductorRow {
  readonly copperRange: string;
  readonly aluminumRange: string;
  /** Upper ends, inclusive; null for no end. A parallel set counts with its total area. */
  readonly toCmil: { readonly Cu: number | null; readonly Al: number | null };
  readonly Cu: string | null;
  readonly Al: string | null;
}

export const supplyConductorColumns: Readonly<Record<string, Column>> = {
  copperRange: { label: 'supply conductor, copper', type: 'text' },
  aluminumRange: { label: 'supply conductor, aluminum', type: 'text' },
  'toCmil.Cu': { label: 'copper to, cmil', type: 'number', blank: true, atLeast: 1000, atMost: 1e8 },
  'toCmil.Al': { label: 'aluminum to, cmil', type: 'number', blank: true, atLeast: 1000, atMost: 1e8 },
  Cu: { label: 'copper', type: 'size', blank: true },
  Al: { label: 'aluminum', type: 'size', blank: true },
};

const sizeArea = (size: string | null): number | null => (size === null ? null : areaOf(size));

/** Promises of any table whose rows extend this one. */
export const supplyConductorChecks = <Row extends SupplyConductorRow>(): Check<Row>[] => [
  rising('toCmil.Cu', (row) => row.toCmil.Cu),
  rising('toCmil.Al', (row) => row.toCmil.Al),
  rising('Cu', (row) => sizeArea(row.Cu)),
  rising('Al', (row) => sizeArea(row.Al)),
  eachRow('aluminum is larger than copper', 'Al', ({ Cu, Al }) =>
    Cu === null || Al === null || areaOf(Al) > areaOf(Cu) ? undefined : `${Al} beside ${Cu}`,
  ),
];
