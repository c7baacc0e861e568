import { type CircuitFact, conductorText, figure } from '../functions';
import type { CallRecord } from '../language';
import type { LintedStatement } from './contract';

/** The circuits that a statement worked out, each with its call. */
export function* circuitsIn(statement: LintedStatement): Generator<{ call: CallRecord; fact: CircuitFact }> {
  for (const call of statement.calls) {
    for (const fact of call.facts) {
      if (fact.about === 'circuit') {
        yield { call, fact: fact as CircuitFact };
      }
    }
  }
}

/** Allows for the last bits of a product, so that 16 A × 125 % does not exceed 20 A. */
const hair = 1e-9;

export const exceeds = (amount: number, bound: number): boolean => amount > bound * (1 + hair);

/** `8 AWG Cu THHN`, or `2 sets of 1/0 AWG Cu THHN`. */
export const conductorsText = (fact: CircuitFact): string =>
  fact.sets > 1 ? `${fact.sets} sets of ${conductorText(fact.conductor)}` : conductorText(fact.conductor);

/** `8 AWG Cu THHN, which may carry 40 A` */
export const carryingText = (fact: CircuitFact): string =>
  `${conductorsText(fact)}, which ${fact.sets > 1 ? 'together ' : ''}may carry ${figure(fact.totalAmpacity)} A`;

/** `Ampacity: 55 A (90 °C column) × 1 × 1 = 55 A; terminals 60 °C allow 40 A.` */
export const chainText = (fact: CircuitFact): string => {
  const named = `${conductorText(fact.conductor)}: `;
  const { chain } = fact.ampacity;
  const each = fact.sets > 1 ? ' of each' : '';
  return `Ampacity${each}: ${chain.startsWith(named) ? chain.slice(named.length) : chain}.`;
};
