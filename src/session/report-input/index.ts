import { blocksOf, seenFrom } from '../../display';
import { shownBlocks } from '../../editor';
import type { StatementResult } from '../../language';
import { FilePositions, readFrontMatter } from '../../notebook';
import type { ReportCheck, ReportInput } from '../../report';
import { defaultEdition } from '../../tables';
import type { SheetEvaluation } from '../evaluate-sheet';
import { evidenceOf } from '../evidence';
import type { FolderFiles } from '../folder-files';
import { circuitsOf, openQuestions } from './circuits';
import { missingValues } from './missing';
import { picturesOf } from './pictures';
import { givenValues, readingsOf } from './readings';
import { pricesOf, runsOf } from './runs';
import { reportValue } from './value';

/**
 * All that a report is made of, from an evaluated sheet and the pictures of its folder. `sheetFolder` is the way from the
 * report's folder to the sheet's, for links to other sheets; null where there is none.
 */
export function reportInput(
  evaluation: SheetEvaluation,
  files?: FolderFiles,
  sheetFolder: string | null = '',
): ReportInput {
  const { file, program, cells, cautions, diagnostics, frontMatter } = evaluation;
  const positions = new FilePositions(file);
  const lineAt = (cell: string, offset: number) => positions.at(positions.offset(Number(cell), offset)).line;
  const calculations = cells.flatMap(({ cell }, index) => (cell.kind === 'calculation' ? [String(index)] : []));
  const evidence = evidenceOf(cells.flatMap(({ blocks }) => blocks));
  const [first] = cells;
  const circuits = circuitsOf(program, calculations);
  return {
    frontMatter,
    details: first?.cell.kind === 'prose' ? readFrontMatter(first.cell.text).details : [],
    edition: defaultEdition,
    cells: cells.map(({ cell, blocks, results, prose }) =>
      cell.kind === 'prose'
        ? { kind: 'prose', text: prose?.markdown ?? cell.text }
        : {
            kind: 'calculation',
            blocks: seenFrom(sheetFolder, results.some(isLong) ? results.flatMap(allRows) : blocks),
          },
    ),
    readings: readingsOf(program, calculations, lineAt),
    given: givenValues(program, calculations, lineAt),
    values: [...evaluation.values].flatMap(([name, value]) => reportValue(name, value)),
    circuits,
    runs: runsOf(program, calculations, circuits),
    prices: pricesOf(evaluation.values),
    checks: checksOf(evaluation, lineAt),
    findings: diagnostics.map(({ code, severity, message, line }) => ({ code, severity, message, line })),
    allowed: evaluation.allowed.map(({ lint, reason, finding: { message, line } }) => ({
      lint,
      message,
      reason,
      line,
    })),
    missing: missingValues(evaluation, lineAt),
    open: openQuestions(circuits),
    ...evidence,
    cautions: cautions.map(({ text }) => text),
    pictures: picturesOf(evaluation, files),
  };
}

/** On paper every row of a schedule is shown. */
const allRows = (result: StatementResult) => shownBlocks(result, { rows: Number.POSITIVE_INFINITY });

const isLong = ({ value }: StatementResult): boolean => value?.kind === 'list' && value.schedule !== undefined;

/** The line in the file of an offset in a cell. */
export type LineAt = (cell: string, offset: number) => number;

function checksOf({ cells }: SheetEvaluation, lineAt: LineAt): ReportCheck[] {
  return cells
    .flatMap(({ results }) => results)
    .filter(({ kind }) => kind === 'check')
    .map((result) => {
      const block = blocksOf(result).find((found) => found.kind === 'verdict');
      const shared = { line: lineAt(result.cell, result.span.start), label: block?.label ?? result.label ?? '' };
      return block
        ? {
            ...shared,
            verdict: block.verdict,
            comparison: { latex: block.latex, text: block.text },
            ...(block.margin !== undefined && { margin: block.margin }),
            ...(block.advice !== undefined && { advice: block.advice }),
          }
        : { ...shared, verdict: result.verdict ?? ('cannot tell' as const) };
    });
}
