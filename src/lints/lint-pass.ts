import { type CallRecord, Node, type Program, type StatementResult, type SyntaxTree } from '../language';
import type { Diagnostic } from '../text';
import type { LintedStatement } from './contract';
import { rules } from './rule-list';
import { type Asked, askedOf, type SheetView } from './sheet-view';
import { callNodes, holdsOneOf, kindsIn, kindsOf, withTests } from './statement-kinds';

/** What the lints said of a statement, and everything that it hangs on beside the statement's own result. */
export interface Looked {
  readonly findings: readonly Diagnostic[];
  /** The cells that the lints looked into, as they were then. */
  readonly consulted: ReadonlyMap<string, SyntaxTree | undefined>;
  readonly asked: readonly Asked[];
}

const keptFor = new WeakMap<StatementResult, Looked>();
const tested = withTests(rules);
const holdsCall = holdsOneOf(callNodes);
const nothing: readonly Diagnostic[] = [];

/** What a look is at: a statement, or a row of a schedule. */
interface Subject {
  readonly cell: string;
  readonly tree: SyntaxTree;
  readonly node: number;
  readonly kinds: ReturnType<typeof kindsIn>;
  readonly result: StatementResult;
  readonly calls: () => readonly CallRecord[];
  readonly silenced?: ReadonlySet<string>;
}

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
  private readonly resultsOf = new Map<string, readonly StatementResult[]>();

  constructor(
    private readonly program: Program,
    private readonly sheet: SheetView,
  ) {}

  /** A cell's results; the program makes the list anew each time, and many statements look into the same cell. */
  results(cell: string): readonly StatementResult[] {
    let results = this.resultsOf.get(cell);
    if (!results) {
      results = this.program.results(cell);
      this.resultsOf.set(cell, results);
    }
    return results;
  }

  /** What the lints say of a statement; what they said before where nothing that it hangs on has changed. */
  at(cell: string, tree: SyntaxTree, result: StatementResult): Looked {
    const known = keptFor.get(result);
    if (known && this.holds(known)) {
      return known;
    }
    const consulted = new Map<string, SyntaxTree | undefined>([[cell, tree]]);
    const asked: Asked[] = [];
    const whole = this.look(this.statement(cell, tree, result), consulted, asked);
    const findings = result.rows ? [...whole, ...this.lookAtRows(cell, result, consulted, asked)] : whole;
    const looked = { findings, consulted, asked };
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
    const consulted = new Map<string, SyntaxTree | undefined>([[cell, tree]]);
    const asked: Asked[] = [];
    return {
      findings: this.look({ ...this.statement(cell, tree, result), silenced }, consulted, asked),
      consulted,
      asked,
    };
  }

  private holds({ consulted, asked }: Looked): boolean {
    for (const [cell, then] of consulted) {
      if (this.program.tree(cell) !== then) {
        return false;
      }
    }
    return asked.every(({ again, answer }) => again(this.sheet) === answer);
  }

  private statement(cell: string, tree: SyntaxTree, result: StatementResult): Subject {
    const node = tree.statements[result.index];
    return { cell, tree, node, kinds: kindsIn(tree, node), result, calls: () => result.calls() };
  }

  /** Each row of a schedule is looked at by itself, as a call on a line of its own would be. */
  private lookAtRows(
    cell: string,
    result: StatementResult,
    consulted: Map<string, SyntaxTree | undefined>,
    asked: Asked[],
  ): Diagnostic[] {
    const findings: Diagnostic[] = [];
    for (const { tree, node, span, calls, placed } of result.rows?.() ?? []) {
      const own: StatementResult = { ...plain(result), span, calls: () => calls };
      const subject = { cell, tree, node, kinds: rowKinds, result: own, calls: () => calls };
      for (const finding of this.look(subject, consulted, asked)) {
        findings.push(placed(finding));
      }
    }
    return findings;
  }

  private look(
    { cell, tree, node, kinds, result, calls: callsOf, silenced }: Subject,
    consulted: Map<string, SyntaxTree | undefined>,
    asked: Asked[],
  ): readonly Diagnostic[] {
    let calls: readonly CallRecord[] | undefined;
    let statement: LintedStatement | undefined;
    let findings: Diagnostic[] | undefined;
    for (const { rule, check, wants } of tested) {
      if (!wants(kinds)) {
        continue;
      }
      statement ??= {
        program: this.watching(consulted),
        cell,
        tree,
        node,
        result,
        sheet: askedOf(this.sheet, asked),
        // Only when a lint asks: calls have to be run again to leave their facts.
        get calls() {
          calls ??= holdsCall(kinds) ? callsOf() : [];
          return calls;
        },
        ...(silenced && { silenced }),
      };
      check(statement, ({ span, message, severity, fixes, related }) => {
        findings ??= [];
        findings.push({
          code: rule.id,
          severity: severity ?? rule.severity,
          span,
          message,
          ...(fixes && fixes.length > 0 && { fixes }),
          ...(related && { related }),
        });
      });
    }
    return findings ?? nothing;
  }

  /** The same program, noting which cells' trees are asked for. */
  private watching(consulted: Map<string, SyntaxTree | undefined>): Program {
    const { program } = this;
    return {
      library: program.library,
      update: (cells) => program.update(cells),
      tree(cell) {
        const tree = program.tree(cell);
        consulted.set(cell, tree);
        return tree;
      },
      results: (cell) => this.results(cell),
      diagnostics: (cell) => program.diagnostics(cell),
      names: () => program.names(),
      name: (text) => program.name(text),
      vary: (inputs) => program.vary(inputs),
      typeAt: (cell, node) => program.typeAt(cell, node),
      valueAt: (cell, node) => program.valueAt(cell, node),
    };
  }
}
