import assert from 'node:assert/strict';
import { showValue } from '../../src/display';
import type { Value } from '../../src/language';
import { derived, quantity, uncertain } from './values';

describe('showValue', () => {
  it('shows quantities with their unit, and takes a prefix only where nobody chose one', () => {
    assert.equal(showValue(quantity(17.4454, 'A')), '17.45 A');
    assert.equal(showValue(quantity(9200, 'W')), '9200 W');
    assert.equal(showValue(derived(9200, 'W')), '9.2 kW');
    assert.equal(showValue(derived(0.012, 'Ω')), '12 mΩ');
    assert.equal(showValue(quantity(3, '%')), '3 %');
    assert.equal(showValue(quantity(30, '°')), '30°');
    assert.equal(showValue(quantity(2, '')), '2');
    assert.equal(showValue(quantity(68, '°F')), '68 °F');
    assert.equal(showValue(quantity(1.98, 'Ω/kft')), '1.98 Ω/kft');
    assert.equal(showValue(quantity(Number.POSITIVE_INFINITY, 'A')), '∞ A');
  });

  // Source: JCGM 100 (GUM), 7.2.6: at most two significant digits of uncertainty, the estimate to the same place.
  it('shows an uncertainty to two digits and the value to the same place', () => {
    assert.equal(showValue(uncertain(15.7154, 'A', 15.56, 15.87)), '15.72 A ± 0.15 A');
    assert.equal(showValue(uncertain(15.7154, 'A', 15.5554, 15.8754)), '15.72 A ± 0.16 A');
    assert.equal(showValue(uncertain(15.7, 'A', 15.5, 15.9)), '15.70 A ± 0.20 A');
    assert.equal(showValue(uncertain(1543, 'ft', 1388, 1698)), '1540 ft ± 160 ft');
    assert.equal(showValue(uncertain(10, 'Ω', 9.9004, 10.0996)), '10.00 Ω ± 0.10 Ω');
    assert.equal(showValue(uncertain(0, 'V', -0.2, 0.2)), '0.00 V ± 0.20 V');
    assert.equal(showValue(uncertain(1.5e-9, 'F', 1.4e-9, 1.6e-9)), '1.50 × 10⁻⁹ F ± 0.10 × 10⁻⁹ F');
    assert.equal(showValue(uncertain(20, '°C', 19.5, 20.5)), '20.00 °C ± 0.50 °C');
  });

  it('shows both ends where they lie unevenly, and one where there is one', () => {
    assert.equal(showValue(uncertain(10, 'A', 9.8, 10.6)), '10.00 A (9.80 A to 10.60 A)');
    assert.equal(showValue(uncertain(40, 'MΩ', 40, Number.POSITIVE_INFINITY)), 'at least 40 MΩ');
    assert.equal(showValue(uncertain(2, 'A', Number.NEGATIVE_INFINITY, 2)), 'at most 2 A');
  });

  it('shows everything else on one line', () => {
    const text = (value: Value) => showValue(value);
    assert.equal(text({ kind: 'boolean', value: true }), 'yes');
    assert.equal(text({ kind: 'boolean', value: false }), 'no');
    assert.equal(text({ kind: 'boolean', value: 'cannot tell' }), 'cannot tell');
    assert.equal(text({ kind: 'choice', value: 'EMT' }), 'EMT');
    assert.equal(text({ kind: 'text', value: 'two\nlines\u0007' }), 'two lines ');
    assert.equal(text({ kind: 'list', items: [quantity(1, 'A'), quantity(2, 'A')] }), '[1 A, 2 A]');
    assert.equal(text({ kind: 'absent', because: 'no rated voltage' }), 'none (no rated voltage)');
    assert.equal(text({ kind: 'meter', terms: [quantity(0.8, '%'), quantity(5, '')] }), 'meter ± (0.8 % + 5)');
    const object = { name: 'box', described: 'a box', text: (size: unknown) => `box of ${size}` };
    assert.equal(text({ kind: 'object', object, value: 3 }), 'box of 3');
    const fields = new Map<string, Value>([
      ['current', quantity(17.5, 'A')],
      ['ok', { kind: 'boolean', value: true }],
    ]);
    assert.equal(text({ kind: 'record', name: 'heater', fields }), 'current: 17.5 A, ok: yes');
  });

  it('shows a long list by its first items, and the same things in a row as a bundle', () => {
    const list = (items: readonly Value[]): Value => ({ kind: 'list', items });
    const text = (value: string): Value => ({
      kind: 'object',
      object: { name: 'thing', described: 'a thing', text: String },
      value,
    });
    assert.equal(showValue(list([quantity(1, 'A'), quantity(2, 'A')])), '[1 A, 2 A]');
    const long = Array.from({ length: 20 }, (_, i) => quantity(i, 'A'));
    assert.equal(showValue(list(long)), '[0 A, 1 A, 2 A, 3 A, 4 A, …] (20 items)');
    assert.equal(showValue(list([text('a'), text('a'), text('a')])), '3 × (a)');
    assert.equal(showValue(list([text('a'), text('a'), text('b')])), '[2 × (a), b]');
    assert.equal(showValue(list([text('a')])), '[a]');
  });
});
