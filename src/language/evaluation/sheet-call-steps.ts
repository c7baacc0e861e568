import { spanOf } from '../syntax/tree';
import { evaluated } from './failures';
import { mathsOf, substitutedOf } from './maths-tree';
import { Replay } from './replay';
import type { CallStep } from './trace';

/** Calls in one statement that are worked out; who writes more is helped by none of them. */
const most = 12;

/** What each call of a function of the sheet did: its formula with the arguments in place, inner calls first. */
export function sheetCallSteps(replay: Replay, expression: number, steps: CallStep[] = []): CallStep[] {
  const { meaning, inner } = replay.frame;
  for (const child of evaluated(replay, replay.frame, expression)) {
    sheetCallSteps(replay, child, steps);
  }
  const call = meaning.calls.get(expression);
  const frame = call?.kind === 'sheet' ? inner?.get(expression) : undefined;
  const result = frame && replay.value(expression);
  if (call?.kind !== 'sheet' || !frame || !result || steps.length >= most) {
    return steps;
  }
  const within = new Replay(replay.machine, frame);
  sheetCallSteps(within, call.body, steps);
  const given = call.parameters.flatMap((name, i) => {
    const value = replay.value(call.argumentNodes[i]);
    return value ? [{ name, value, given: true }] : [];
  });
  steps.push({
    kind: 'call',
    function: call.name.text,
    span: spanOf(meaning.tree, expression),
    arguments: given,
    steps:
      result.kind === 'record'
        ? []
        : [
            {
              kind: 'formula',
              formula: mathsOf(within, call.body),
              substituted: substitutedOf(within, call.body),
              result,
            },
          ],
    result,
  });
  return steps;
}
