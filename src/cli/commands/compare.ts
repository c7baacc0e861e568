import { createColors } from 'picocolors';
import { compareReports, isSame, type ReportInput, reportInput } from '../../core';
import { comparisonText } from '../comparison-text';
import type { Console } from '../console';
import { readSource } from '../files';
import { FolderTree } from '../folder-tree';
import { evaluateIn } from './evaluate-in';

/**
 * Tells what differs between two sheets in inputs, results, checks, findings and quantities. The exit code: 0 when both
 * could be read, whatever differs; 1 when not.
 */
export async function compareSheets(
  before: string,
  after: string,
  format: 'text' | 'json',
  console: Console,
): Promise<number> {
  const inputs: ReportInput[] = [];
  for (const name of [before, after]) {
    const source = await readSource(name, console);
    if ('problem' in source) {
      console.err(`kilofoot: ${source.problem}\n`);
      continue;
    }
    const tree = new FolderTree(name, console);
    inputs.push(reportInput(await evaluateIn(tree, source.bytes)));
    for (const problem of tree.problems) {
      console.err(`kilofoot: ${problem}\n`);
    }
  }
  if (inputs.length < 2) {
    return 1;
  }
  const comparison = compareReports(inputs[0], inputs[1]);
  console.out(
    format === 'json'
      ? `${JSON.stringify({ before, after, same: isSame(comparison), ...comparison })}\n`
      : comparisonText({ before, after }, comparison, { colours: createColors(console.colour), width: console.width }),
  );
  return 0;
}
