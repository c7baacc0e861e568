import { createColors } from 'picocolors';
import { type SheetEvaluation, writeResults } from '../../core';
import type { Console } from '../console';
import { readSource, writeWhole } from '../files';
import { FolderTree } from '../folder-tree';
import { jsonProblem, jsonReport } from '../json-report';
import type { TextStyle } from '../sheet-text';
import { evaluateIn } from './evaluate-in';
import { withInputs } from './inputs';

export type Format = 'text' | 'json';

export interface EvaluateOptions {
  readonly format: Format;
  readonly out?: string;
  readonly set?: ReadonlyMap<string, string>;
  /** Writes each sheet's results into its file, behind the cells. */
  readonly write?: boolean;
}

/**
 * Evaluates each file and gives out what it came to. The exit code: 0 when all is well, 1 when a check does not pass,
 * there is an error, or a file cannot be read or written. Files that can be read are evaluated all the same.
 */
export async function evaluateFiles(
  names: readonly string[],
  { format, out, set = new Map(), write = false }: EvaluateOptions,
  console: Console,
  textOf: (name: string, evaluation: SheetEvaluation, style: TextStyle) => string,
): Promise<number> {
  const sources = withInputs(await Promise.all(names.map((name) => readSource(name, console))), set);
  const style = { colours: createColors(console.colour && out === undefined), width: console.width };
  const parts: string[] = [];
  const told = new Set<string>();
  let wellSoFar = true;
  for (const source of sources) {
    if ('problem' in source) {
      wellSoFar = false;
      if (format === 'json') {
        parts.push(`${JSON.stringify(jsonProblem(source.name, source.problem))}\n`);
      } else {
        console.err(`kilofoot: ${source.problem}\n`);
      }
      continue;
    }
    const tree = new FolderTree(source.name, console);
    const evaluation = await evaluateIn(tree, source.bytes);
    for (const problem of tree.problems.filter((found) => !told.has(found))) {
      told.add(problem);
      console.err(`kilofoot: ${problem}\n`);
    }
    wellSoFar &&= evaluation.ok && tree.problems.length === 0;
    const unwritten = write ? await writeInto(source, evaluation) : undefined;
    if (unwritten) {
      wellSoFar = false;
      console.err(`kilofoot: ${unwritten}\n`);
    }
    parts.push(
      format === 'json'
        ? `${JSON.stringify(jsonReport(source.name, evaluation))}\n`
        : textOf(source.name, evaluation, style),
    );
  }
  const text = parts.join(format === 'json' ? '' : '\n');
  const problem = out === undefined ? console.out(text) : await writeWhole(out, text);
  if (problem) {
    console.err(`kilofoot: ${problem}\n`);
    return 1;
  }
  return wellSoFar ? 0 : 1;
}

/** Writes results into the sheet's file, whole or not at all; returns what is wrong. */
async function writeInto(
  { name, bytes }: { readonly name: string; readonly bytes: Uint8Array },
  evaluation: SheetEvaluation,
): Promise<string | undefined> {
  const written = writeResults(evaluation);
  if (!written) {
    const newer = evaluation.diagnostics.find(({ code }) => code === 'newer-format');
    return `${name}: ${newer?.message ?? 'nothing is written to a file that cannot be read as a sheet.'}`;
  }
  return Buffer.compare(bytes, written) === 0 ? undefined : writeWhole(name, written);
}
