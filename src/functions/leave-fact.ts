import type { Call } from '../language';
import type { TradeFact } from './facts';

/** Leaves a fact for lints to read; typed, so that each has the shape that facts.ts declares. */
export const leaveFact = (call: Call, fact: TradeFact): void => call.fact(fact);
