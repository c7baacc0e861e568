import { Node, type StatementResult, type SyntaxTree } from '../language';
import type { Diagnostic } from '../text';
import { type AllowedFinding, allowancesIn } from './allowances';
import type { LintPass, Looked } from './lint-pass';
import type { Asked, QuestionKey } from './sheet-view';

/** What the lints say of a cell, and what that hangs on beside the cell itself and its results. */
export interface LookedAtCell {
  /** In order of place, without those that an `allow` silences. */
  readonly findings: readonly Diagnostic[];
  readonly allowed: readonly AllowedFinding[];
  /** The cells whose text the lints looked into, this one among them. */
  readonly consulted: ReadonlySet<string>;
  readonly asked: readonly Asked[];
}

/** Looks at each statement of a cell, and then at what became of its allowances. */
export function lookAtCell(pass: LintPass, cell: string, tree: SyntaxTree): LookedAtCell {
  const allowances = allowancesIn(cell, tree);
  const findings: Diagnostic[] = [];
  const allowed: AllowedFinding[] = [];
  const consulted = new Set([cell]);
  const asked = new Map<QuestionKey, Asked>();
  const silenced = new Map<number, Set<string>>();
  const taking = (looked: Looked): readonly Diagnostic[] => {
    for (const id of looked.consulted.keys()) {
      consulted.add(id);
    }
    for (const question of looked.asked.values()) {
      asked.set(question.key, question);
    }
    return looked.findings;
  };
  for (const result of pass.program.results(cell)) {
    const node = tree.statements[result.index];
    if (node === undefined || tree.kinds[node] === Node.Allow) {
      continue;
    }
    for (const finding of taking(pass.at(cell, tree, result))) {
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
    const looked = pass.atAllowance(cell, tree, allowResult(cell, tree, index), silenced.get(index));
    findings.push(...taking(looked));
  }
  findings.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  return { findings, allowed, consulted, asked: [...asked.values()] };
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
