import { functionPage } from '../display';
import { hoverAt } from '../editor';
import { mathematics, measurement, nearest } from '../language';
import { createLibrary } from '../library';
import { editionOf, lintPage, rules } from '../lints';
import { listTables, type TableInfo } from '../tables';
import { problemCalled, problemCodes } from '../text';
import { parseUnit } from '../units';
import { memoryPage } from './memory-page';
import { problemPage } from './problem-page';
import { SheetSession } from './sheet-session';

/** A page about a name in Markdown, or why there is none and which names come near. */
export type Explanation = { readonly page: string } | { readonly problem: string; readonly nearest: readonly string[] };

/** Asks for the list of all values that are from memory. */
const memoryWord = 'memory';

/** Explains a function, a lint, a problem by its code, a table (`310.16`, `ampacity`), a unit, a conductor (`12 AWG Cu`), or lists what is from `memory`. */
export function explain(given: string): Explanation {
  const name = given.trim();
  if (name === memoryWord) {
    return { page: memoryPage(functions()) };
  }
  const lint = rules.find((rule) => rule.id === name);
  if (lint) {
    return { page: lintPage(lint, editionInForce()) };
  }
  const problem = problemPage(name);
  if (problem) {
    return { page: problem };
  }
  const definition = functions().find((candidate) => candidate.name === name);
  if (definition) {
    return { page: functionPage(definition) };
  }
  const tables = listTables().filter((table) => isCalled(table, name));
  if (tables.length > 0) {
    return { page: tables.map(tablePage).join('\n') };
  }
  if (name !== '' && !('problem' in parseUnit(name))) {
    return { page: `# ${name}\n\n${hovered(`x = 1 ${name}`, 6) ?? 'A unit.'}\n` };
  }
  return explainConductor(name);
}

/** What has a page of its own by a name that nobody would type from memory, with one line on each. */
export const explainable = (): { readonly name: string; readonly summary: string }[] => [
  ...functions().map(({ name, summary }) => ({ name, summary })),
  ...rules.map(({ id, summary }) => ({ name: id, summary })),
  ...problemCodes.map((code) => ({ name: code, summary: problemCalled(code)!.means })),
];

function explainConductor(name: string): Explanation {
  const session = new SheetSession();
  session.update([{ id: 'conductor', kind: 'calculation', text: `x = ${name}` }]);
  const [result] = session.results('conductor');
  if (result?.value?.kind === 'object') {
    return { page: `# ${name}\n\n${hovered(`x = ${name}`, 4) ?? ''}\n` };
  }
  const [problem] = session.diagnostics('conductor');
  if (problem && /^#?\d/.test(name)) {
    return { problem: problem.message, nearest: [] };
  }
  return {
    problem: `Nothing is called \`${name}\`. A function, lint, problem, table, unit or conductor (such as 12 AWG Cu) is expected.`,
    nearest: nearestOf(name, [
      ...functions().map((definition) => definition.name),
      ...rules.map((rule) => rule.id),
      ...problemCodes,
      memoryWord,
      ...listTables().map((table) => table.subject),
    ]),
  };
}

/** Up to three names that may have been meant, the likeliest first. */
function nearestOf(name: string, names: readonly string[]): string[] {
  const found: string[] = [];
  for (let next = nearest(name, names); next !== undefined && found.length < 3; ) {
    found.push(next);
    next = nearest(
      name,
      names.filter((candidate) => !found.includes(candidate)),
    );
  }
  return found;
}

const functions = () => {
  const library = createLibrary();
  const builtIn = [...mathematics, ...measurement];
  return 'problem' in library ? builtIn : [...library.functions.values(), ...builtIn];
};

const editionInForce = (): string => {
  const library = createLibrary();
  return 'problem' in library ? '' : editionOf(library.settings);
};

/** What the editor shows when the pointer rests at an offset of a one-line sheet. */
function hovered(text: string, offset: number): string | undefined {
  const session = new SheetSession();
  session.update([{ id: 'cell', kind: 'calculation', text }]);
  return hoverAt(session, 'cell', offset)?.markdown;
}

function isCalled(table: TableInfo, name: string): boolean {
  const wanted = name.toLowerCase();
  return [table.subject, table.table, table.table.replace(/^Table /, ''), table.title].some(
    (called) => called.toLowerCase() === wanted,
  );
}

function tablePage(table: TableInfo): string {
  const row = (cells: readonly (string | null)[]) => `| ${cells.map((cell) => cell ?? '').join(' | ')} |`;
  return [
    `# ${table.title}`,
    `${table.standard}, ${table.table}. Editions: ${table.editions.join(', ')}.`,
    ...(table.conditions.length > 0 ? [table.conditions.map((condition) => `- ${condition}`).join('\n')] : []),
    [row(table.columns), row(table.columns.map(() => '---')), ...table.cells.map(row)].join('\n'),
    `Basis: ${table.basis}. ${table.provenance}`,
    ...(table.file === undefined ? [] : [`From the workspace's file ${table.file}.`]),
  ]
    .join('\n\n')
    .concat('\n');
}
