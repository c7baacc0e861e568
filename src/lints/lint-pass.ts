import { type CallRecord, Node, type Program, type StatementResult, type SyntaxTree } from '../language';
import type { Diagnostic } from '../text';
import type { LintedStatement, Report } from './contract';
import { LookNotes } from './look-notes';
import { ruleById, rules } from './rule-list';
import type { Asked, QuestionKey, SheetView } from './sheet-view';
import { callNodes, holdsOneOf, type Kinds, kindsIn, kindsOf, RulesByKinds } from './statement-kinds';

/** What the lints said of a statement, and everything that it hangs on beside the statement's own result. */
export interface Looked {
  readonly findings: readonly Diagnostic[];
  /** The cells that the lints looked into, as they were then. */
  readonly consulted: ReadonlyMap<string, SyntaxTree | undefined>;
  readonly asked: ReadonlyMap<QuestionKey, Asked>;
}

const keptFor = new WeakMap<StatementResult, Looked>();
const rulesByKinds = new RulesByKinds(rules);
const holdsCall = holdsOneOf(callNodes);
const nothing: readonly Diagnostic[] = [];

/** What a look is at: a statement, or a row of a schedule. */
interface Subject {
  readonly cell: string;
  readonly tree: SyntaxTree;
  readonly node: number;
  readonly kinds: Kinds;
  readonly result: StatementResult;
  readonly calls: () => readonly CallRecord[];
  readonly silenced?: ReadonlySet<string>;
}

const lintIds: ReadonlySet<string> = new Set(ruleById.keys());

/** A row holds calls and nothing else that a lint looks for. */
const rowKinds = kindsOf([Node.Schedule]);

/** The parts of a statement's result that hold for its rows, too. */
const plain = ({ cell, index, kind, origin, needs, name, nameSpan, trace }: StatementResult) => ({
  cell,
  index,
  kind,
  origin,
  needs,
  name,
  nameSpan,
  trace,
});

/** One pass of all lints over a program that stands still. */
export class LintPass {
  /** The statement that was looked at last: each name that a long `use` takes has a result of its own. */
  private last: Pick<Subject, 'tree' | 'node' | 'kinds'> | undefined;

  constructor(
    readonly program: Program,
    readonly sheet: SheetView,
  ) {}

  /** What the lints say of a statement; what they said before where nothing that it hangs on has changed. */
  at(cell: string, tree: SyntaxTree, result: StatementResult): Looked {
    const known = keptFor.get(result);
    if (known && this.holds(known)) {
      return known;
    }
    const notes = new LookNotes(this, cell, tree);
    const whole = look(this.statement(cell, tree, result), notes);
    const findings = result.rows ? [...whole, ...lookAtRows(cell, result, notes)] : whole;
    const looked = { findings, consulted: notes.consulted, asked: notes.asked };
    keptFor.set(result, looked);
    return looked;
  }

  /** What the lints say of an `allow`, by the findings that it silenced. */
  atAllowance(
    cell: string,
    tree: SyntaxTree,
    result: StatementResult,
    silenced: ReadonlySet<string> = new Set(),
  ): Looked {
    const notes = new LookNotes(this, cell, tree);
    const findings = look({ ...this.statement(cell, tree, result), silenced }, notes);
    return { findings, consulted: notes.consulted, asked: notes.asked };
  }

  private holds({ consulted, asked }: Looked): boolean {
    for (const [cell, then] of consulted) {
      if (this.program.tree(cell) !== then) {
        return false;
      }
    }
    for (const { again, answer } of asked.values()) {
      if (again(this.sheet) !== answer) {
        return false;
      }
    }
    return true;
  }

  private statement(cell: string, tree: SyntaxTree, result: StatementResult): Subject {
    const node = tree.statements[result.index];
    if (this.last?.tree !== tree || this.last.node !== node) {
      this.last = { tree, node, kinds: kindsIn(tree, node) };
    }
    return { cell, tree, node, kinds: this.last.kinds, result, calls: () => result.calls() };
  }
}

/** Each row of a schedule is looked at by itself, as a call on a line of its own would be. */
function lookAtRows(cell: string, result: StatementResult, notes: LookNotes): Diagnostic[] {
  const findings: Diagnostic[] = [];
  const shared = plain(result);
  for (const { tree, node, span, calls, placed } of result.rows?.() ?? []) {
    const callsOf = () => calls;
    const own: StatementResult = { ...shared, span, calls: callsOf };
    for (const finding of look({ cell, tree, node, kinds: rowKinds, result: own, calls: callsOf }, notes)) {
      findings.push(placed(finding));
    }
  }
  return findings;
}

function look(subject: Subject, notes: LookNotes): readonly Diagnostic[] {
  const { cell, tree, node, kinds, result, silenced } = subject;
  const wanted = rulesByKinds.thatLookAt(kinds);
  if (wanted.length === 0) {
    return nothing;
  }
  let calls: readonly CallRecord[] | undefined;
  const statement: LintedStatement = {
    program: notes.program,
    cell,
    tree,
    node,
    result,
    sheet: notes.sheet,
    // Only when a lint asks: calls have to be run again to leave their facts.
    get calls() {
      calls ??= holdsCall(kinds) ? subject.calls() : [];
      return calls;
    },
    ...(silenced && { silenced, lintIds }),
  };
  let findings: Diagnostic[] | undefined;
  let [{ rule }] = wanted;
  const report: Report = ({ span, message, severity, fixes, related }) => {
    findings ??= [];
    findings.push({
      code: rule.id,
      severity: severity ?? rule.severity,
      span,
      message,
      ...(fixes && fixes.length > 0 && { fixes }),
      ...(related && { related }),
    });
  };
  for (const one of wanted) {
    rule = one.rule;
    one.check(statement, report);
  }
  return findings ?? nothing;
}
