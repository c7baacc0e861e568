import { type Diagnostic, type Span, span } from '../text';
import { subjects } from './subjects';
import type { TableFile } from './table-file';
import {
  columnProblems,
  headProblems,
  type Path,
  type Problem,
  promiseProblems,
  rowProblems,
} from './table-file-problems';
import { tableFileSchemas } from './table-file-schema';

/**
 * Reads a workspace's own table file. It is either taken whole or refused with every problem at its place: the JSON, the
 * fields, each cell, and the promises of its subject against the table it will stand in.
 */
export async function readTableFile(
  text: string,
  path: string,
): Promise<{ readonly file: TableFile } | { readonly diagnostics: readonly Diagnostic[] }> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return { diagnostics: [notJson(text, String(error))] };
  }
  const result = await validate(json, path);
  if ('file' in result) {
    return result;
  }
  const { parseDocument } = await import('yaml');
  const document = parseDocument(text, { logLevel: 'silent' }); // JSON is YAML too, and YAML knows where its values stand.
  const place = (wanted: Path): Span => {
    for (let length = wanted.length; length > 0; length--) {
      const node = document.getIn(wanted.slice(0, length), true) as { range?: readonly number[] } | undefined;
      if (node?.range) {
        return span(node.range[0], node.range[1]);
      }
    }
    return span(0, text.length === 0 ? 0 : 1);
  };
  return {
    diagnostics: result.problems.map(({ path: wanted, message, code = 'invalid-table-file' }) => ({
      code,
      severity: 'error',
      span: place(wanted),
      message,
    })),
  };
}

function notJson(text: string, error: string): Diagnostic {
  const at = Math.min(Number(/position (\d+)/.exec(error)?.[1] ?? text.length), text.length);
  return {
    code: 'invalid-table-file',
    severity: 'error',
    span: span(Math.max(0, Math.min(at, text.length - 1)), Math.min(at + 1, text.length)),
    message: 'This is not valid JSON from here on. Look for a missing comma, quote or bracket.',
  };
}

async function validate(json: unknown, path: string): Promise<{ file: TableFile } | { problems: Problem[] }> {
  const schemas = tableFileSchemas(await import('zod'));
  const parsed = schemas.file.safeParse(json);
  if (!parsed.success) {
    return {
      problems: parsed.error.issues.map((issue) => ({
        path: issue.path as Path,
        message:
          issue.code === 'unrecognized_keys'
            ? `${issue.keys.join(', ')}: no field of a table file has this name. Remove it or mend the spelling.`
            : `${where(issue.path as Path)} ${issue.message}.`,
      })),
    };
  }
  const file: TableFile = { ...parsed.data, path };
  const subject = subjects.find(({ id }) => id === file.subject);
  if (!subject) {
    const known = subjects.map(({ id }) => id).join(', ');
    return { problems: [{ path: ['subject'], message: `There is no table "${file.subject}". Name one of ${known}.` }] };
  }
  const problems = [...headProblems(file), ...columnProblems(file, subject)];
  if (problems.length > 0) {
    return { problems };
  }
  const schema = schemas.row(subject);
  const rows = file.rows.map((cells, index) => {
    if (cells.length !== file.columns.length) {
      const message = `Row ${index + 1} has ${cells.length} cells for ${file.columns.length} columns.`;
      problems.push({ path: ['rows', index], message });
      return cells;
    }
    const row = schema.safeParse(
      Object.fromEntries(Object.keys(schema.shape).map((id) => [id, cells[file.columns.indexOf(id)] ?? null])),
    );
    for (const issue of row.error?.issues ?? []) {
      const column = file.columns.indexOf(String(issue.path[0]));
      problems.push({
        path: ['rows', index, column],
        message: `Row ${index + 1} (${cells[0]}), ${file.columns[column]}: ${quoted(cells[column])} ${issue.message}.`,
      });
    }
    return row.success ? file.columns.map((id) => row.data[id] as string | null) : cells;
  });
  const read: TableFile = { ...file, rows };
  if (problems.length === 0) {
    problems.push(...rowProblems(read, subject), ...promiseProblems(read, subject));
  }
  return problems.length === 0 ? { file: read } : { problems };
}

const quoted = (cell: string | null): string => (cell === null ? 'this cell' : `"${cell}"`);

const where = (path: Path): string =>
  path.map((step, i) => (typeof step === 'number' ? `${i === 1 ? 'row' : 'cell'} ${step + 1}` : step)).join(', ') ||
  'It';
