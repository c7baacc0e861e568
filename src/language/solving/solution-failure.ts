import type { Culprit } from '../evaluation/failures';
import type { Frame } from '../evaluation/frame';
import { NoValue } from '../evaluation/machine';
import type { Replay } from '../evaluation/replay';
import { Node, textOf } from '../syntax/tree';
import { solutionParts, togetherParts } from './solution-parts';

/**
 * Why a Solution or Together node came to nothing. `find` looks for the innermost culprit in an expression; one that
 * solving made stands nowhere in the sheet, so what it means is said of the equation.
 */
export function solutionCulprit(
  replay: Replay,
  frame: Frame,
  node: number,
  find: (node: number) => Culprit | undefined,
): Culprit {
  const { meaning } = frame;
  const { tree } = meaning;
  const isTogether = tree.kinds[node] === Node.Together;
  const together = isTogether ? togetherParts(tree, node) : undefined;
  const alone = isTogether ? undefined : solutionParts(tree, node);
  const bounds = alone?.bounds ?? together?.unknowns[0].bounds;
  for (const bound of bounds ? [bounds.low, bounds.high] : []) {
    const culprit = find(bound);
    if (culprit) {
      return culprit;
    }
  }
  const object = replay.machine.objects[frame.slots!.get(node)!];
  if (object instanceof NoValue && object.message !== undefined) {
    return { node: object.node ?? node, code: object.code ?? 'no-solution', message: object.message };
  }
  const parts = alone?.formulas ?? together?.equations.flatMap(({ left, right }) => [left, right]) ?? [];
  const culprits = parts.flatMap((part) => find(part) ?? []);
  const written = culprits.find((culprit) => meaning.writtenNode(culprit.node) >= 0);
  if (written) {
    return written;
  }
  const name = alone?.name ?? together!.unknowns[0].name;
  const equation = alone?.equation.node ?? together!.equations[0].node;
  const text = `\`${textOf(tree, equation).replace(/\s+/g, ' ')}\``;
  const because = culprits[0] ? reasonOf(frame, culprits[0]) : 'turned round, it has no finite value';
  return {
    node: equation,
    code: 'no-solution',
    message: `No value of \`${name}\` can be found from ${text}: ${because}.`,
  };
}

function reasonOf({ meaning }: Frame, { node, code }: Culprit): string {
  const { tree } = meaning;
  switch (code) {
    case 'negative-root':
      return 'turned round, it is the root of a negative number';
    case 'division-by-zero': {
      const divisor = tree.nextSiblings[tree.firstChildren[node]];
      return meaning.writtenNode(divisor) >= 0
        ? `turned round, it is divided by \`${textOf(tree, divisor)}\`, which is 0`
        : 'turned round, it is divided by zero';
    }
    default:
      return 'turned round, it has no finite value';
  }
}
