import type { QuantityValue, Value } from '../../language';
import { dimensionOf, powerDimension } from '../../units';
import { unbalanceOf } from './unbalance';
import { unheard } from './unwatched';

/** What the circuits of a panel put on each of its phases. */
export interface PhaseLoads {
  /** The schedule's columns that hold the loads and the phases. */
  readonly loadColumn: string;
  readonly phaseColumn: string;
  /** In the coherent SI unit, in order of phase; the best values where loads are doubtful. */
  readonly phases: readonly { readonly name: string; readonly base: number }[];
  /** One of the loads, which tells their unit. */
  readonly sample: QuantityValue;
  /** In %, by NEMA MG 1; of three phases alone. */
  readonly unbalance?: number;
  /** How a load across several phases was counted; absent where there is none. */
  readonly across?: 'shared' | 'on each';
  /** Rows with a load whose phase is not known. */
  readonly unplaced: number;
  /** True where a load is doubtful, of which the sums say nothing. */
  readonly doubtful: boolean;
}

const phaseColumns: ReadonlySet<string> = new Set(['phase', 'phases', 'leg', 'legs', 'line', 'lines']);

/**
 * The loads of a panel schedule by phase: a schedule with a column of phases (`A`, `AB`, `L1-L2`) and one of loads, `load`
 * or the only one of a power, else of a current. A power across several phases is shared equally among them; a current
 * across several flows in each of them in full. *Common practice, no source.* Undefined for any other value, and where
 * all rows are on one phase.
 */
export function phaseLoads(value: Value): PhaseLoads | undefined {
  if (value.kind !== 'list' || !value.schedule) {
    return undefined;
  }
  const { columns } = value.schedule;
  const phaseColumn = columns.find(
    ({ name, unit }) => phaseColumns.has(name.toLowerCase()) && unit === undefined,
  )?.name;
  const loadColumn = loadColumnOf(value.items, columns);
  return phaseColumn === undefined || loadColumn === undefined
    ? undefined
    : summed(value.items, phaseColumn, loadColumn);
}

function summed(rows: readonly Value[], phaseColumn: string, loadColumn: string): PhaseLoads | undefined {
  const sums = new Map<string, number>();
  /** A phase with nothing but spares is a phase of the panel, too. */
  const seen = new Set<string>();
  let sample: QuantityValue | undefined;
  let across: PhaseLoads['across'];
  let unplaced = 0;
  let doubtful = false;
  for (const row of rows) {
    const phases = phasesIn(cellOf(row, phaseColumn));
    for (const phase of phases) {
      seen.add(phase);
    }
    const load = cellOf(row, loadColumn);
    if (load?.kind !== 'quantity' || load.base === 0 || !Number.isFinite(load.base)) {
      continue;
    }
    if (phases.length === 0) {
      unplaced++;
      continue;
    }
    sample ??= load;
    doubtful ||= load.uncertainty !== undefined;
    const isShared = isPower(load);
    if (phases.length > 1) {
      across = isShared ? 'shared' : 'on each';
    }
    for (const phase of phases) {
      sums.set(phase, (sums.get(phase) ?? 0) + (isShared ? load.base / phases.length : load.base));
    }
  }
  const names = systemOf([...seen]);
  if (!sample || !names || seen.size < 2) {
    return undefined;
  }
  const phases = names.map((name) => ({ name, base: sums.get(name) ?? 0 }));
  const [a, b, c] = phases.map(({ base }) => base);
  const unbalance = c === undefined ? undefined : unbalanceOf({ a, b, c }, isPower(sample) ? 'VA' : 'A', unheard);
  return {
    loadColumn,
    phaseColumn,
    phases,
    sample,
    unplaced,
    doubtful,
    ...(unbalance !== undefined && { unbalance }),
    ...(across && { across }),
  };
}

const letters = ['A', 'B', 'C'];
const numbers = ['L1', 'L2', 'L3'];

/** All phases of the system that these belong to, as many as it has at least; undefined where they are named both ways. */
function systemOf(names: readonly string[]): readonly string[] | undefined {
  const system = [letters, numbers].find((all) => names.every((name) => all.includes(name)));
  return system?.slice(0, names.includes(system[2]) ? 3 : 2);
}

/** `AB`, `A-B`, `a/b`, `L1 L2`: each phase once; none where something else stands there. */
function phasesIn(cell: Value | undefined): readonly string[] {
  if (cell?.kind !== 'text' && cell?.kind !== 'choice') {
    return [];
  }
  const text = cell.value.toUpperCase();
  const found = text.match(/L[123]|[ABC]/g) ?? [];
  const isAll = text.replace(/L[123]|[ABC]/g, '').replace(/[\s\-–/+,&]/g, '') === '';
  return isAll ? [...new Set(found)] : [];
}

const current = dimensionOf({ current: 1 });

const isPower = ({ type }: QuantityValue): boolean => type.dimension === powerDimension;

const isCurrent = ({ type }: QuantityValue): boolean => type.dimension === current;

const cellOf = (row: Value, column: string): Value | undefined =>
  row.kind === 'record' ? row.fields.get(column) : undefined;

type Columns = NonNullable<(Value & { kind: 'list' })['schedule']>['columns'];

/** `load` where it is a power or a current; else the only column of a power, else the only one of a current. */
function loadColumnOf(rows: readonly Value[], columns: Columns): string | undefined {
  const named = (fits: (load: QuantityValue) => boolean) =>
    columns.filter(({ name }) => {
      const first = rows.map((row) => cellOf(row, name)).find((cell) => cell?.kind === 'quantity');
      return first?.kind === 'quantity' && fits(first);
    });
  const [powers, currents] = [named(isPower), named(isCurrent)];
  const load = [...powers, ...currents].find(({ name }) => name === 'load');
  const only = powers.length === 1 ? powers[0] : powers.length === 0 && currents.length === 1 ? currents[0] : undefined;
  return (load ?? only)?.name;
}
