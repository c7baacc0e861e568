import type * as zod from 'zod';
import { parseSize } from './size';
import { type Column, type Subject, sharedColumns } from './subject';

/**
 * The schemas of table files. zod is handed in, because it is too heavy for activation: only reading a workspace's file
 * and the tests, which hold every shipped file to the same schemas, load it.
 */
export function tableFileSchemas(z: typeof zod) {
  const words = z.string({ error: 'must be a text in quotes' }).trim().min(1, 'must not be empty');
  const basis = z.enum(['published', 'memory'], { error: 'must be "published" or "memory"' });
  // A cell as the file may write it; numbers without quotes are taken as they print.
  const cell = z.union([z.string(), z.number().transform(String), z.null()], {
    error: 'must be a text, a number or null',
  });
  const file = z.strictObject({
    subject: words,
    standard: words,
    editions: z.array(words, { error: 'must be a list of editions' }).min(1, 'must name at least one edition'),
    base: words.optional(),
    anyCode: z.boolean({ error: 'must be true or false' }).optional(),
    table: z.union([words, z.record(z.string(), words)], { error: 'must be the number of the table' }),
    title: words,
    conditions: z.array(words, { error: 'must be a list of texts' }),
    provenance: words,
    basis,
    otherSources: z
      .record(z.string(), z.strictObject({ provenance: words, basis }), {
        error: 'must name sources, each with provenance and basis',
      })
      .optional(),
    columns: z.array(words, { error: 'must be a list of column ids' }).min(1, 'must not be empty'),
    rows: z
      .array(z.array(cell, { error: 'must be a list of cells' }), { error: 'must be a list of rows' })
      .min(1, 'must hold at least one row'),
  });

  /** One row as column id to cell, by the subject's own columns. Sizes come out canonical. */
  const row = (subject: Pick<Subject<never>, 'columns'>) =>
    z.object(
      Object.fromEntries(
        Object.entries({ ...subject.columns, ...sharedColumns }).map(([id, column]) => [id, cellSchema(z, column)]),
      ),
    );
  return { file, row };
}

function cellSchema(z: typeof zod, column: Column): zod.ZodType<string | null> {
  return column.blank ? filledCell(z, column).nullable() : filledCell(z, column);
}

function filledCell(z: typeof zod, column: Column): zod.ZodType<string> {
  const text = z.string({ error: 'must hold a value' }).min(1, 'must hold a value');
  const { type, atLeast = Number.NEGATIVE_INFINITY, atMost = Number.POSITIVE_INFINITY } = column;
  if (type === 'text') {
    return text;
  }
  if (type === 'number') {
    return text
      .regex(/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i, { error: 'must be a plain number', abort: true })
      .refine(
        (number) => Number(number) >= atLeast && Number(number) <= atMost,
        `must lie from ${atLeast} to ${atMost}`,
      );
  }
  if (type === 'size') {
    return text
      .refine((size) => parseSize(size) !== undefined, 'must be a size such as 12 AWG, 250 kcmil or 2.5 mm²')
      .transform((size) => parseSize(size)?.text ?? size);
  }
  return text.refine((word) => type.includes(word), `must be one of ${type.join(', ')}`);
}
