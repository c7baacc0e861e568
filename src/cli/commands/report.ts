import { dirname, isAbsolute, relative, resolve, sep } from 'node:path';
import { buildReport, type ReportFormat, reportFormats, reportInput, writeReport } from '../../core';
import type { Console } from '../console';
import { readSource, writeWhole } from '../files';
import { FolderTree } from '../folder-tree';
import { readFont } from '../fonts';
import { progressLine } from '../progress-line';
import { WrongCommandLine } from '../wrong-command-line';
import { evaluateIn } from './evaluate-in';
import { withInputs } from './inputs';

export const isReportFormat = (format: string): format is ReportFormat => Object.hasOwn(reportFormats, format);

export interface ExportOptions {
  readonly format: ReportFormat;
  readonly out?: string;
  readonly set?: ReadonlyMap<string, string>;
  /** Tells how far it is even where nobody seems to look. */
  readonly progress?: boolean;
}

/** Writes one sheet's report. The exit code: 0 when all is well with the sheet, 1 when not or when it cannot be used. */
export async function exportReport(
  names: readonly string[],
  { format, out, set = new Map(), progress: wanted = false }: ExportOptions,
  console: Console,
): Promise<number> {
  if (names.length > 1) {
    throw new WrongCommandLine(`--format ${format} makes one report of one sheet; ${names.length} sheets are named.`);
  }
  if (out === undefined && reportFormats[format].binary) {
    throw new WrongCommandLine(
      `--format ${format} is not for a terminal; name a file with -o, such as -o report.${format}.`,
    );
  }
  const [source] = withInputs([await readSource(names[0], console)], set);
  if ('problem' in source) {
    console.err(`kilofoot: ${source.problem}\n`);
    return 1;
  }
  const tree = new FolderTree(source.name, console);
  const evaluation = await evaluateIn(tree, source.bytes);
  for (const problem of tree.problems) {
    console.err(`kilofoot: ${problem}\n`);
  }
  const { progress, finish } = progressLine(console);
  const bytes = await writeReport(buildReport(reportInput(evaluation, tree, wayFrom(out, source.name))), format, {
    font: readFont,
    ...((wanted || (console.errIsTerminal && out !== undefined)) && { progress }),
  }).finally(finish);
  if (out === undefined) {
    console.out(new TextDecoder().decode(bytes));
  } else {
    const problem = await writeWhole(out, bytes);
    if (problem) {
      console.err(`kilofoot: ${problem}\n`);
      return 1;
    }
  }
  return evaluation.ok && tree.problems.length === 0 ? 0 : 1;
}

/** The way from the report's folder to the sheet's, as links have it; null from one disk of Windows to another. */
function wayFrom(out: string | undefined, sheet: string): string | null {
  const way = out === undefined ? '' : relative(dirname(resolve(out)), dirname(resolve(sheet)));
  return isAbsolute(way) ? null : way.replaceAll(sep, '/');
}

/** An output that would take a sheet's place is a slip on the command line. */
export function refuseToReplace(names: readonly string[], out: string | undefined): void {
  const replaced = out === undefined ? undefined : names.find((name) => name !== '-' && resolve(name) === resolve(out));
  if (replaced !== undefined) {
    throw new WrongCommandLine(`-o ${out} would replace ${replaced} itself; name another file.`);
  }
}
