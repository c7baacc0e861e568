import type { Span } from '../../text';
import type { Statement } from '../checking/binding';
import { readValue } from '../evaluation/read-value';
import { replay } from '../evaluation/replay';
import type { Runner } from '../evaluation/runner';
import { scheduleOf } from '../evaluation/schedules/row-replay';
import type { Trace } from '../evaluation/trace';
import { traceOf } from '../evaluation/trace-steps';
import type { Value, Verdict } from '../evaluation/value';
import { Listener } from '../evaluation/watch';
import type { CallRecord, RowResult, StatementResult, ValueOrigin } from '../program';
import { solutionRemark } from '../solving/solution-remark';
import { textContent } from '../syntax/navigation';
import { lineEnd } from '../syntax/scanning/characters';
import { Node, nameOf, spanOf, textOf } from '../syntax/tree';
import { callRecord } from './call-record';
import { derivationThere } from './derivation-there';
import { rowsOf } from './schedule-rows';
import { scheduleTrace } from './schedule-trace';
import { originOf } from './value-origin';

const kinds: Partial<Record<Node, StatementResult['kind']>> = {
  [Node.Definition]: 'definition',
  [Node.BlockCall]: 'definition',
  [Node.Unknown]: 'definition',
  [Node.Input]: 'definition',
  [Node.Schedule]: 'definition',
  [Node.Show]: 'show',
  [Node.Check]: 'check',
};

/** What one statement came to. A new one is made whenever it is checked or run again; what it holds is made when asked for. */
export class Result implements StatementResult {
  private made?: Value;
  private records?: readonly CallRecord[];

  constructor(
    private readonly statement: Statement,
    private readonly runner: Runner,
    readonly missing: readonly string[] | undefined,
  ) {}

  get cell(): string {
    return this.statement.cell.id;
  }

  get index(): number {
    return this.statement.index;
  }

  get span(): Span {
    return spanOf(this.statement.cell.tree, this.statement.node);
  }

  get kind(): StatementResult['kind'] {
    if (this.statement.part >= 0) {
      return this.statement.givesFunction ? 'other' : 'definition';
    }
    return kinds[this.statement.cell.tree.kinds[this.statement.node] as Node] ?? 'other';
  }

  private get nameNode(): number {
    return this.statement.nameNode;
  }

  get name(): string | undefined {
    return this.nameNode < 0 ? undefined : nameOf(this.statement.cell.tree, this.nameNode);
  }

  get nameSpan(): Span | undefined {
    return this.nameNode < 0 ? undefined : spanOf(this.statement.cell.tree, this.nameNode);
  }

  private get hasValue(): boolean {
    return this.statement.succeeded && this.statement.isCompiled;
  }

  get value(): Value | undefined {
    if (!this.made && this.hasValue) {
      this.made = readValue(this.runner.machine, this.statement.type, this.statement.slot);
    }
    return this.made;
  }

  get verdict(): Verdict | undefined {
    const { value } = this;
    if (this.kind !== 'check' || value?.kind !== 'boolean') {
      return undefined;
    }
    return value.value === 'cannot tell' ? value.value : value.value ? 'yes' : 'no';
  }

  get label(): string | undefined {
    const { tree } = this.statement.cell;
    if (this.kind !== 'check') {
      return undefined;
    }
    const condition = tree.firstChildren[this.statement.node];
    const label = tree.nextSiblings[condition];
    return label >= 0 && tree.kinds[label] === Node.Text ? textContent(tree, label) : textOf(tree, condition);
  }

  get remark(): string | undefined {
    const { tree } = this.statement.cell;
    if (this.statement.isUnknown) {
      return solutionRemark(this.statement);
    }
    const start = tree.starts[this.statement.node];
    const end = scheduleOf(this.statement) ? lineEnd(tree.text, start) : Number.POSITIVE_INFINITY;
    const texts = tree.comments
      .filter(({ statement, span, text }) => {
        // One on a line above stands by itself; one beside a row of a schedule is about that row.
        return statement === this.statement.index && span.start > start && span.start < end && text !== '';
      })
      .map((comment) => comment.text);
    return texts.length > 0 ? texts.join(' ') : undefined;
  }

  get taken(): StatementResult['taken'] {
    const { taken } = this.statement;
    return taken && { file: taken.file, result: taken.name?.definition?.result };
  }

  get origin(): ValueOrigin {
    return originOf(this.statement);
  }

  get needs(): readonly StatementResult[] {
    const places = this.statement.uses.flatMap(({ definition }) => (definition?.result ? [definition.result] : []));
    return [...new Set(places)];
  }

  trace(): Trace {
    if (!this.hasValue) {
      return { steps: [] };
    }
    const { statement, remark, name } = this;
    if (scheduleOf(statement)) {
      return scheduleTrace(this.runner, statement);
    }
    const listener = new Listener('steps and facts');
    const there = this.taken && derivationThere(statement);
    return replay(
      this.runner,
      statement,
      (run) => traceOf({ statement, replay: run, listener, name, remark, there }),
      listener,
    );
  }

  rows(): Iterable<RowResult> {
    return this.missing === undefined ? rowsOf(this.runner, this.statement) : [];
  }

  calls(): readonly CallRecord[] {
    const { statement } = this;
    // Without its inputs the statement did not run; what their slots still hold must reach no function.
    const ran = this.missing === undefined && statement.checkDiagnostics.length === 0;
    if (!this.records && ran && statement.isCompiled && !scheduleOf(statement)) {
      const listener = new Listener('facts');
      this.records = replay(this.runner, statement, () => listener.calls.map(callRecord), listener);
    }
    return this.records ?? [];
  }
}
