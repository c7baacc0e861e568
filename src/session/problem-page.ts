import { messageMarkdown } from '../display';
import { applyEdits, type Diagnostic, type Fix, type ProblemExample, problemCalled, withCarets } from '../text';
import { evaluateSheet } from './evaluate-sheet';
import type { FolderFiles } from './folder-files';
import { SheetSession } from './sheet-session';

/** A text, and what was found in it. */
interface Found {
  readonly text: string;
  readonly found: readonly Diagnostic[];
}

type Situation = Extract<ProblemExample, { situation: string }>;

/** A problem's reference page in Markdown; its example is evaluated here. Undefined for a code that is not declared. */
export function problemPage(code: string): string | undefined {
  const problem = problemCalled(code);
  if (!problem) {
    return undefined;
  }
  const { means, why, remedy, example } = problem;
  const { severity, parts } = isSituation(example) ? told(example) : shown(code, example);
  return [`# ${code}`, means, `**Severity:** ${severity}`, `**Why:** ${why}`, `**What to do:** ${remedy}`, ...parts]
    .join('\n\n')
    .concat('\n');
}

const isSituation = (example: ProblemExample): example is Situation =>
  typeof example !== 'string' && 'situation' in example;

/** All that is found in an example. */
export function problemsIn(example: Exclude<ProblemExample, Situation>): Found {
  if (typeof example === 'string') {
    const session = new SheetSession();
    session.update([{ id: 'cell', kind: 'calculation', text: example }]);
    return { text: example, found: session.diagnostics('cell') };
  }
  const { sheet, beside } = example;
  const { text, diagnostics } = evaluateSheet(sheet, { ...(beside && { files: folder(beside) }) });
  return { text, found: diagnostics };
}

/** A folder that holds nothing but the sheet and these files. */
const folder = (texts: Readonly<Record<string, string>>): FolderFiles => {
  const files = new Map(Object.entries(texts).map(([path, text]) => [path, new TextEncoder().encode(text)]));
  return {
    path: 'sheet.kft.md',
    read: (path) => files.get(path) ?? { problem: 'is not there' },
    tableFiles: () => [],
  };
};

interface Shown {
  readonly severity: string;
  /** Paragraphs of Markdown. */
  readonly parts: readonly string[];
}

function shown(code: string, example: Exclude<ProblemExample, Situation>): Shown {
  const { text, found } = problemsIn(example);
  const own = found.filter((problem) => problem.code === code);
  const [{ severity, message, fixes = [] }] = own;
  const beside = typeof example === 'string' ? [] : Object.entries(example.beside ?? {});
  return {
    severity,
    parts: [
      fenced(withCarets(text.trimEnd(), own, () => '')),
      ...beside.map(([name, content]) => `Beside it, \`${name}\`:\n\n${fenced(content)}`),
      `> ${messageMarkdown(message)}`,
      ...(fixes.length > 0 ? [`Fix:\n\n${fixes.map((fix) => mended(text, fix)).join('\n')}`] : []),
    ],
  };
}

const told = ({ situation, says }: Situation): Shown => ({
  severity: 'error',
  parts: [`For example ${situation}:`, `> ${messageMarkdown(says)}`],
});

/** What a fix is called, and what it makes of the lines. */
function mended(text: string, fix: Fix): string {
  const lines = changedLines(text, fix).trim();
  return lines.includes('\n') || lines.includes('`')
    ? `- *${fix.title}*:\n\n${fenced(lines).replace(/^/gm, '  ')}`
    : `- *${fix.title}*: \`${lines}\``;
}

/** The lines that a fix touches, as it makes them. */
function changedLines(text: string, { edits }: Fix): string {
  const before = text.split('\n');
  const after = applyEdits(text, edits).split('\n');
  const same = (a: readonly string[], b: readonly string[]) => {
    const first = a.findIndex((line, i) => line !== b[i]);
    return first < 0 ? Math.min(a.length, b.length) : first;
  };
  const head = same(before, after);
  const tail = Math.min(same([...before].reverse(), [...after].reverse()), after.length - head);
  return after.slice(head, Math.max(head + 1, after.length - tail)).join('\n');
}

/** In a fence that no fence inside ends. */
const fenced = (text: string): string => {
  const fence = text.includes('```') ? '````' : '```';
  return `${fence}text\n${text.trimEnd()}\n${fence}`;
};
