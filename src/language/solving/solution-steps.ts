import { figure } from '../../text';
import { fromBase } from '../../units';
import { mathsOf, substitutedOf } from '../evaluation/maths-tree';
import type { Replay } from '../evaluation/replay';
import type { LetterSymbol, SolutionStep, Step } from '../evaluation/trace';
import type { QuantityValue, Value } from '../evaluation/value';
import { Node, textOf } from '../syntax/tree';
import { mentions } from './expression';
import { type Sides, solutionParts, togetherParts } from './solution-parts';

interface Found {
  readonly symbol?: LetterSymbol;
  readonly result: Value;
  readonly remark?: string;
}

/** How an unknown was found: the equation, then the rearranged formula, or that it was searched for. */
export function solutionSteps(replay: Replay, node: number, found: Found): Step[] {
  const { tree, searches } = replay.frame.meaning;
  if (tree.kinds[node] === Node.Together) {
    return together(replay, node, found);
  }
  const { name, formulas, equation, bounds } = solutionParts(tree, node);
  if (searches.has(node) && bounds) {
    const [low, high] = [replay.value(bounds.low), replay.value(bounds.high)];
    const step: SolutionStep[] = low && high ? [{ kind: 'solution', by: { kind: 'search', low, high }, ...found }] : [];
    return [equationStep(replay, equation), ...step];
  }
  const values = formulas.map((formula) => replay.value(formula));
  const chosen = values.findIndex((value) => value && isSame(value, found.result));
  if (chosen < 0) {
    return [];
  }
  const formula = formulas[chosen];
  const steps: Step[] = isAlone(replay, name, equation) ? [] : [equationStep(replay, equation)];
  const other = bounds ? undefined : values.find((value) => value && isOpposite(value, found.result));
  if (other) {
    const text = `${name} is ${shown(found.result)} or ${shown(other)}; the one that is not negative is taken. Bounds behind solve, such as ${name} in low .. high, choose the other`;
    steps.push({ kind: 'assumption', text });
  }
  const substituted = substitutedOf(replay, formula);
  steps.push({ kind: 'formula', formula: mathsOf(replay, formula), ...(substituted && { substituted }), ...found });
  return steps;
}

function together(replay: Replay, node: number, found: Found): Step[] {
  const { tree } = replay.frame.meaning;
  const { unknowns, equations } = togetherParts(tree, node);
  const [own, ...others] = unknowns.map(({ name }) => name);
  // The equations are shown once, with the first of the unknowns.
  const isFirst = textOf(tree, tree.firstChildren[node]) === own;
  return [
    ...(isFirst ? equations.map((equation) => equationStep(replay, equation)) : []),
    { kind: 'solution', by: { kind: 'linear', together: others }, ...found },
  ];
}

const equationStep = (replay: Replay, { left, right }: Sides): Step => ({
  kind: 'equation',
  left: mathsOf(replay, left),
  right: mathsOf(replay, right),
});

/** True when the equation has the unknown alone on its left side, so that it is the formula already. */
function isAlone({ frame }: Replay, name: string, { left, right }: Sides): boolean {
  const { tree } = frame.meaning;
  return tree.kinds[left] === Node.Name && textOf(tree, left) === name && !mentions(tree, right, new Set([name]));
}

const isSame = (a: Value, b: Value): boolean => a.kind === 'quantity' && b.kind === 'quantity' && a.base === b.base;

const isOpposite = (a: Value, b: Value): boolean =>
  a.kind === 'quantity' &&
  b.kind === 'quantity' &&
  b.base !== 0 &&
  Math.abs(a.base + b.base) <= 1e-9 * Math.abs(b.base);

const shown = (value: Value): string => {
  const { base, unit } = value as QuantityValue;
  return `${figure(fromBase(base, unit))} ${unit.symbol}`.trim();
};
