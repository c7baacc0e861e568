import type { QuantityOf } from '../checking/types';
import type { Frame } from '../evaluation/frame';
import type { Machine, Site } from '../evaluation/machine';
import { instructionLength, Operation } from '../evaluation/operations';
import { textOf } from '../syntax/tree';
import { Outcomes } from './outcomes';
import { type Bounds, type Sides, solutionParts, togetherParts } from './solution-parts';
import { type BoundSlots, FormulaSite, SearchSite } from './solution-site';
import { TogetherSite } from './together-site';

/** What the compiler lends to the compiling of solutions. */
export interface Emitter {
  readonly machine: Machine;
  /** True when every node keeps a slot of its own, to be looked at. */
  readonly keep: boolean;
  /** Slot of what the solution came to, where a statement runs again only to be looked at; else -1. */
  readonly found: number;
  expression(frame: Frame, node: number, target?: number): number;
  /** Slots that nothing else uses. */
  own(size: number): number;
  site(site: Site): void;
  /** Compiles calls that nobody watches. */
  unwatched(compile: () => void): void;
}

/** A Solution node: the value of its unknown, by formula or by search. */
export function compileSolution(emitter: Emitter, frame: Frame, node: number, target: number): number {
  const { meaning } = frame;
  const { name, formulas, equation, bounds } = solutionParts(meaning.tree, node);
  const slot = target < 0 ? emitter.own(1) : target;
  const ends = bounds && boundSlots(emitter, frame, bounds);
  const isSearch = meaning.searches.has(node);
  const values = isSearch ? [] : formulas.map((formula) => emitter.expression(frame, formula, emitter.own(1)));
  const unknown = emitter.own(1);
  const inner = withLocals(frame, [[name, unknown]]);
  const { sides, start, end } = aside(emitter, inner, [equation]);
  const [[left, right]] = sides;
  const code = { unknown, left, right, start, end };
  const outcomes = outcomesOf(frame, node, { name, equation, bounds });
  if (!isSearch || !ends) {
    emitter.site(new FormulaSite({ code, bounds: ends, target: slot, outcomes }, values));
    return slot;
  }
  emitter.site(new SearchSite({ code, bounds: ends, target: slot, outcomes }, emitter.found));
  if (emitter.keep) {
    // Once more in the open, at the value found, for what is shown of it.
    emitter.expression(inner, equation.left);
    emitter.expression(inner, equation.right);
  }
  return slot;
}

/** A Together node: the value of one of the unknowns of several linear equations. */
export function compileTogether(emitter: Emitter, frame: Frame, node: number, target: number): number {
  const { unknowns, equations } = togetherParts(frame.meaning.tree, node);
  const slot = target < 0 ? emitter.own(1) : target;
  const [{ name, bounds }] = unknowns;
  const ends = bounds && boundSlots(emitter, frame, bounds);
  const slots = unknowns.map(() => emitter.own(1));
  const inner = withLocals(
    frame,
    unknowns.map((unknown, i) => [unknown.name, slots[i]]),
  );
  const code = { unknowns: slots, ...aside(emitter, inner, equations) };
  const outcomes = outcomesOf(frame, node, { name, equation: equations[0], bounds });
  emitter.site(new TogetherSite(code, slot, outcomes, ends));
  return slot;
}

const withLocals = (frame: Frame, locals: readonly (readonly [string, number])[]): Frame => ({
  ...frame,
  locals: new Map([...(frame.locals ?? []), ...locals]),
});

/** Compiles both sides of equations into instructions that are passed over unless somebody runs them. */
function aside(emitter: Emitter, frame: Frame, equations: readonly Sides[]) {
  const { machine } = emitter;
  const jump = machine.emit(Operation.Jump, 0);
  const start = machine.codeLength;
  const sides: [left: number, right: number][] = [];
  emitter.unwatched(() => {
    for (const { left, right } of equations) {
      const slots: [number, number] = [emitter.own(1), emitter.own(1)];
      emitter.expression(frame, left, slots[0]);
      emitter.expression(frame, right, slots[1]);
      sides.push(slots);
    }
  });
  const end = machine.codeLength;
  machine.code[jump + 2] = (end - start) / instructionLength;
  return { sides, start, end };
}

const boundSlots = (emitter: Emitter, frame: Frame, { low, high }: Bounds): BoundSlots => ({
  low: emitter.expression(frame, low, emitter.own(1)),
  high: emitter.expression(frame, high, emitter.own(1)),
});

function outcomesOf(
  { meaning }: Frame,
  node: number,
  { name, equation, bounds }: { name: string; equation: Sides; bounds?: Bounds },
): Outcomes {
  const { tree, types } = meaning;
  const text = textOf(tree, equation.node).replace(/\s+/g, ' ');
  return new Outcomes(
    name,
    `\`${text.length > longest ? `${text.slice(0, longest - 1)}…` : text}\``,
    types[node] as QuantityOf,
    { equation: equation.node, unknown: tree.firstChildren[node] },
    bounds && { low: textOf(tree, bounds.low), high: textOf(tree, bounds.high) },
  );
}

/** Longer equations are cut short in messages. */
const longest = 60;
