import type { Statement } from '../checking/binding';
import type { Meaning } from '../checking/meaning';
import { solutionSteps } from '../solving/solution-steps';
import { children, Node, spanOf } from '../syntax/tree';
import { comparisonStep } from './comparison-step';
import { mathsOf, substitutedOf } from './maths-tree';
import type { Replay } from './replay';
import { sheetCallSteps } from './sheet-call-steps';
import type { AssumptionStep, CallStep, Step, TakenStep, Trace } from './trace';
import { type Listener, letterSymbol, type WatchedCall } from './watch';

interface Told {
  readonly statement: Statement;
  readonly replay: Replay;
  readonly listener: Listener;
  readonly name: string | undefined;
  readonly remark: string | undefined;
  /** How it came about in the sheet that it was taken from. */
  readonly there?: Pick<TakenStep, 'steps' | 'behind'>;
}

/** How a statement came to its result: what was assumed, what its calls did, then its own formula or comparison. */
export function traceOf({ statement, replay, listener, name, remark, there }: Told): Trace {
  const { expression } = statement;
  const { tree } = statement.cell;
  const assumptions = assumptionsIn(statement.cell.meaning, expression);
  const steps: Step[] = [...once(assumptions), ...listener.calls.map(callStep), ...sheetCallSteps(replay, expression)];
  const result = replay.value(expression);
  if (!result) {
    return { steps };
  }
  const symbol = name === undefined ? undefined : symbolOf(name);
  if (statement.taken) {
    return {
      steps: [{ kind: 'taken', symbol, file: statement.taken.file, ...(there ?? { steps: [], behind: [] }), result }],
    };
  }
  const isCheck = tree.kinds[statement.node] === Node.Check;
  if (tree.kinds[expression] === Node.Solution || tree.kinds[expression] === Node.Together) {
    const symbol = name === undefined ? undefined : symbolOf(name);
    steps.push(
      ...solutionSteps(replay, expression, {
        ...(symbol && { symbol }),
        result,
        ...(remark !== undefined && { remark }),
      }),
    );
  } else if (isCheck) {
    steps.push(comparisonStep(replay, expression, result));
  } else if (result.kind !== 'record') {
    // A record is shown by its fields; a formula line would say nothing.
    steps.push({
      kind: 'formula',
      symbol,
      formula: mathsOf(replay, expression),
      substituted: substitutedOf(replay, expression),
      result,
      remark,
    });
  }
  return { steps };
}

/** The formula of a schedule's column for one row, which was just run again. */
export function rowSteps(replay: Replay, listener: Listener, name: string, expression: number): Step[] {
  const result = replay.value(expression);
  const steps: Step[] = [...once(assumptionsIn(replay.frame.meaning, expression)), ...listener.calls.map(callStep)];
  return result
    ? [
        ...steps,
        {
          kind: 'formula',
          symbol: symbolOf(name),
          formula: mathsOf(replay, expression),
          substituted: substitutedOf(replay, expression),
          result,
        },
      ]
    : steps;
}

/** `I_load` reads as I with a subscript; `drop_limit` is one word and stays whole. */
const symbolOf = (name: string) => (name.indexOf('_') > 2 ? { base: name } : letterSymbol(name));

const callStep = ({ site, steps, arguments: given, result }: WatchedCall): CallStep => ({
  kind: 'call',
  function: site.call.definition.name,
  span: spanOf(site.meaning.tree, site.call.node),
  arguments: given.map(({ name, value, given: written }) => ({ name, value, given: written })),
  steps,
  result: result ?? { kind: 'absent', because: 'the call has no result' },
});

/** What the library took as true in reading the sizes written in this expression. */
function assumptionsIn(meaning: Meaning, node: number): AssumptionStep[] {
  const own = meaning.designations.get(node)?.assumptions ?? [];
  return [
    ...own.map((text): AssumptionStep => ({ kind: 'assumption', text })),
    ...[...children(meaning.tree, node)].flatMap((child) => assumptionsIn(meaning, child)),
  ];
}

/** Each assumption once, however many sizes it was taken for. */
export const once = (steps: readonly AssumptionStep[]): AssumptionStep[] => [
  ...new Map(steps.map((step) => [step.text, step])).values(),
];
