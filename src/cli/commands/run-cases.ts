import { createReadStream } from 'node:fs';
import { Readable } from 'node:stream';
import { CsvError, parse } from 'csv-parse';
import { caseHeading, caseLine, casesAtOnce, folderOf, SheetCases } from '../../core';
import type { Console } from '../console';
import { readSource, reasonFor } from '../files';
import { FolderTree } from '../folder-tree';
import { WholeFile } from '../whole-file';
import { WrongCommandLine } from '../wrong-command-line';
import { withInputs } from './inputs';

interface CasesOptions {
  readonly cases: string;
  readonly set: ReadonlyMap<string, string>;
  readonly out?: string;
}

/** More bad rows than this are counted and not told one by one; each has its problems in its own row. */
const mostTold = 20;

/**
 * Runs a sheet for each row of a CSV and writes a row of results for each, as they come. The exit code: 0 when every case
 * is well, 1 when one is not or a file cannot be read or written.
 */
export async function runCases(names: readonly string[], options: CasesOptions, console: Console): Promise<number> {
  if (names.length !== 1 || (names[0] === '-' && options.cases === '-')) {
    throw new WrongCommandLine('--cases runs one sheet over one CSV, and only one of them can be standard input.');
  }
  const complain = (problem: string) => {
    console.err(`kilofoot: ${problem}\n`);
    return 1;
  };
  const [source] = withInputs([await readSource(names[0], console)], options.set);
  if ('problem' in source) {
    return complain(source.problem);
  }
  const tree = new FolderTree(source.name, console);
  tree.tableFiles(folderOf(tree.path));
  const open = async (header: readonly string[]): Promise<SheetCases> => {
    let cases: ReturnType<typeof SheetCases.open>;
    do {
      await tree.readTables();
      cases = SheetCases.open(source.bytes, header, { files: tree, tableFiles: tree.tableFiles(folderOf(tree.path)) });
    } while (tree.wantsTables);
    if ('problem' in cases) {
      throw new WrongCommandLine(`${options.cases}: ${cases.problem}`);
    }
    return cases;
  };
  const file = options.out === undefined ? undefined : new WholeFile(options.out);
  try {
    const bad = await pump(options.cases, open, file?.write ?? console.write, console);
    const problem = (await file?.finish()) ?? (bad === undefined ? undefined : '');
    return problem ? complain(problem) : bad === 0 ? 0 : 1;
  } catch (error) {
    file?.abandon();
    if (error instanceof WrongCommandLine) {
      throw error;
    }
    const reason = error instanceof CsvError ? `cannot be read as CSV: ${error.message}.` : reasonFor(error);
    return complain(`${options.cases} ${reason}`);
  }
}

/** Reads, runs and writes; returns how many cases were not well. */
async function pump(
  name: string,
  open: (header: readonly string[]) => Promise<SheetCases>,
  write: (text: string) => Promise<boolean>,
  console: Console,
): Promise<number> {
  const source =
    name === '-' ? Readable.from([Buffer.from(await console.readStandardInput())]) : createReadStream(name);
  const rows = parse({ bom: true, relax_column_count: true, skip_empty_lines: true });
  source.on('error', (error: Error) => rows.destroy(error)).pipe(rows);
  let cases: SheetCases | undefined;
  let batch: string[][] = [];
  let done = 0;
  let bad = 0;
  const flush = async () => {
    const outcomes = cases?.run(batch) ?? [];
    for (const { problems } of outcomes) {
      done++;
      if (problems.length > 0 && ++bad <= mostTold) {
        console.err(`kilofoot: row ${done}: ${problems.join(' ')}\n`);
      }
    }
    batch = [];
    return outcomes.length === 0 || write(outcomes.map(caseLine).join(''));
  };
  for await (const row of rows) {
    if (!cases) {
      cases = await open(row as string[]);
      await write(caseHeading(cases));
      continue;
    }
    batch.push(row as string[]);
    if (batch.length === casesAtOnce && !(await flush())) {
      return bad;
    }
  }
  if (!cases) {
    throw new WrongCommandLine(`${name} is empty: its first line names inputs of the sheet.`);
  }
  await flush();
  if (bad > mostTold) {
    console.err(`kilofoot: ${bad - mostTold} more rows have problems; each tells them in its last column.\n`);
  }
  return bad;
}
