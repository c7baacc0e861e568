import assert from 'node:assert/strict';
import type { RacewayFact } from '../../src/functions';
import { errorOf, inUnit, near, run, valueOf } from './sheet';

const wires = (...groups: readonly (readonly [count: number, conductor: string])[]) =>
  `[${groups.flatMap(([count, conductor]) => Array<string>(count).fill(conductor)).join(', ')}]`;

function tradeSize(text: string, edition?: string): string {
  const value = valueOf(text, edition);
  assert.ok(value.kind === 'text', text);
  return value.value;
}

const racewayOf = (fields: string) => tradeSize(`x = circuit(${fields})\nx.raceway`);

const factOf = (text: string): RacewayFact => {
  const fact = run(text)
    .calls.flatMap((call) => call.facts)
    .find(({ about }) => about === 'raceway');
  assert.ok(fact, text);
  return fact as RacewayFact;
};

describe('raceway_for', () => {
  // Source: steel-raceway industry Q&A, using the fill tables: 0.4171 in², trade size 1-1/4.
  it('takes mixed conductors together', () => {
    const mixed = wires([3, '12 AWG Cu THWN'], [4, '10 AWG Cu THWN'], [8, '8 AWG Cu THWN']);
    assert.equal(tradeSize(`raceway_for(${mixed})`), '1-1/4');
    near(factOf(`x = raceway_for(${mixed})`).areaIn2, 0.4171, 1e-12);
  });

  // Source: electrician math practice test, 132 of 14 AWG and 5 of 12 AWG THWN; answer recomputed from Tables 4 and 5.
  it('goes a size up where the area is missed by 0.4 %', () =>
    assert.equal(tradeSize(`raceway_for(${wires([132, '14 AWG Cu THWN'], [5, '12 AWG Cu THWN'])})`), '2-1/2'));

  // Source: journeyman study guide practice question, three 2 AWG, four 6 AWG, three 10 AWG THHN.
  it('chooses 1-1/2 for 0.6135 in²', () =>
    assert.equal(
      tradeSize(`raceway_for(${wires([3, '2 AWG Cu THHN'], [4, '6 AWG Cu THHN'], [3, '10 AWG Cu THHN'])})`),
      '1-1/2',
    ));

  // Source: NEC Annex C Table C.1 (memory): sixteen 12 AWG THHN in trade size 3/4 EMT.
  it('holds sixteen 12 AWG THHN in 3/4 EMT and no seventeenth', () => {
    assert.equal(tradeSize(`raceway_for(${wires([16, '12 AWG Cu THHN'])})`), '3/4');
    assert.equal(tradeSize(`raceway_for(${wires([17, '12 AWG Cu THHN'])})`), '1');
  });

  it('allows 53 % for one, 31 % for two, 40 % for more and 60 % in a nipple', () => {
    const limits = [wires([1, '4 AWG Cu THHN']), wires([2, '4 AWG Cu THHN']), wires([3, '4 AWG Cu THHN'])].map(
      (list) => factOf(`x = raceway_for(${list})`).limitPercent,
    );
    assert.deepEqual(limits, [53, 31, 40]);
    const many = wires([9, '10 AWG Cu THHN']);
    assert.equal(tradeSize(`raceway_for(${many})`), '3/4');
    assert.equal(tradeSize(`raceway_for(${many}, nipple: yes)`), '3/4');
    assert.equal(factOf(`x = raceway_for(${many}, nipple: yes)`).limitPercent, 60);
  });

  it('takes a bare grounding conductor by the conductor table', () => {
    const bare = factOf(`x = raceway_for(${wires([3, '1/0 AWG Cu THHN'], [1, '6 AWG Cu bare'])})`);
    near(bare.areaIn2, 3 * 0.1855 + 0.027, 1e-12);
  });

  // Source: NEC Chapter 9 Table 1, informational note: 2.8 to 3.2.
  it('warns of three conductors that may jam', () => {
    const { tradeSize: size, jamRatio } = factOf(`x = raceway_for(${wires([3, '3/0 AWG Cu THHN'])})`);
    assert.equal(size, '1-1/2');
    near(jamRatio ?? 0, 1.61 / 0.584, 1e-12);
    const jams = factOf(`x = raceway_for(${wires([3, '4/0 AWG Cu THHN'])})`);
    near(jams.jamRatio ?? 0, 2.067 / 0.642, 1e-12);
    const steps = run(`x = raceway_fill(${wires([3, '350 kcmil Cu THHN'])}, RMC, 2-1/2)`).steps;
    assert.ok(steps.some((step) => step.kind === 'formula' && /may jam at a bend/.test(step.remark ?? '')));
  });

  it('refuses what has no outside size', () => {
    assert.match(errorOf('raceway_for([12 AWG Cu])').message, /does not say its insulation.*12 AWG Cu THHN, or bare/);
    assert.match(errorOf('raceway_for([12 AWG Cu NM-B])').message, /no 12 AWG NM-B.*maker/);
    assert.match(
      errorOf(`raceway_for(${wires([40, '500 kcmil Cu THHN'])})`).message,
      /No trade size of EMT.*part them/,
    );
  });
});

describe('raceway_fill', () => {
  // Source: trades math study guide: four 12 AWG THHN are 0.0532 in² of 0.533 in².
  it('divides the conductors by the whole area', () =>
    near(inUnit(`raceway_fill(${wires([4, '12 AWG Cu THHN'])}, EMT, 3/4)`, '%'), (0.0532 / 0.533) * 100, 1e-12));

  it('reads a trade size however it is written', () => {
    const list = wires([3, '1/0 AWG Cu THHN']);
    for (const size of ['1-1/4', '1-1/4 in', '1 - 1 / 4 in', '"1-1/4"', '"1 1/4 in"', '35', '"35"']) {
      near(inUnit(`raceway_fill(${list}, EMT, ${size})`, '%'), ((3 * 0.1855) / 1.496) * 100, 1e-12, size);
    }
    near(inUnit(`raceway_fill(${list}, EMT, raceway_for(${list}))`, '%'), ((3 * 0.1855) / 1.496) * 100, 1e-12);
    assert.match(errorOf(`raceway_fill(${list}, EMT, 5/8)`).message, /EMT has no trade size 5\/8; it has 1\/2, 3\/4/);
  });
});

describe('the raceway of a circuit', () => {
  it('holds its conductors and the grounding conductor', () => {
    assert.equal(racewayOf('load: 16 A, continuous: yes'), '1/2');
    assert.equal(racewayOf('load: 180 A, phases: 3, raceway: PVC'), '2');
    near(
      factOf('x = circuit(load: 180 A, phases: 3, raceway: PVC, ocpd: 200 A, conductor: 3/0 AWG Cu THHN)').areaIn2,
      3 * 0.2679 + 0.0507,
      1e-12,
    );
  });

  // Source: NEC 250.122(F): a full-sized grounding conductor in each raceway of a parallel set.
  it('is one for each parallel set', () => {
    const fact = factOf('x = circuit(load: 380 A, phases: 3, sets: 2, conductor: 3/0 AWG Cu THHN, ocpd: 400 A)');
    near(fact.areaIn2, 3 * 0.2679 + 0.0973, 1e-12);
  });

  // Two lines and the neutral of 2/0 THHN, grounding conductor 6 AWG for 200 A: NEC Chapter 9 Table 5.
  it('of a dwelling service holds its neutral too', () => {
    const fact = factOf('x = circuit(kind: dwelling_service, load: 180 A, voltage: 240 V, ocpd: 200 A)');
    near(fact.areaIn2, 3 * 0.2223 + 0.0507, 1e-12);
  });

  it('says why there is none', () => {
    const because = (fields: string) => {
      const value = valueOf(`circuit(${fields})`);
      const field = value.kind === 'record' ? value.fields.get('raceway') : undefined;
      assert.ok(field?.kind === 'absent', fields);
      return field.because;
    };
    assert.match(because('load: 16 A, conductor: 12 AWG Cu NM-B'), /is a cable/);
    assert.match(because('load: 16 A, raceway: steel'), /name the type/);
    assert.match(because('load: 16 A, bundled: 9'), /raceway_for/);
  });
});
