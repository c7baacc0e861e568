import { toBase } from '../../units';
import { ownUnit } from '../checking/types';
import type { Call, Fact, Parameter, ParameterType } from '../library';
import { type CallSite, isGiven, type Watcher } from './call-site';
import type { Machine } from './machine';
import { hasValue, quantityValue, readValue } from './read-value';
import type { AssumptionStep, Step } from './trace';
import type { Value } from './value';

/** What one call told while it was watched. */
export interface WatchedCall {
  readonly site: CallSite;
  readonly steps: readonly Step[];
  readonly facts: readonly Fact[];
  readonly arguments: readonly {
    readonly name: string;
    readonly value: Value;
    readonly given: boolean;
    readonly node: number;
  }[];
  readonly result?: Value;
}

/** Listens to every call of a statement, in the order they run. */
export class Listener implements Watcher {
  readonly calls: WatchedCall[] = [];
  private steps: Step[] = [];
  private facts: Fact[] = [];
  private arguments: WatchedCall['arguments'] = [];

  /** `wanted: 'facts'` leaves the steps out, which cost more than all the rest. */
  constructor(private readonly wanted: 'facts' | 'steps and facts') {}

  begin(site: CallSite, machine: Machine): Call {
    const steps: Step[] = [];
    const facts: Fact[] = [];
    this.steps = steps;
    this.facts = facts;
    this.arguments = argumentsOf(site, machine);
    const { settings, library } = site.meaning;
    const isShown = this.wanted === 'steps and facts';
    return {
      watched: true,
      shown: isShown,
      settings,
      system: library.system,
      step: isShown ? (step) => void steps.push(step) : nothing,
      assume: isShown ? (text: AssumptionStep['text']) => void steps.push({ kind: 'assumption', text }) : nothing,
      choose: isShown ? (step) => void steps.push({ kind: 'choice', ...step }) : nothing,
      table: isShown ? (row) => void steps.push(tableStep(row)) : nothing,
      fact: (fact) => void facts.push(fact),
      given: (parameter) => isGiven(site.call, parameter),
    };
  }

  end(site: CallSite, machine: Machine): void {
    const { result: type } = site.call;
    this.calls.push({
      site,
      steps: this.steps,
      facts: this.facts,
      arguments: this.arguments,
      result: hasValue(machine, type, site.target) ? readValue(machine, type, site.target) : undefined,
    });
  }
}

const nothing = (): void => undefined;

const tableStep = ({ symbol, value, unit, source, row, remark }: Parameters<Call['table']>[0]): Step => ({
  kind: 'table',
  symbol: symbol === undefined ? undefined : letterSymbol(symbol),
  result: typeof value === 'number' ? shown(value, unit ?? '') : { kind: 'text', value },
  source,
  row,
  remark,
});

/** A number in one of the program's own units as a value. */
function shown(value: number, unitText: string): Value {
  const unit = ownUnit(unitText);
  return quantityValue({ kind: 'quantity', quantity: unit.type, unit }, toBase(value, unit));
}

/** `R_75` is R with the subscript 75. */
export function letterSymbol(text: string): { base: string; subscript?: string } {
  const underscore = text.indexOf('_');
  return underscore <= 0 || underscore === text.length - 1
    ? { base: text }
    : { base: text.slice(0, underscore), subscript: text.slice(underscore + 1) };
}

function argumentsOf(site: CallSite, machine: Machine): WatchedCall['arguments'] {
  return site.call.arguments.flatMap(({ parameter: name, spec, nodes, type, word }, i): WatchedCall['arguments'] => {
    if (nodes.length === 0) {
      const value = defaultOf(spec);
      return value ? [{ name, value, given: false, node: site.call.nameNode }] : [];
    }
    return nodes.map((node, k) => ({
      name,
      value: word === undefined ? readValue(machine, type, site.slots[i][k]) : { kind: 'choice', value: word },
      given: true,
      node,
    }));
  });
}

/** A parameter's default as a value; the same object each time, because long schedules ask for it in every row. */
function defaultOf(spec: Parameter): Value | undefined {
  if (!defaults.has(spec)) {
    defaults.set(spec, defaultValue(spec, spec.default));
  }
  return defaults.get(spec);
}

const defaults = new WeakMap<Parameter, Value | undefined>();

function defaultValue(spec: ParameterType, value: number | string | boolean | undefined): Value | undefined {
  switch (typeof value) {
    case 'number':
      return shown(value, 'unit' in spec ? spec.unit : 'units' in spec ? (spec.units[0] ?? '') : '');
    case 'string':
      return { kind: 'choice' in spec ? 'choice' : 'text', value };
    case 'boolean':
      return { kind: 'boolean', value };
    default:
      return undefined;
  }
}
