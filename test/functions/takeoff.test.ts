import assert from 'node:assert/strict';
import { errorOf, inUnit, near, run, valueOf } from './sheet';

const schedule = [
  'runs = schedule',
  '  | tag | conductor      | length | pulls |',
  '  | --- | ---            | ---    | ---   |',
  '  | A   | 12 AWG Cu THHN | 85 ft  | 3     |',
  '  | B   | 10 AWG Cu THHN | 60 ft  | 4     |',
  '  | C   | 12 AWG Cu THHN | 40 ft  | 3     |',
].join('\n');

const itemsOf = (text: string) => {
  const value = valueOf(text);
  assert.ok(value.kind === 'list', text);
  return value.items.map((item) =>
    item.kind === 'quantity' ? item.base : item.kind === 'object' ? item.object.text(item.value as never) : undefined,
  );
};

describe('takeoff', () => {
  const job = `${schedule}\njob = takeoff(runs.conductor, runs.length, counts: runs.pulls, waste: 10 %, make_up: 4 ft)`;

  // 3 × (85 + 4) + 3 × (40 + 4) = 399 ft; 4 × (60 + 4) = 256 ft; each and 10 %.
  it('adds up a schedule’s runs by size, smallest first', () => {
    assert.deepEqual(itemsOf(`${job}\njob.conductors`), ['12 AWG Cu THHN', '10 AWG Cu THHN']);
    const [twelve, ten] = itemsOf(`${job}\njob.lengths`);
    near(Number(twelve), 399 * 1.1 * 0.3048, 1e-12);
    near(Number(ten), 256 * 1.1 * 0.3048, 1e-12);
    near(inUnit(`${job}\njob.length`, 'ft'), (399 + 256) * 1.1, 1e-12);
  });

  it('counts full reels', () => {
    const reels = 'job = takeoff([12 AWG Cu THHN], [500 ft], counts: [3], reel: 500 ft)\njob.reels';
    assert.deepEqual(itemsOf(reels), [3]);
    assert.deepEqual(itemsOf(reels.replace('500 ft]', '500.5 ft]')), [4]);
  });

  it('costs each by the price list, in its own currency', () => {
    const priced = (prices: string) =>
      `job = takeoff([12 AWG Cu THHN, 10 AWG Cu THHN], [100 m, 50 m], priced: [10 AWG Cu THHN, 12 AWG Cu THHN], prices: ${prices})`;
    near(inUnit(`${priced('[1.2 EUR/m, 0.8 EUR/m]')}\njob.cost`, 'EUR'), 60 + 80, 1e-12);
    near(inUnit(`${priced('[300 USD/kft, 200 USD/kft]')}\njob.cost`, 'USD'), (300 * 50 + 200 * 100) / 304.8, 1e-12);
    const length = valueOf(`${priced('[1.2 EUR/m, 0.8 EUR/m]')}\njob.length`);
    assert.ok(length.kind === 'quantity' && length.unit.symbol === 'm');
  });

  it('carries the doubt of a length', () => {
    const value = valueOf('job = takeoff([12 AWG Cu THHN], [500 ft ± 5 ft], counts: [3])\njob.length');
    assert.ok(value.kind === 'quantity');
    near(value.uncertainty?.limits ?? 0, 15 * 0.3048, 1e-6);
  });

  it('says that no waste was added, and works each size out', () => {
    const { steps } = run('job = takeoff([12 AWG Cu THHN], [500 ft])');
    assert.ok(steps.some((step) => step.kind === 'assumption' && /no waste/.test(step.text)));
    assert.ok(steps.some((step) => step.kind === 'formula' && step.remark === '12 AWG Cu THHN'));
  });

  const failures: readonly (readonly [call: string, message: RegExp])[] = [
    ['takeoff([12 AWG Cu THHN], [1 ft, 2 ft])', /2 items for 1 conductors/],
    ['takeoff([12 AWG Cu THHN], [1 ft], counts: [1.5])', /write a whole number/],
    ['takeoff([12 AWG Cu THHN], [1 ft], priced: [12 AWG Cu THHN])', /needs both/],
    ['takeoff([12 AWG Cu], [1 ft], priced: [10 AWG Cu], prices: [90 USD/kft])', /no 12 AWG Cu: add it/],
    ['takeoff([12 AWG Cu THHN], [0 ft - 1 ft])', /below 0 ft/],
  ];
  for (const [call, message] of failures) {
    it(`${call} is refused`, () => assert.match(errorOf(call).message, message));
  }
});
