import assert from 'node:assert/strict';
import { type CallRecord, createProgram, type Step, type Value } from '../../src/language';
import { createLibrary } from '../../src/library';
import type { Diagnostic } from '../../src/text';
import { fromBase, parseUnit } from '../../src/units';

/** What a one-cell sheet came to. */
export interface Ran {
  readonly value: Value | undefined;
  readonly diagnostics: readonly Diagnostic[];
  readonly calls: readonly CallRecord[];
  /** How the last statement's call came to its result. */
  readonly steps: readonly Step[];
}

/** Runs a sheet through the real language and library; `value` is what its last statement gives. */
export function run(text: string, edition?: string): Ran {
  const library = createLibrary({ edition });
  assert.ok(!('problem' in library));
  const program = createProgram(library);
  program.update([{ id: 'cell', text }]);
  const results = program.results('cell');
  return {
    value: results.at(-1)?.value,
    diagnostics: program.diagnostics('cell'),
    calls: results.flatMap((result) => result.calls()),
    steps: (results.at(-1)?.trace().steps ?? []).flatMap((step) => (step.kind === 'call' ? step.steps : [])),
  };
}

/** The last statement's value; any error fails the test. */
export function valueOf(text: string, edition?: string): Value {
  const { value, diagnostics } = run(text, edition);
  assert.deepEqual(
    diagnostics.filter((d) => d.severity === 'error').map((d) => d.message),
    [],
    text,
  );
  assert.ok(value, text);
  return value;
}

/** The last statement's value as a number in a unit. */
export function inUnit(text: string, unit: string, edition?: string): number {
  const value = valueOf(text, edition);
  const wanted = parseUnit(unit);
  assert.ok(value.kind === 'quantity' && !('problem' in wanted), text);
  assert.equal(value.type.dimension, wanted.type.dimension, `${text} in ${unit}`);
  return fromBase(value.base, wanted);
}

/** The steps of a sheet's last call. */
export const stepsOf = (text: string): readonly Step[] => run(text).steps;

/** The text of an object such as a conductor. */
export function textOf(text: string, edition?: string): string {
  const value = valueOf(text, edition);
  assert.ok(value.kind === 'object', text);
  return value.object.text(value.value as never);
}

/** The one error of a sheet. */
export function errorOf(text: string, edition?: string): Diagnostic {
  const errors = run(text, edition).diagnostics.filter((d) => d.severity === 'error');
  assert.equal(errors.length, 1, `${text}: ${errors.map((d) => d.message).join('; ') || 'no error'}`);
  return errors[0];
}

/** Equal within a relative tolerance. */
export function near(actual: number, expected: number, relative: number, what = ''): void {
  assert.ok(
    Math.abs(actual - expected) <= relative * Math.abs(expected),
    `${what} ${actual} is not within ${relative * 100} % of ${expected}`,
  );
}
