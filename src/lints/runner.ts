import { type CallRecord, Node, nodesBelow, type Program, type StatementResult, type SyntaxTree } from '../language';
import type { Diagnostic, Severity } from '../text';
import { allowancesIn } from './allowances';
import type { Lint, LintedStatement } from './contract';
import { rules } from './rule-list';

export interface LintOptions {
  /** Replaces the severity of a lint's findings, or switches the lint off; by id. */
  readonly severities?: Readonly<Record<string, Severity | 'off'>>;
}

/**
 * The findings of every lint, by cell; a cell without findings has no entry. What a statement gave is kept with its
 * result, so that only statements that ran again are looked at again.
 */
export function lint(program: Program, cells: Iterable<string>, options: LintOptions = {}): Map<string, Diagnostic[]> {
  const byCell = new Map<string, Diagnostic[]>();
  for (const cell of cells) {
    const tree = program.tree(cell);
    const findings = tree ? findingsIn(program, cell, tree).flatMap((finding) => weighed(finding, options)) : [];
    if (findings.length > 0) {
      byCell.set(cell, findings);
    }
  }
  return byCell;
}

function weighed(finding: Diagnostic, { severities }: LintOptions): Diagnostic[] {
  const severity = severities?.[finding.code];
  if (severity === 'off') {
    return [];
  }
  return [severity ? { ...finding, severity } : finding];
}

function findingsIn(program: Program, cell: string, tree: SyntaxTree): Diagnostic[] {
  const results = new Map(program.results(cell).map((result) => [result.index, result]));
  const allowances = allowancesIn(cell, tree);
  const findings: Diagnostic[] = [];
  const silenced = new Map<number, Set<string>>();
  for (const [index, result] of results) {
    const node = tree.statements[index];
    if (node === undefined || tree.kinds[node] === Node.Allow) {
      continue;
    }
    const allowed = allowances.filter((allowance) => allowance.target === index);
    for (const finding of kept(program, cell, tree, result)) {
      const by = allowed.filter((allowance) => allowance.lint === finding.code);
      if (by.length === 0) {
        findings.push(finding);
      }
      for (const allowance of by) {
        silenced.set(allowance.index, (silenced.get(allowance.index) ?? new Set()).add(finding.code));
      }
    }
  }
  for (const { index } of allowances) {
    const result = results.get(index) ?? allowResult(cell, tree, index);
    const statement = statementOf(program, cell, tree, result, silenced.get(index) ?? new Set());
    findings.push(...findingsOf(statement));
  }
  return findings.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
}

/** An `allow` computes nothing, so the program may have no result for it. */
const allowResult = (cell: string, tree: SyntaxTree, index: number): StatementResult => ({
  cell,
  index,
  span: { start: tree.starts[tree.statements[index]], end: tree.ends[tree.statements[index]] },
  kind: 'other',
  trace: () => ({ steps: [] }),
  calls: () => [],
});

interface Kept {
  readonly findings: readonly Diagnostic[];
  /** The cells that the rules looked into, as they were then. */
  readonly consulted: ReadonlyMap<string, SyntaxTree | undefined>;
}

const keptFor = new WeakMap<StatementResult, Kept>();

function kept(program: Program, cell: string, tree: SyntaxTree, result: StatementResult): readonly Diagnostic[] {
  const known = keptFor.get(result);
  if (known && [...known.consulted].every(([consulted, then]) => program.tree(consulted) === then)) {
    return known.findings;
  }
  const consulted = new Map<string, SyntaxTree | undefined>([[cell, tree]]);
  const statement = statementOf(watching(program, consulted), cell, tree, result);
  const findings = findingsOf(statement);
  keptFor.set(result, { findings, consulted });
  return findings;
}

function statementOf(
  program: Program,
  cell: string,
  tree: SyntaxTree,
  result: StatementResult,
  silenced?: ReadonlySet<string>,
): LintedStatement {
  const node = tree.statements[result.index];
  let calls: readonly CallRecord[] | undefined;
  return {
    program,
    cell,
    tree,
    node,
    result,
    // Only when a rule asks: calls may have to be run again to leave their facts.
    get calls() {
      calls ??= holdsCall(tree, node) ? result.calls() : [];
      return calls;
    },
    ...(silenced && { silenced }),
  };
}

/** Most statements of a long sheet call nothing, and are not asked for their calls. */
function holdsCall(tree: SyntaxTree, node: number): boolean {
  for (const below of nodesBelow(tree, node)) {
    if (tree.kinds[below] === Node.Call || tree.kinds[below] === Node.BlockCall) {
      return true;
    }
  }
  return false;
}

function findingsOf(statement: LintedStatement): Diagnostic[] {
  return rules.flatMap((rule) => findingsOfRule(rule, statement));
}

function findingsOfRule(rule: Lint, statement: LintedStatement): Diagnostic[] {
  const findings: Diagnostic[] = [];
  rule.check(statement, ({ span, message, severity, fixes, related }) => {
    findings.push({
      code: rule.id,
      severity: severity ?? rule.severity,
      span,
      message,
      ...(fixes && fixes.length > 0 && { fixes }),
      ...(related && { related }),
    });
  });
  return findings;
}

/** The same program, noting which cells' trees are asked for. */
const watching = (program: Program, consulted: Map<string, SyntaxTree | undefined>): Program => ({
  library: program.library,
  update: (cells) => program.update(cells),
  tree(cell) {
    const tree = program.tree(cell);
    consulted.set(cell, tree);
    return tree;
  },
  results: (cell) => program.results(cell),
  diagnostics: (cell) => program.diagnostics(cell),
  names: () => program.names(),
  typeAt: (cell, node) => program.typeAt(cell, node),
  valueAt: (cell, node) => program.valueAt(cell, node),
});
