import type { Diagnostic, ProblemCode } from '../../text';
import { Absent } from '../library';
import type { MathematicsFunction } from '../mathematics/operation';
import { solutionCulprit } from '../solving/solution-failure';
import { children, Node, Operator, spanOf, textOf } from '../syntax/tree';
import type { Frame } from './frame';
import { type Holes, holeMessage } from './lists/holes';
import { NoValue } from './machine';
import { hasValue } from './read-value';
import type { Replay } from './replay';

/** A place where a value is lost. */
export interface Culprit {
  readonly node: number;
  readonly code: ProblemCode;
  readonly message: string;
}

/** Why an expression came to nothing: the innermost place where all that goes in has a value and nothing comes out. */
export function failureOf(replay: Replay, node: number): Diagnostic {
  const { code, message, node: at } = culpritOf(replay, node);
  return { code, severity: 'error', span: spanOf(replay.frame.meaning.tree, at), message };
}

/** The same as a node. */
export function culpritOf(replay: Replay, node: number): Culprit {
  return (
    find(replay, replay.frame, node) ?? {
      node,
      code: 'no-result',
      message: `\`${textOf(replay.frame.meaning.tree, node)}\` has no finite result.`,
    }
  );
}

function find(replay: Replay, frame: Frame, node: number): Culprit | undefined {
  const { meaning } = frame;
  const slot = frame.slots!.get(node);
  const type = meaning.types[node];
  if (slot === undefined || !type || hasValue(replay.machine, type, slot)) {
    return undefined;
  }
  const kind = meaning.tree.kinds[node] as Node;
  if (kind === Node.Solution || kind === Node.Together) {
    return solutionCulprit(replay, frame, node, (child) => find(replay, frame, child));
  }
  for (const child of evaluated(replay, frame, node)) {
    const culprit = find(replay, frame, child);
    if (culprit) {
      return culprit;
    }
  }
  return explain(replay, frame, node, slot);
}

/** The expressions in a node that were run. */
export function evaluated(replay: Replay, frame: Frame, node: number): number[] {
  const { tree, calls } = frame.meaning;
  if (tree.kinds[node] === Node.If) {
    const [condition, thenNode, elseNode] = children(tree, node);
    const answer = replay.machine.numbers[frame.slots!.get(condition)!];
    return [condition, ...(answer === 1 ? [thenNode] : answer === 0 ? [elseNode] : [])];
  }
  const call = calls.get(node);
  if (call) {
    return call.kind === 'sheet' ? [...call.argumentNodes] : call.arguments.flatMap((argument) => argument.nodes);
  }
  return [...children(tree, node)];
}

function explain(replay: Replay, frame: Frame, node: number, slot: number): Culprit {
  const { tree, calls } = frame.meaning;
  const written = `\`${textOf(tree, node)}\``;
  const object = replay.machine.objects[slot];
  switch (tree.kinds[node] as Node) {
    case Node.Binary:
      return reasonIn(object) ? because(object as NoValue, node) : explainArithmetic(replay, frame, node);
    case Node.Member:
      if (object instanceof Absent) {
        return { node, code: 'absent-field', message: `${written} has no value here: ${object.because}` };
      }
      break;
    case Node.If:
      return {
        node: tree.firstChildren[node],
        code: 'cannot-tell',
        message: `The readings cannot tell whether \`${textOf(tree, tree.firstChildren[node])}\`, so neither branch can be taken.`,
      };
    case Node.Where:
    case Node.Reading:
    case Node.PlusMinus:
      if (reasonIn(object)) {
        return because(object as NoValue, node);
      }
      break;
    default:
  }
  const call = calls.get(node);
  if (call?.kind === 'sheet') {
    const inner = find(replay, frame.inner!.get(node)!, call.body);
    return {
      node,
      code: inner?.code ?? 'no-result',
      message: inner ? `In \`${call.name.text}\`: ${inner.message}` : `${written} has no finite result.`,
    };
  }
  if (call) {
    if ('operation' in call.definition) {
      const { name, undefinedWhere } = call.definition as MathematicsFunction;
      const holes = holesOf(replay, frame, call.arguments[0]?.nodes ?? []);
      if (holes) {
        return { node, code: 'missing-value', message: holeMessage(written, holes) };
      }
      const code = name === 'sqrt' ? 'negative-root' : 'no-result';
      return { node, code, message: `\`${name}\` ${undefinedWhere}: ${written}.` };
    }
    if (reasonIn(object)) {
      return because(object as NoValue, node);
    }
  }
  return { node, code: 'no-result', message: `${written} has no finite result.` };
}

/** The places without a value in the list that is the one argument of a call. */
function holesOf(replay: Replay, frame: Frame, nodes: readonly number[]): Holes | undefined {
  const { machine } = replay;
  const object = nodes.length === 1 ? machine.objects[frame.slots!.get(nodes[0])!] : undefined;
  return typeof object === 'object' && object !== null ? machine.holes.get(object) : undefined;
}

/** What a site said itself. */
const because = (reason: NoValue, node: number): Culprit => ({
  node: reason.node ?? node,
  code: reason.code ?? 'no-result',
  message: reason.message ?? '',
});

const reasonIn = (object: unknown): boolean => object instanceof NoValue && object.message !== undefined;

function explainArithmetic(replay: Replay, frame: Frame, node: number): Culprit {
  const { tree } = frame.meaning;
  const left = tree.firstChildren[node];
  const right = tree.nextSiblings[left];
  const number = (operand: number) => replay.machine.numbers[frame.slots!.get(operand)!];
  const operator = tree.operators[node] as Operator;
  if (operator === Operator.Divide && number(right) === 0) {
    return {
      node,
      code: 'division-by-zero',
      message:
        tree.kinds[right] === Node.Number
          ? `\`${textOf(tree, node)}\` divides by zero.`
          : `\`${textOf(tree, node)}\` divides by zero: \`${textOf(tree, right)}\` is 0.`,
    };
  }
  if (operator === Operator.Power && number(left) === 0 && number(right) < 0) {
    return {
      node,
      code: 'division-by-zero',
      message: `\`${textOf(tree, node)}\` divides by zero: \`${textOf(tree, left)}\` is 0.`,
    };
  }
  if (operator === Operator.Power && number(left) < 0) {
    return {
      node,
      code: 'negative-root',
      message: `\`${textOf(tree, node)}\` takes a root of a negative number, which has no real value.`,
    };
  }
  return {
    node,
    code: 'overflow',
    message: `\`${textOf(tree, node)}\` is too large to compute: check the magnitudes.`,
  };
}
