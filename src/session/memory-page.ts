import type { FunctionDefinition } from '../language';
import { valuesFromMemory } from '../tables';

const memory = /memory/;

/** Every value that was seen in no public reproduction: of the tables, and of the functions that hold one themselves. */
export function memoryPage(functions: readonly FunctionDefinition[]): string {
  const tables = valuesFromMemory();
  const rows = tables.reduce((sum, table) => sum + table.rows.length, 0);
  const cells = tables.flatMap((table) => table.rows).reduce((sum, row) => sum + Math.max(1, row.cells.length), 0);
  const told = functions.flatMap(({ name, sources }) =>
    sources.filter((source) => memory.test(source)).map((source) => `- \`${name}\`: ${source}`),
  );
  return [
    '# Values from memory',
    `${cells} values in ${rows} rows of ${tables.length} tables were seen in no public reproduction. A result that uses one says so. Check them against the adopted code before relying on them.`,
    ...tables.map((table) =>
      [
        `## ${table.title}`,
        `${table.table}, ${table.editions.join(', ')}.`,
        table.rows
          .map(
            (row) =>
              `- ${[row.key, row.cells.map(([label, text]) => `${label} ${text}`).join('; ')].filter(Boolean).join(': ')}`,
          )
          .join('\n'),
      ].join('\n\n'),
    ),
    ...(told.length > 0 ? [`## In functions\n\n${told.join('\n')}`] : []),
  ]
    .join('\n\n')
    .concat('\n');
}
