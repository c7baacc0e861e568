import assert from 'node:assert/strict';
import { createProgram, type Program, type Value } from '../../src/language';
import { fromBase, parseUnit } from '../../src/units';
import { smallLibrary } from './small-library';

/** A program of these cells, named `0`, `1` … in order. */
export function programOf(...texts: readonly string[]): Program {
  const program = createProgram(smallLibrary);
  program.update(texts.map((text, i) => ({ id: String(i), text })));
  return program;
}

/** The value of a text's last statement; any problem fails the test. */
export function valueOf(text: string): Value {
  const program = programOf(text);
  assert.deepEqual(
    program.diagnostics('0').map(({ code, message }) => `${code}: ${message}`),
    [],
    text,
  );
  const value = program.results('0').at(-1)?.value;
  assert.ok(value, text);
  return value;
}

/** A value as a number in the unit that it is shown in, with that unit: `4.5 kW`. */
export function shown(value: Value | undefined): string {
  if (value?.kind === 'object') {
    return value.object.text(value.value);
  }
  if (value?.kind === 'boolean') {
    return value.value === 'cannot tell' ? value.value : value.value ? 'yes' : 'no';
  }
  if (value?.kind === 'list') {
    return `[${value.items.map(shown).join(', ')}]`;
  }
  if (value?.kind === 'absent') {
    return `none: ${value.because}`;
  }
  if (value?.kind !== 'quantity') {
    return value === undefined ? 'nothing' : 'value' in value ? String(value.value) : value.kind;
  }
  const number = fromBase(value.base, value.unit);
  return `${Number(number.toPrecision(12))} ${value.unit.symbol}`.trim();
}

/** The number of a value in a unit of one's own choice. */
export function inUnit(text: string, unitText: string): number {
  const value = valueOf(text);
  const unit = parseUnit(unitText);
  assert.ok(value.kind === 'quantity' && !('problem' in unit));
  assert.equal(value.type.dimension, unit.type.dimension);
  return fromBase(value.base, unit);
}

/** All that a program says, as plain text, to compare one program with another. */
export function told(program: Program, cells: readonly string[]): string[] {
  const replacer = (_: string, value: unknown) =>
    value instanceof Map ? [...value] : typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;
  return cells.map((cell) =>
    JSON.stringify(
      {
        results: program.results(cell).map(({ name, kind, value, verdict, label, missing }) => ({
          name,
          kind,
          value,
          verdict,
          label,
          missing: missing && [...missing].sort(),
        })),
        diagnostics: program.diagnostics(cell),
      },
      replacer,
    ),
  );
}
