import assert from 'node:assert/strict';
import type { Maths, Step } from '../../../src/language';
import { programOf, shown } from '../run-cells';

/** A formula as text with every bracket, to see its shape. */
function written(maths: Maths): string {
  switch (maths.kind) {
    case 'value':
      return `{${shown(maths.value)}}`;
    case 'literal':
      return `${maths.number} ${maths.unit ?? ''}`.trim();
    case 'symbol':
      return [maths.symbol.base, maths.symbol.subscript].filter(Boolean).join('_');
    case 'name':
      return maths.name;
    case 'binary':
      return `(${written(maths.left)} ${maths.operator} ${written(maths.right)})`;
    case 'unary':
      return `(${maths.operator} ${written(maths.operand)})`;
    case 'call':
      return `${maths.name}(${maths.arguments.map(({ name, value }) => `${name ? `${name}: ` : ''}${written(value)}`).join(', ')})`;
    case 'if':
      return `if ${written(maths.condition)} then ${written(maths.then)} else ${written(maths.otherwise)}`;
    default:
      return maths.kind;
  }
}

const stepsOf = (text: string): readonly Step[] => programOf(text).results('0').at(-1)!.trace().steps;

function formula(text: string): readonly (string | undefined)[] {
  const step = stepsOf(text).at(-1);
  assert.ok(step?.kind === 'formula');
  return [
    step.symbol && [step.symbol.base, step.symbol.subscript].filter(Boolean).join(' sub '),
    written(step.formula),
    step.substituted && written(step.substituted),
    shown(step.result),
    step.remark,
  ];
}

describe('shown working', () => {
  it('has the formula as written, the same with its numbers, and the result', () => {
    assert.deepEqual(formula('U = 240 V\nR = 12 Ω\nI_load = U / (2 * R) in mA // half'), [
      'I sub load',
      '(U / (2 * R))',
      '({240 V} / (2 * {12 Ω}))',
      '10000 mA',
      'half',
    ]);
  });

  it('keeps the digits of a literal, and repeats nothing where nothing is put in', () => {
    assert.deepEqual(formula('supply = 240.0 V'), ['supply', '240.0 V', undefined, '240 V', undefined]);
  });

  it('takes a long first word as the whole name', () => {
    assert.equal(formula('drop_limit = 3 %')[0], 'drop_limit');
  });

  it('a comment on the line above is not the remark of the line', () => {
    assert.equal(formula('// heading\nx = 2')[4], undefined);
  });

  it('tells what a call did before the line that uses it', () => {
    const [assumed, call, line] = stepsOf('w = weight(10 AWG red, count: 3)');
    assert.deepEqual(assumed, { kind: 'assumption', text: 'round' });
    assert.ok(call.kind === 'call' && line.kind === 'formula');
    assert.deepEqual(call.steps, [{ kind: 'assumption', text: 'glass' }]);
    assert.deepEqual(
      call.arguments.map(({ name, value, given }) => [name, shown(value), given]),
      [
        ['bead', '10 AWG red', true],
        ['count', '3', true],
      ],
    );
    assert.equal(written(line.formula), 'weight({10 AWG red}, count: 3)');
  });

  it('says which arguments were defaults', () => {
    const [call] = stepsOf('drop(5 A, long: yes)');
    assert.ok(call.kind === 'call');
    assert.deepEqual(
      call.arguments.map(({ name, value, given }) => `${name} ${shown(value)} ${given}`),
      ['current 5 A true', 'metal Cu false', 'long yes true'],
    );
  });

  it('shows a comparison with its margin, positive when it passes', () => {
    const margins = ['check 3 V <= 5 V', 'check 3 V >= 5 V', 'check 20 °C < 30 °C'].map((text) => {
      const [step] = stepsOf(text);
      assert.ok(step.kind === 'comparison');
      return shown(step.margin);
    });
    assert.deepEqual(margins, ['2 V', '-2 V', '10 Δ°C']);
  });

  it('a record has its call and no formula line', () => {
    assert.deepEqual(
      stepsOf('d = drop\n  current: 5 A').map(({ kind }) => kind),
      ['call'],
    );
  });

  it('a statement without value has no steps', () => {
    assert.deepEqual(stepsOf('x = 1 / 0'), []);
  });
});

describe('calls as lints read them', () => {
  it('carry arguments with their places, facts and the result', () => {
    const text = 'w = weight(10 AWG red)';
    const [result] = programOf(text).results('0');
    const [call] = result.calls();
    assert.equal(call.function, 'weight');
    assert.equal(text.slice(call.nameSpan.start, call.nameSpan.end), 'weight');
    const bead = call.arguments.get('bead')!;
    const count = call.arguments.get('count')!;
    assert.deepEqual([text.slice(bead.span.start, bead.span.end), bead.given], ['10 AWG red', true]);
    assert.deepEqual([text.slice(count.span.start, count.span.end), count.given], ['weight', false]);
    assert.deepEqual(call.facts, [{ about: 'weight' }]);
    assert.equal(shown(call.result), '2 kg');
    assert.equal(result.calls(), result.calls());
  });

  it('a failed call is recorded without result', () => {
    const [call] = programOf('drop(200 A)').results('0')[0].calls();
    assert.equal(call.result, undefined);
  });

  it('a call inside a function of the sheet is told at its own place', () => {
    const program = programOf('f(x) = drop(x, long: yes).volts', 'f(5 A)');
    const [call] = program.results('1')[0].calls();
    assert.equal(call.cell, '0');
    assert.equal(shown(call.arguments.get('current')!.value), '5 A');
  });

  it('shows what a function of the sheet did, and only in the branch that was taken', () => {
    const told = (text: string) =>
      stepsOf(text).flatMap((step) =>
        step.kind === 'call'
          ? [
              `${step.function}(${step.arguments.map(({ name, value }) => `${name}: ${shown(value)}`).join(', ')})`,
              ...step.steps.map((inner) =>
                inner.kind === 'formula' ? written(inner.substituted ?? inner.formula) : '',
              ),
              shown(step.result),
            ]
          : [],
      );
    const sheet = 'loss(I, R) = I ^ 2 * R\n';
    const [loss] = ['loss(I: 20 A, R: 0.24 Ω)'];
    assert.deepEqual(told(`${sheet}w = loss(20 A, 0.24 Ω) * 2`), [loss, '(({20 A} ^ 2) * {0.24 Ω})', '96 W']);
    assert.deepEqual(told(`${sheet}w = if 1 > 2 then loss(1 A, 1 Ω) else loss(20 A, 0.24 Ω)`).slice(0, 1), [loss]);
    assert.deepEqual(
      told(`${sheet}twice(I) = loss(I, 1 Ω) + loss(I, 1 Ω)\nw = twice(2 A)`).filter((line) => line.includes('(I')),
      ['loss(I: 2 A, R: 1 Ω)', 'loss(I: 2 A, R: 1 Ω)', 'twice(I: 2 A)'],
    );
  });
});
