import { type Cell, type Part, plain, type ReportDocument, type Table } from '../document';
import { fitColumns } from './column-fit';
import { type Content, colours, texts } from './inline-content';
import { Tag } from './tag';

const line = 0.5;
const padding = 3;

const grid = {
  hLineWidth: () => line,
  vLineWidth: () => line,
  hLineColor: () => colours.line,
  vLineColor: () => colours.line,
  paddingLeft: () => padding,
  paddingRight: () => padding,
  paddingTop: () => 2,
  paddingBottom: () => 2,
};

/** Tables with more columns are set smaller. */
const manyColumns = 7;

/** A table that is no longer than this stands on one page. */
const mostRowsTogether = 10;
const mostCharactersTogether = 2000;

/** Column heads, and totals below them, stand on top of every page that the table runs over. */
export function tableContent({ caption, columns, rows, totals = [] }: Table, width: number): Content {
  const alignment = columns.map(({ align }) => (align ? { alignment: 'right' } : {}));
  const headCell = { bold: true, fillColor: colours.head };
  const head = rowOf(
    'TH',
    columns.map(({ title }, i) => ({ text: title, ...headCell, ...alignment[i] })),
  );
  const cellsOf = (row: readonly Cell[]) => columns.map((_, i) => ({ text: texts(row[i] ?? []), ...alignment[i] }));
  const total = totals.map((row) =>
    rowOf(
      'TD',
      cellsOf(row).map((cell) => ({ ...cell, ...headCell })),
    ),
  );
  const fit = fitColumns(columns, width - columns.length * (2 * padding + line) - line);
  const sum = columns.reduce((all, column) => all + (column.width ?? 1), 0);
  const table = {
    table: {
      headerRows: 1 + totals.length,
      keepWithHeaderRows: 1,
      dontBreakRows: rows.every((row) => charactersIn([row]) < mostCharactersTogether),
      widths: fit?.widths ?? columns.map((column) => `${(100 * (column.width ?? 1)) / sum}%`),
      body: [head, ...total, ...rows.map((row) => rowOf('TD', cellsOf(row)))],
    },
    layout: grid,
    fontSize: fit?.fontSize ?? (columns.length > manyColumns ? 7.5 : 8.5),
    margin: [0, 3, 0, 7],
    unbreakable: isShortTable({ rows }),
    tag: new Tag('Table'),
  };
  return caption === undefined ? table : { stack: [{ text: caption, bold: true, tag: new Tag('P') }, table] };
}

export const isShortTable = ({ rows }: Pick<Table, 'rows'>): boolean =>
  rows.length <= mostRowsTogether && charactersIn(rows) < mostCharactersTogether;

/** Label and text, one below the other. */
export const fieldsContent = (fields: ReportDocument['fields']): Content => ({
  table: {
    widths: [90, 300],
    body: fields.map(([label, text]) => {
      const row = new Tag('TR');
      return [
        { text: label, bold: true, tag: new Tag('TH', { within: row, scope: 'Row' }) },
        { text, tag: new Tag('TD', { within: row }) },
      ];
    }),
  },
  layout: {
    hLineWidth: () => 0.5,
    vLineWidth: () => 0.5,
    hLineColor: () => colours.line,
    vLineColor: () => colours.line,
  },
  margin: [0, 0, 0, 8],
  tag: new Tag('Table'),
});

export function signatures({ lines }: Part & { kind: 'signatures' }): Content {
  const head = ['', 'Name', 'Signature', 'Date'].map((text) => ({ text, bold: true, fillColor: colours.head }));
  const tall = { margin: [0, 10, 0, 10] };
  const rows = lines.map(({ role, name }) =>
    rowOf('TD', [{ text: role, bold: true, ...tall }, { text: name, ...tall }, { text: '' }, { text: '' }]),
  );
  return {
    table: { headerRows: 1, dontBreakRows: true, widths: [80, '*', '*', 70], body: [rowOf('TH', head), ...rows] },
    layout: grid,
    unbreakable: true,
    margin: [0, 3, 0, 7],
    tag: new Tag('Table'),
  };
}

function rowOf(type: 'TH' | 'TD', cells: readonly Content[]): Content[] {
  const row = new Tag('TR');
  const options = type === 'TH' ? { within: row, scope: 'Column' as const } : { within: row };
  return cells.map((cell) => ({ ...cell, tag: new Tag(type, options) }));
}

const charactersIn = (rows: readonly (readonly Cell[])[]): number =>
  rows.reduce((all, row) => all + row.reduce((sum, cell) => sum + plain(cell).length, 0), 0);
