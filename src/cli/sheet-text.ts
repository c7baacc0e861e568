import type { Colors } from 'picocolors/types';
import { evidenceOf, headingsOf, liveParagraphs, type SheetEvaluation } from '../core';
import { type Painter, toText } from '../display';
import { findingText } from './finding-text';
import { wrap, wrapLines } from './wrap';

export interface TextStyle {
  readonly colours: Colors;
  readonly width: number;
}

/** A sheet with its derivations, checks, findings, and what they rest on, for reading on a terminal. */
export function sheetText(name: string, evaluation: SheetEvaluation, style: TextStyle): string {
  const { colours } = style;
  const title = evaluation.frontMatter.title;
  const blocks = evaluation.cells.flatMap((cell) => cell.blocks);
  const { sources, assumptions } = evidenceOf(blocks);
  const sourceLines = sources.map(
    (used) => used.source + (used.fromMemory ? ' (from memory, not from a publication)' : ''),
  );
  const parts = [
    title ? `${colours.bold(title)}\n${colours.dim(shownName(name))}` : colours.bold(shownName(name)),
    ...derivations(evaluation, style),
    checksText(evaluation, style),
    findingsText(name, evaluation, style),
    listText('Assumptions', assumptions, style),
    listText('Sources', sourceLines, style),
    listText(
      'Cautions',
      evaluation.cautionsAcknowledged ? [] : evaluation.cautions.map((caution) => caution.text),
      style,
    ),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

/** Checks and problems alone. */
export function checkText(name: string, evaluation: SheetEvaluation, style: TextStyle): string {
  const parts = [
    style.colours.bold(shownName(name)),
    checksText(evaluation, style),
    findingsText(name, evaluation, style),
    summary(evaluation),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

const shownName = (name: string): string => (name === '-' ? 'standard input' : name);

/** Each cell's steps, under the headings of the prose between them. */
function derivations({ cells, frontMatter }: SheetEvaluation, { colours, width }: TextStyle): string[] {
  return cells.flatMap(({ cell, blocks, prose }) => {
    if (cell.kind === 'prose') {
      const headings = headingsOf(cell.text)
        .filter((heading) => heading.text !== frontMatter.title)
        .map((heading) => colours.bold(heading.text));
      return [...headings, ...liveParagraphs(cell.text, prose?.live ?? []).map((text) => wrap(text, width))];
    }
    return blocks.length > 0 ? [wrapLines(toText(blocks, { paint: painter(colours) }), width)] : [];
  });
}

const painter = (colours: Colors): Painter => ({
  yes: colours.green,
  no: colours.red,
  doubt: colours.yellow,
  faint: colours.dim,
});

const signs = { yes: '✔ yes', no: '✘ no', 'cannot tell': '? cannot tell' } as const;

function checksText({ checks }: SheetEvaluation, { colours }: TextStyle): string {
  const paint = { yes: colours.green, no: colours.red, 'cannot tell': colours.yellow };
  const lines = checks.map(
    ({ text, verdict, line }) =>
      `  ${paint[verdict](signs[verdict].padEnd(13))}  ${text} ${colours.dim(`(line ${line})`)}`,
  );
  return lines.length > 0 ? [colours.bold('Checks'), ...lines].join('\n') : '';
}

function findingsText(name: string, evaluation: SheetEvaluation, style: TextStyle): string {
  const file = { name: shownName(name), lines: evaluation.text.split(/\r\n|\n|\r/) };
  const found = evaluation.diagnostics.map((diagnostic) => findingText(diagnostic, file, style));
  return found.length > 0 ? `${style.colours.bold('Findings')}\n${found.join('\n\n')}` : '';
}

function listText(title: string, items: readonly string[], { colours, width }: TextStyle): string {
  const lines = items.map((item) => wrap(item, width, '    ', '  • '));
  return items.length > 0 ? [colours.bold(title), ...lines].join('\n') : '';
}

function summary({ checks, diagnostics, ok }: SheetEvaluation): string {
  const passed = checks.filter((check) => check.verdict === 'yes').length;
  const errors = diagnostics.filter((diagnostic) => diagnostic.severity === 'error').length;
  const others = diagnostics.length - errors;
  const counts = [
    `${passed} of ${checks.length} checks passed`,
    counted(errors, 'error'),
    counted(others, 'other finding'),
  ];
  return `${ok ? 'All well' : 'Not well'}: ${counts.join(', ')}.`;
}

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
