import assert from 'node:assert/strict';
import { conductorText } from '../../src/functions';
import { circuitFact } from './circuit-fact';
import { errorOf, inUnit, near, run, stepsOf, textOf } from './sheet';

const field = (fields: string, name: string, unit: string) => inUnit(`x = circuit(${fields})\nx.${name}`, unit);

describe('circuit', () => {
  it('chooses device, conductor and grounding conductor for a load', () => {
    const fields = 'load: 16 A, continuous: yes';
    assert.equal(field(fields, 'ocpd', 'A'), 20);
    assert.equal(textOf(`x = circuit(${fields})\nx.conductor`), '12 AWG Cu THHN');
    assert.equal(textOf(`x = circuit(${fields})\nx.egc`), '12 AWG Cu');
  });

  it('reads written as a block as it does as a call', () => {
    const block = [
      'x = circuit',
      '  load: 3.6 kW',
      '  voltage: 240 V',
      '  length: 90 ft',
      '  conductor: 12 AWG Cu THHN',
    ];
    near(inUnit([...block, 'x.drop'].join('\n'), 'V'), (2 * 15 * 1.98 * 90) / 1000, 1e-12);
  });

  it('takes its current from W by the power factor, and from VA without it', () => {
    near(field('load: 9.2 kVA, voltage: 208 V, phases: 3', 'load_current', 'A'), 9200 / (Math.sqrt(3) * 208), 1e-12);
    near(field('load: 9.2 kW, voltage: 208 V, phases: 3, power_factor: 0.8', 'load_current', 'A'), 31.921, 1e-4);
  });

  it('raises the size for a drop limit, and the grounding conductor with it', () => {
    const fields = 'load: 16 A, continuous: yes, voltage: 120 V, length: 200 ft, drop_limit: 3 %';
    const fact = circuitFact(fields);
    assert.equal(conductorText(fact.conductor), '6 AWG Cu THHN');
    assert.equal(fact.egc && conductorText(fact.egc), '6 AWG Cu');
    assert.equal(fact.drop?.limitGiven, true);
  });

  it('asks 125 % before derating and the load after it', () => {
    const fact = circuitFact('load: 32 A, continuous: yes, bundled: 9, conductor: 8 AWG Cu THHN');
    near(fact.totalAmpacity, 38.5, 1e-12);
    assert.equal(fact.requiredAmpacity, 32);
    assert.match(fact.requiredBecause, /40 A before derating/);
  });

  it('adds up parallel sets and starts them at 1/0 AWG', () => {
    assert.equal(field('load: 380 A, conductor: 3/0 AWG Cu THHN, sets: 2', 'ampacity', 'A'), 400);
    assert.equal(textOf('x = circuit(load: 100 A, sets: 2)\nx.conductor'), '1/0 AWG Cu THHN');
  });

  it('tells what it found to lints', () => {
    const fact = circuitFact('load: 15.7 A, conductor: 10 AWG Cu THHN, ocpd: 25 A');
    assert.equal(fact.kind, undefined);
    assert.equal(fact.continuousGiven, false);
    assert.deepEqual([fact.conductorGiven, fact.ocpdGiven, fact.egcGiven], [true, true, false]);
    assert.deepEqual([fact.smallestOcpd, fact.largestOcpd, fact.smallConductorLimit], [20, 30, 30]);
    assert.equal(fact.drop, undefined);
    assert.equal(fact.edition, 'NEC 2023');
  });

  it('has fields without a value say why', () => {
    const { value } = run('circuit(load: 10 A)');
    assert.ok(value?.kind === 'record');
    const drop = value.fields.get('drop');
    assert.ok(drop?.kind === 'absent');
    assert.match(drop.because, /length/);
  });

  it('shows its steps in order, with table and edition behind every table value', () => {
    const steps = stepsOf('x = circuit(load: 16 A, voltage: 120 V, length: 50 ft)');
    const tables = steps.flatMap((step) => (step.kind === 'table' ? [step] : []));
    assert.deepEqual(
      tables.map((step) => step.source.table),
      [
        'Table 310.16',
        'Table 310.15(B)(1)(1)',
        'Table 310.15(C)(1)',
        'Table 310.16',
        '240.4(D)',
        'Table 250.122',
        'Chapter 9 Table 8',
        'Chapter 9 Table 5',
        'Chapter 9 Table 1 and Note 4',
        'Chapter 9 Table 4',
      ],
    );
    assert.ok(tables.every((step) => step.source.edition === '2023' && step.row.length > 1));
    const assumed = steps.flatMap((step) => (step.kind === 'assumption' ? [step.text] : []));
    assert.deepEqual(assumed, [
      'load taken as not continuous: under three hours',
      'copper taken: conductor and material not given',
      'THHN insulation taken: conductor and insulation not given',
      'terminals not given, 100 A or less: 60 °C',
      'temperature 75 °C taken for the drop: operating temperature of the table',
      'EMT taken for the trade size: raceway not given',
      'raceway holds 2 circuit conductors and the grounding conductor, 12 AWG Cu THHN; no further neutral',
    ]);
    const chosen = steps.flatMap((step) => (step.kind === 'choice' ? [step.because] : []));
    assert.equal(chosen.length, 3);
    assert.match(chosen[0], /standard rating/);
    assert.match(chosen[1], /smallest size that carries 16 A behind a 20 A device/);
    assert.match(chosen[2], /smallest trade size of EMT/);
  });

  it('points its errors at the field', () => {
    const text = 'circuit(load: 10 A, conductor: 12 AWG Cu)';
    const { span } = errorOf(text);
    assert.equal(text.slice(span.start, span.end), '12 AWG Cu');
  });

  const failures: readonly (readonly [fields: string, code: string, message: RegExp])[] = [
    ['voltage: 208 V', 'too-few-givens', /load/],
    ['load: 5 kW', 'too-few-givens', /voltage/],
    ['kind: hvac, load: 20 A', 'too-few-givens', /mca/],
    ['kind: hvac, mca: 20 A', 'too-few-givens', /mocp/],
    ['kind: fire_pump, load: 74.8 A', 'too-few-givens', /locked-rotor/],
    ['kind: fire_pump, load: 26 hp, voltage: 208 V, phases: 3', 'not-in-table', /26 hp/],
    ['kind: tap, load: 30 A, length: 8 ft', 'too-few-givens', /feeder’s device as ocpd/],
    ['kind: tap, ocpd: 400 A, length: 30 ft', 'not-covered', /10 ft and 25 ft/],
    ['kind: transformer, load: 30 kW, voltage: 480 V', 'wrong-power', /rated in VA/],
    ['kind: transformer', 'too-few-givens', /rating as load/],
    ['kind: cord', 'too-few-givens', /load/],
    ['kind: cord, load: 10 A, conductor: 12 AWG Al', 'not-in-table', /cords are of copper/],
    ['kind: welder, load: 40 A, duty: 80 %, welder: resistance', 'not-in-table', /ends below a duty cycle of 80 %/],
    ['load: 10 A, phases: 2', 'not-a-count', /phases/],
    ['load: 10 A, conductor: 12 AWG Cu', 'insulation-missing', /insulation/],
    ['load: 3000 A', 'no-sufficient-size', /parallel/],
    ['load: 9000 A', 'no-standard-size', /split/],
  ];
  for (const [fields, code, message] of failures) {
    it(`circuit(${fields}) says ${code}`, () => {
      const error = errorOf(`circuit(${fields})`);
      assert.equal(error.code, code);
      assert.match(error.message, message);
    });
  }
});
