import assert from 'node:assert/strict';
import { createProgram, type Step } from '../../src/language';
import { createLibrary } from '../../src/library';
import { errorOf, inUnit, near } from './sheet';

/** The last statement of a sheet whose units are SI: its value, and the steps of its call. */
function metric(text: string) {
  const library = createLibrary({ system: 'SI' });
  assert.ok(!('problem' in library));
  const program = createProgram(library);
  program.update([{ id: 'cell', text }]);
  const result = program.results('cell').at(-1);
  const steps = (result?.trace().steps ?? []).flatMap((step): readonly Step[] =>
    step.kind === 'call' ? step.steps : [],
  );
  assert.ok(
    result?.value,
    program
      .diagnostics('cell')
      .map(({ message }) => message)
      .join('; '),
  );
  return { value: result.value, steps };
}

const unitsIn = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap((step) =>
    step.kind === 'formula' && step.result.kind === 'quantity' ? [step.result.unit.symbol] : [],
  );

describe('a sheet in SI units', () => {
  // Source: IEC 60228 Table 2, 2.5 mm² copper: 7.41 Ω/km at 20 °C; IEC 60028: 0.00393 per °C.
  it('takes mm² by IEC 60228 and shows its working in metres', () => {
    const { value, steps } = metric('voltage_drop(2.5 mm² Cu, 16 A, 30 m)');
    assert.ok(value.kind === 'quantity');
    near(value.base, 2 * 16 * 0.00741 * (1 + 0.00393 * 55) * 30, 1e-6);
    assert.deepEqual(unitsIn(steps), ['Ω/km', 'V']);
    const table = steps.find((step) => step.kind === 'table');
    assert.equal(table?.kind === 'table' && table.source.standard, 'IEC 60228');
  });

  it('gives lengths in metres, whichever world the conductor is from', () => {
    for (const conductor of ['2.5 mm² Cu', '12 AWG Cu solid']) {
      const { value, steps } = metric(`longest_run(${conductor}, 16 A, 6.9 V)`);
      assert.ok(value.kind === 'quantity' && value.unit.symbol === 'm', conductor);
      assert.ok(unitsIn(steps).includes('m'), conductor);
    }
  });

  it('chooses sizes in mm² for a drop', () => {
    const { value } = metric('conductor_for_drop(16 A, 30 m, 6.9 V)');
    assert.ok(value.kind === 'object');
    assert.equal(value.object.text(value.value as never), '4 mm² Cu');
  });

  it('works with both worlds in one sheet', () => {
    const { value } = metric('voltage_drop(2.5 mm² Cu, 16 A, 30 m) + voltage_drop(12 AWG Cu solid, 16 A, 30 m)');
    assert.ok(value.kind === 'quantity');
    const us = inUnit('voltage_drop(2.5 mm² Cu, 16 A, 30 m) + voltage_drop(12 AWG Cu solid, 16 A, 30 m)', 'V');
    near(value.base, us, 1e-12);
  });
});

describe('what the tables lack for sizes in mm²', () => {
  it('is said where an ampacity is asked', () =>
    assert.match(errorOf('ampacity(2.5 mm² Cu THHN)').message, /bring your standard’s ampacities as a table file/));

  // Resistance alone, 10 mm²: 1.83 Ω/km at 20 °C by IEC 60228; the current comes out high, which the sheet says.
  it('is left out of a fault current, and said', () => {
    const { value, steps } = metric('fault_current_at(5 kA, 400 V, 10 mm² Cu, 20 m)');
    assert.ok(value.kind === 'quantity');
    near(value.base, 5000 / (1 + (Math.sqrt(3) * 5000 * 0.00183 * 20) / 400), 1e-6);
    assert.ok(steps.some((step) => step.kind === 'assumption' && /no reactance/.test(step.text)));
  });
});

describe('the edition', () => {
  it('decides, and the working names it', () => {
    assert.equal(inUnit('ocpd_for(8 A)', 'A', 'NEC 2023'), 10);
    assert.equal(inUnit('ocpd_for(8 A)', 'A', 'NEC 2020'), 15);
    assert.equal(
      inUnit('x = dwelling_load(area: 100 ft², ev_charger: 3 kW)\nx.vehicle_demand', 'VA', 'NEC 2017'),
      3000,
    );
  });

  it('is refused where there are no tables, with the list of those there are', () => {
    const library = createLibrary({ edition: 'NEC 2026' });
    assert.ok('problem' in library);
    assert.match(library.problem, /no tables for NEC 2026\. Name one of NEC 2017, NEC 2020, NEC 2023/);
  });
});
