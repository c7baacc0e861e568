import type { ProblemCode } from '../text';
import { canonicalEdition, editionsAvailable } from './edition';
import { brokenPromises } from './promises';
import { type Subject, sharedColumns } from './subject';
import { tableInForce } from './table';
import { editionLabel, type TableFile } from './table-file';

/** Keys and indices from the top of the file to a value. */
export type Path = readonly (string | number)[];

/** What is wrong with a table file whose fields are sound, at a place that is not yet a span. */
export interface Problem {
  readonly path: Path;
  readonly message: string;
  readonly code?: ProblemCode;
}

/** The edition must be here, or rest on one that is. */
export function headProblems(file: TableFile): Problem[] {
  const available = editionsAvailable();
  const labels = file.editions.map((edition) => editionLabel(file.standard, edition));
  if (file.base !== undefined && !available.includes(canonicalEdition(file.base))) {
    return [{ path: ['base'], message: `There are no tables for ${file.base}. Name one of ${available.join(', ')}.` }];
  }
  if (!file.anyCode && file.base === undefined && !labels.some((label) => available.includes(label))) {
    const message = `${labels.join(', ')} is no edition that is here (${available.join(', ')}). Add "base" with the edition whose other tables hold.`;
    return [{ path: ['editions'], message }];
  }
  return [];
}

/** Every column is known, stands once, and none is missing. */
export function columnProblems(file: TableFile, subject: Subject<never>): Problem[] {
  const known = { ...subject.columns, ...sharedColumns };
  const missing = Object.keys(known).filter((id) => !known[id].blank && !file.columns.includes(id));
  const problems: Problem[] = file.columns.flatMap((id, i) => {
    if (!Object.hasOwn(known, id)) {
      const message = `"${id}" is no column of ${subject.id}. Its columns are ${Object.keys(known).join(', ')}.`;
      return [{ path: ['columns', i], message }];
    }
    return file.columns.indexOf(id) < i ? [{ path: ['columns', i], message: `Column "${id}" stands here twice.` }] : [];
  });
  if (missing.length > 0) {
    problems.push({ path: ['columns'], message: `${subject.id} also needs the columns ${missing.join(', ')}.` });
  }
  return problems;
}

/** Rows that name the same thing twice, and notes that point at nothing. */
export function rowProblems(file: TableFile, subject: Subject<never>): Problem[] {
  const cell = (row: number, column: string) => file.rows[row][file.columns.indexOf(column)] ?? null;
  const seen = new Map<string, number>();
  return file.rows.flatMap((_, index) => {
    const key = subject.key.map((column) => cell(index, column) ?? '').join(' ');
    const before = seen.get(key);
    seen.set(key, index);
    const problems: Problem[] = [];
    if (before !== undefined) {
      problems.push({
        path: ['rows', index],
        message: `Row ${index + 1} has the same key as row ${before + 1}: ${key}.`,
      });
    }
    const source = cell(index, 'source');
    if (source !== null && !Object.hasOwn(file.otherSources ?? {}, source)) {
      const at = file.columns.indexOf('source');
      problems.push({ path: ['rows', index, at], message: `"${source}" is not among the file's otherSources.` });
    }
    const stray = (cell(index, 'unconfirmed') ?? '')
      .split(' ')
      .filter((id) => id && !Object.hasOwn(subject.columns, id));
    if (stray.length > 0) {
      const at = file.columns.indexOf('unconfirmed');
      problems.push({ path: ['rows', index, at], message: `${stray.join(', ')}: no column of ${subject.id}.` });
    }
    return problems;
  });
}

/** What the subject promises, asked of the table as it will stand under each of the file's editions. */
export function promiseProblems(file: TableFile, subject: Subject<never>): Problem[] {
  const labels = file.anyCode ? [editionsAvailable()[0]] : file.editions.map((e) => editionLabel(file.standard, e));
  const problems = new Map<string, Problem>();
  for (const label of labels) {
    for (const { promise, rows, column, found } of brokenPromises(tableInForce(subject, label, [file]))) {
      const own = rows.find((row) => row.file === file);
      const path: Path = own ? ['rows', own.index, file.columns.indexOf(column)] : ['rows'];
      const at = own ? `Row ${own.index + 1} (${own.key})` : `Row ${rows[0]?.key} of the table below`;
      const message = `${at}, ${column}: ${found}. The table promises that ${promise}. Check the figures against the print.`;
      problems.set(`${path.join()} ${promise}`, { path, message, code: 'implausible-table-value' });
    }
  }
  return [...problems.values()];
}
