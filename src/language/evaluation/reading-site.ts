import type { Meaning } from '../checking/meaning';
import { isShareOf, lastDigitOf } from '../checking/readings';
import type { Meter } from '../measurement';
import { Node, type SyntaxTree, textOf } from '../syntax/tree';
import { type CorrelatedWith, correlated } from './correlation';
import { Gradient, halfWidthOfOne } from './gradient';
import { combine } from './gradient-sum';
import { type Machine, NoValue, type Site } from './machine';
import { Source } from './source';

const sources = new WeakMap<SyntaxTree, Map<number, Source>>();

const sourcesOfRows = new WeakMap<Source, Source[]>();

/** In a formula of a schedule each row is a reading of its own. */
function sourceInRow(source: Source, row: number): Source {
  if (row < 0) {
    return source;
  }
  let rows = sourcesOfRows.get(source);
  if (!rows) {
    rows = [];
    sourcesOfRows.set(source, rows);
  }
  rows[row] ??= new Source(`${source.name} (row ${row + 1})`, source.stated);
  return rows[row];
}

/** The source that a node stands for; the same one however often it is compiled, or copied where equations are turned round. */
function sourceAt(meaning: Meaning, copy: number, stated: Source['stated']): Source {
  const { tree } = meaning;
  const node = meaning.writtenNode(copy);
  let known = sources.get(tree);
  if (!known) {
    known = new Map();
    sources.set(tree, known);
  }
  let source = known.get(node);
  if (!source) {
    source = new Source(textOf(tree, node).replace(/\s+/g, ' '), stated);
    known.set(node, source);
  }
  return source;
}

/** How far a reading may be off: a half-width, or a standard uncertainty, in the coherent SI unit; or why it has none. */
type Spread = (machine: Machine, value: number) => number | NoValue;

/** A value with a doubt of its own: `13.2 Ω by bench`, `13.2 Ω ± 0.1 Ω`, `measured(…)`. */
export class ReadingSite implements Site {
  constructor(
    private readonly value: number,
    private readonly source: Source,
    private readonly spread: Spread,
    private readonly target: number,
    private readonly correlatedWith: CorrelatedWith | undefined,
  ) {}

  run(machine: Machine): void {
    this.take(machine);
  }

  runWithDoubt(machine: Machine): void {
    const spread = this.take(machine);
    const { uncertain } = machine;
    const standard = this.source.stated === 'standard' ? spread : spread / halfWidthOfOne;
    const alone = standard > 0 ? Gradient.of(sourceInRow(this.source, machine.row), standard) : undefined;
    const own = alone && this.correlatedWith ? correlated(machine, alone, this.correlatedWith) : alone;
    const gradient = own instanceof NoValue ? undefined : combine(uncertain.gradient(this.value), 1, own, 1);
    uncertain.clear(this.target, 1);
    uncertain.setGradient(this.target, gradient);
    if (own instanceof NoValue) {
      machine.numbers[this.target] = Number.NaN;
      machine.objects[this.target] = own;
    }
  }

  /** Writes the value and returns how far it may be off. */
  private take(machine: Machine): number {
    const value = machine.numbers[this.value];
    const spread = this.spread(machine, value);
    machine.numbers[this.target] = spread instanceof NoValue ? Number.NaN : value + (spread - spread);
    machine.objects[this.target] = spread instanceof NoValue ? spread : undefined;
    return spread instanceof NoValue ? Number.NaN : spread;
  }
}

/** `± limits`, or a standard uncertainty: a number in a slot, a share of the value where `isShare`. */
const statedSpread =
  (slot: number, isShare: boolean, node: number): Spread =>
  (machine, value) => {
    const spread = machine.numbers[slot];
    return spread < 0
      ? new NoValue('negative-limits', 'Limits are written without a sign: they reach as far up as down.', node)
      : isShare
        ? spread * Math.abs(value)
        : spread;
  };

/** The limits that a meter guarantees: a share of the reading, so many of its last digits, and a fixed part. */
const meterSpread =
  (slot: number, isTemperature: boolean, lastDigit: number | undefined, node: number): Spread =>
  (machine, value) => {
    const meter = machine.objects[slot];
    if (meter instanceof NoValue) {
      return meter;
    }
    const { reading, digits, range, resolution = lastDigit } = meter as Meter;
    if (reading > 0 && isTemperature) {
      const message = 'A percentage of a temperature hangs on its scale. State the accuracy as `range:` in K.';
      return new NoValue('percent-of-temperature', message, node);
    }
    if (digits > 0 && resolution === undefined) {
      const message =
        'This meter counts its last digits, and the reading is not written as a number that shows them. State the `resolution:` of the meter.';
      return new NoValue('no-resolution', message, node);
    }
    return (reading * Math.abs(value)) / 100 + digits * (resolution ?? 0) + range;
  };

/** What a node that states a doubt does: the nodes of itself, of the value and of what says how far that is off. */
export function readingSite(
  meaning: Meaning,
  { node, value, spread }: { readonly node: number; readonly value: number; readonly spread: number },
  valueSlot: number,
  spreadSlot: number,
  target: number,
  correlatedWith?: CorrelatedWith,
): ReadingSite {
  const { types } = meaning;
  const kind = meaning.tree.kinds[node] as Node;
  if (kind === Node.Reading) {
    const type = types[value];
    const isTemperature = type.kind === 'quantity' && type.quantity.kind === 'absolute';
    const limits = meterSpread(spreadSlot, isTemperature, lastDigitOf(meaning, value), spread);
    return new ReadingSite(valueSlot, sourceAt(meaning, node, 'meter'), limits, target, undefined);
  }
  const isLimits = kind === Node.PlusMinus;
  const stated = statedSpread(spreadSlot, isLimits && isShareOf(meaning, value, spread), spread);
  return new ReadingSite(
    valueSlot,
    sourceAt(meaning, node, isLimits ? 'limits' : 'standard'),
    stated,
    target,
    correlatedWith,
  );
}
