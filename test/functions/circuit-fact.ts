import assert from 'node:assert/strict';
import type { AmpacityFact, CircuitFact } from '../../src/functions';
import { run } from './sheet';

function factOf(text: string, about: string) {
  const { calls, diagnostics } = run(text);
  assert.deepEqual(
    diagnostics.filter((d) => d.severity === 'error').map((d) => d.message),
    [],
    text,
  );
  const facts = calls.flatMap((call) => call.facts).filter((fact) => fact.about === about);
  assert.equal(facts.length, 1, `${text}: ${facts.length} facts about ${about}`);
  return facts[0];
}

/** The fact that the one circuit of a sheet leaves; written as the fields between the brackets. */
export const circuitFact = (fields: string): CircuitFact => factOf(`x = circuit(${fields})`, 'circuit') as CircuitFact;

export const ampacityFact = (call: string): AmpacityFact => factOf(`x = ${call}`, 'ampacity') as AmpacityFact;
