import assert from 'node:assert/strict';
import { evaluateSheet, fromBase, parseUnit, rules, type SheetEvaluation, type Value } from '../../src/core';
import { showValue } from '../../src/display';
import type { Example, Expectation } from './example';

type Numeric = Extract<Expectation, { unit: string }>;
const lintIds = new Set<string>(rules.map((rule) => rule.id));

/** Name of the statement that asks for an expectation's value. */
const answerName = (index: number): string => `answer_${index + 1}`;

/** A limit or a standard uncertainty is read from the value itself, so its unit is not asked for in the sheet. */
const question = (expected: Exclude<Expectation, { check: string }>): string =>
  'text' in expected || expected.unit === '' ? expected.name : `(${expected.name}) in ${expected.unit}`;

/** An example as the file that a person would have: front matter, and one cell with its lines and what is asked of them. */
function sheetOf(example: Example): string {
  const asked = example.expect.flatMap((expected, index) =>
    'name' in expected ? [`${answerName(index)} = ${question(expected)}`] : [],
  );
  const cell = ['```kft', ...example.sheet, ...asked, '```'];
  return ['---', `code: ${example.code ?? 'NEC 2023'}`, '---', '', ...cell, ''].join('\n');
}

/** Runs an example from its file's text to values, verdicts and findings; what the language itself rejects fails the test. */
export function runExample(example: Example): SheetEvaluation {
  const sheet = evaluateSheet(sheetOf(example));
  assert.deepEqual(
    sheet.diagnostics
      .filter(({ severity, code }) => severity === 'error' && !lintIds.has(code))
      .map(({ code, message, line }) => `${code}, line ${line}: ${message}`),
    [],
    sheetOf(example),
  );
  return sheet;
}

/** Half a unit of the last digit that is printed: `4.99` stands for 4.985 to 4.995, `1.1e3` for 1050 to 1150. */
export function halfLastDigit(printed: string): number {
  const [, , decimals = '', exponent = '0'] = /^(-?\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(printed)!;
  return 0.5 * 10 ** (Number(exponent) - decimals.length);
}

/** Half a digit may itself end in a half: 0.285 printed as 0.29. This much beyond it is the last bits of a float. */
const lastBits = 1e-9;

const agrees = (actual: number, printed: string): boolean =>
  Math.abs(actual - Number(printed)) <= halfLastDigit(printed) * (1 + lastBits);

function numberOf(value: Value | undefined, expected: Numeric): number {
  const unit = parseUnit(expected.unit);
  assert.ok(value?.kind === 'quantity' && !('problem' in unit), `${expected.name} is not a quantity`);
  assert.equal(value.type.dimension, unit.type.dimension, `${expected.name} in ${expected.unit}`);
  if (expected.of === undefined) {
    return fromBase(value.base, unit);
  }
  const doubt = value.uncertainty?.[expected.of];
  assert.ok(doubt !== undefined, `${expected.name} has no ${expected.of}`);
  return doubt / unit.factor;
}

/** Holds one expectation against what its sheet came to. */
export function assertExpected(sheet: SheetEvaluation, expected: Expectation, index: number): void {
  if ('check' in expected) {
    const check = sheet.checks.find(({ text }) => text === expected.check);
    assert.equal(check?.verdict, expected.verdict, expected.check);
    return;
  }
  const value = sheet.values.get(answerName(index));
  if ('text' in expected) {
    assert.ok(value, `${expected.name} has no value`);
    assert.equal(showValue(value), expected.text);
    return;
  }
  const actual = numberOf(value, expected);
  if ('published' in expected && expected.ours !== undefined) {
    assert.ok(agrees(actual, expected.ours), `${expected.name}: ${actual}, expected ${expected.ours} ${expected.unit}`);
    assert.ok(!agrees(actual, expected.published), `${expected.name}: ${actual} is the published figure after all`);
    return;
  }
  const printed = 'published' in expected ? expected.published : expected.computed;
  assert.ok(agrees(actual, printed), `${expected.name}: ${actual}, expected ${printed} ${expected.unit}`);
}

/** What an expectation holds, in a few words. */
export function titleOf(expected: Expectation): string {
  if ('check' in expected) {
    return `the check “${expected.check}” is ${expected.verdict}`;
  }
  const what = `${'of' in expected && expected.of ? `${expected.of} of ` : ''}${expected.name}`;
  if ('text' in expected) {
    return `${what} is ${expected.text}`;
  }
  if ('computed' in expected) {
    return `${what} is ${expected.computed} ${expected.unit} (computed)`;
  }
  return expected.ours === undefined
    ? `${what} is ${expected.published} ${expected.unit}`
    : `${what} is ${expected.ours} ${expected.unit}, not the published ${expected.published}`;
}
