import { Node, type Program, type StatementResult, type SyntaxTree } from '../language';
import type { Diagnostic, Severity } from '../text';
import { type AllowedFinding, allowancesIn } from './allowances';
import { LintPass } from './lint-pass';
import { rules } from './rule-list';
import { sheetView } from './sheet-view';

export interface LintOptions {
  /** Replaces the severity of a lint's findings, or switches the lint off; by id. */
  readonly severities?: Readonly<Record<string, Severity | 'off'>>;
  /** The prose between the cells: names may be used there, and work may be recorded. */
  readonly prose?: readonly string[];
}

export interface Linted {
  /** By cell; a cell without findings has no entry. */
  readonly findings: ReadonlyMap<string, readonly Diagnostic[]>;
  /** What `allow` statements silenced, in order of place. */
  readonly allowed: readonly AllowedFinding[];
}

/**
 * What every lint finds. What a statement gave is kept with its result, so that only statements that ran again, or that
 * asked something whose answer changed, are looked at again.
 */
export function lint(program: Program, cells: Iterable<string>, options: LintOptions = {}): Linted {
  const ids = [...cells];
  const pass = new LintPass(program, sheetView(program, ids, options.prose ?? []));
  const byCell = new Map<string, Diagnostic[]>();
  const allowed: AllowedFinding[] = [];
  const asked = new Set<string>();
  for (const cell of ids) {
    const tree = program.tree(cell);
    const found = tree ? findingsIn(pass, cell, tree, allowed) : [];
    const findings = found.filter((finding) => isFirst(finding, asked)).flatMap((finding) => weighed(finding, options));
    if (findings.length > 0) {
      byCell.set(cell, findings);
    }
  }
  return { findings: byCell, allowed };
}

const askedOnce: ReadonlySet<string> = new Set(rules.filter((rule) => rule.once).map((rule) => rule.id));

/** False for a question about the whole sheet that was put before. */
function isFirst({ code, severity }: Diagnostic, asked: Set<string>): boolean {
  if (severity !== 'hint' || !askedOnce.has(code)) {
    return true;
  }
  const repeated = asked.has(code);
  asked.add(code);
  return !repeated;
}

function weighed(finding: Diagnostic, { severities }: LintOptions): Diagnostic[] {
  const severity = severities?.[finding.code];
  if (severity === 'off') {
    return [];
  }
  return [severity ? { ...finding, severity } : finding];
}

function findingsIn(pass: LintPass, cell: string, tree: SyntaxTree, allowed: AllowedFinding[]): Diagnostic[] {
  const allowances = allowancesIn(cell, tree);
  const findings: Diagnostic[] = [];
  const silenced = new Map<number, Set<string>>();
  for (const result of pass.results(cell)) {
    const node = tree.statements[result.index];
    if (node === undefined || tree.kinds[node] === Node.Allow) {
      continue;
    }
    for (const finding of pass.findingsOf(cell, tree, result)) {
      const by = allowances.filter(({ target, lint }) => target === result.index && lint === finding.code);
      if (by.length === 0) {
        findings.push(finding);
      }
      for (const allowance of by) {
        silenced.set(allowance.index, (silenced.get(allowance.index) ?? new Set()).add(finding.code));
        allowed.push({ allowance, finding });
      }
    }
  }
  for (const { index } of allowances) {
    findings.push(...pass.findingsOfAllowance(cell, tree, allowResult(cell, tree, index), silenced.get(index)));
  }
  return findings.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
}

/** An `allow` computes nothing, so the program may have no result for it. */
const allowResult = (cell: string, tree: SyntaxTree, index: number): StatementResult => ({
  cell,
  index,
  span: { start: tree.starts[tree.statements[index]], end: tree.ends[tree.statements[index]] },
  kind: 'other',
  origin: 'computed',
  needs: [],
  trace: () => ({ steps: [] }),
  calls: () => [],
});
