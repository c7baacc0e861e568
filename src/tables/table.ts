import type { Found } from './contract';
import { baseOf, filesInForce } from './edition';
import { type LoadedRow, loadRows } from './rows';
import type { Subject } from './subject';
import type { TableFile } from './table-file';

/**
 * A current worked out from others ends a few last bits off: 20 A × 125 % must not need a 30 A device. This much of a
 * value is taken as rounding.
 */
const rounding = 1e-9;

/** One table in force. Rows are read at the first question, once. */
export class Table<Row> {
  private loaded: LoadedRow<Row>[] | undefined;
  private keyed: Map<string, LoadedRow<Row>> | undefined;

  constructor(
    readonly subject: Subject<Row>,
    readonly files: readonly TableFile[],
    private readonly edition: string,
  ) {}

  get rows(): readonly LoadedRow<Row>[] {
    this.loaded ??= loadRows(this.subject, this.files, this.edition);
    return this.loaded;
  }

  /** The row with these key cells, in the order of the subject's key. */
  exact(...key: string[]): Found<Row> | undefined {
    this.keyed ??= new Map(this.rows.map((row) => [row.key, row]));
    return this.keyed.get(key.length === 1 ? key[0] : key.join(' | '))?.found;
  }

  get all(): readonly Row[] {
    return this.rows.map(({ found }) => found.row);
  }

  first(wanted: (row: Row) => boolean): Found<Row> | undefined {
    return this.rows.find(({ found }) => wanted(found.row))?.found;
  }

  /** The rows of each group that they belong to, by `place` or as they stand; gathered at the first question, once. */
  grouped(
    groupsOf: (row: Row) => readonly string[],
    place: (row: Row) => number = () => 0,
  ): () => ReadonlyMap<string, readonly Found<Row>[]> {
    let groups: Map<string, Found<Row>[]> | undefined;
    return () => {
      if (!groups) {
        groups = new Map();
        for (const { found } of [...this.rows].sort((a, b) => place(a.found.row) - place(b.found.row))) {
          for (const group of groupsOf(found.row)) {
            const rows = groups.get(group);
            if (rows) {
              rows.push(found);
            } else {
              groups.set(group, [found]);
            }
          }
        }
      }
      return groups;
    };
  }

  /** Every row that fits, in order, as a list of its own. */
  where(wanted: (row: Row) => boolean): Found<Row>[] {
    return this.rows.flatMap(({ found }) => (wanted(found.row) ? [found] : []));
  }

  /** The first row, in order, whose limit is not below the value; a row without a limit takes all. */
  upTo(value: number, limit: (row: Row) => number | null, among: (row: Row) => boolean = () => true) {
    return this.first(
      (row) => among(row) && (limit(row) ?? Number.POSITIVE_INFINITY) >= value - Math.abs(value) * rounding,
    );
  }

  /** The last row, in order, whose limit is not above the value. */
  downTo(
    value: number,
    limit: (row: Row) => number,
    among: (row: Row) => boolean = () => true,
  ): Found<Row> | undefined {
    return this.where((row) => among(row) && limit(row) <= value + Math.abs(value) * rounding).at(-1);
  }
}

/** A subject's table under an edition: the base edition's files, then the edition's own, then the workspace's. */
export function tableInForce<Row>(subject: Subject<Row>, edition: string, overrides: readonly TableFile[]): Table<Row> {
  const base = baseOf(edition, overrides);
  const brought = overrides.filter((file) => file.subject === subject.id);
  const files = [
    ...filesInForce(subject.files, base),
    ...filesInForce(brought, base),
    ...(base === edition ? [] : filesInForce(brought, edition).filter((file) => !file.anyCode)),
  ];
  return new Table(subject, files, edition.replace(/^.* /, ''));
}
