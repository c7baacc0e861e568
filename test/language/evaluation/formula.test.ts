import assert from 'node:assert/strict';
import { type Call, defineFormula, type Step } from '../../../src/language';
import { shown } from '../run-cells';

function call(steps?: Step[]): Call {
  const nothing = () => undefined;
  return {
    watched: steps !== undefined,
    shown: steps !== undefined,
    settings: undefined,
    step: (step) => void steps?.push(step),
    assume: nothing,
    choose: nothing,
    table: nothing,
    fact: nothing,
    given: () => true,
  };
}

describe('formulas that functions share with the page', () => {
  const drop = defineFormula({
    symbol: 'U_drop',
    text: '2 * I * r * L',
    units: { I: 'A', r: 'Ω/kft', L: 'ft' },
    symbols: { r: 'r_75' },
    result: 'V',
  });

  it('take and give numbers in the declared units', () => {
    assert.ok(Math.abs(drop(call(), { I: 10, r: 1.98, L: 100 }) - 3.96) < 1e-12);
  });

  it('show what ran: symbols, values and result', () => {
    const steps: Step[] = [];
    drop(call(steps), { I: 10, r: 1.98, L: 100 });
    const [step] = steps;
    assert.ok(step.kind === 'formula' && step.formula.kind === 'binary' && step.substituted?.kind === 'binary');
    assert.deepEqual(step.symbol, { base: 'U', subscript: 'drop' });
    assert.deepEqual(step.formula.right, { kind: 'symbol', symbol: { base: 'L' } });
    const { left } = step.formula;
    assert.ok(left.kind === 'binary');
    assert.deepEqual(left.right, { kind: 'symbol', symbol: { base: 'r', subscript: '75' } });
    const { right } = step.substituted;
    assert.ok(right.kind === 'value');
    assert.equal(shown(right.value), '100 ft');
    assert.equal(shown(step.result), '3.96 V');
  });

  it('hold temperatures on a scale apart from differences', () => {
    const hot = defineFormula({
      symbol: 'R_2',
      text: 'R_1 * (1 + alpha * (T_2 - T_1))',
      units: { R_1: 'Ω', alpha: '1/°C', T_1: '°C', T_2: '°C' },
      result: 'Ω',
    });
    // The annealed-copper coefficient at 20 °C, 0.00393 per °C (IEC 60028).
    assert.ok(Math.abs(hot(call(), { R_1: 1, alpha: 0.00393, T_1: 20, T_2: 75 }) - 1.21615) < 1e-12);
  });

  it('may lead from one kind of power to another', () => {
    const real = defineFormula({ symbol: 'P', text: 'S * f', units: { S: 'VA', f: '' }, result: 'kW' });
    assert.ok(Math.abs(real(call(), { S: 5000, f: 0.8 }) - 4) < 1e-12);
  });

  it('refuse at first use a text that does not give its result', () => {
    const wrong = defineFormula({ symbol: 'U', text: 'I * I', units: { I: 'A' }, result: 'V' });
    assert.throws(() => wrong(call(), { I: 1 }), /gives a quantity/);
    const unread = defineFormula({ symbol: 'U', text: 'I * (', units: { I: 'A' }, result: 'V' });
    assert.throws(() => unread(call(), { I: 1 }), /The formula/);
  });

  it('give no finite number where they have no value', () => {
    const ratio = defineFormula({ symbol: 'k', text: 'a / b', units: { a: 'V', b: 'V' }, result: '' });
    assert.ok(!Number.isFinite(ratio(call(), { a: 1, b: 0 })));
  });
});
