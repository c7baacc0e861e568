import assert from 'node:assert/strict';
import { errorOf, inUnit, near, run, valueOf } from './sheet';

const field = (fields: string, name: string, edition?: string) =>
  inUnit(`x = dwelling_load(${fields})\nx.${name}`, /current|ampacity|rating/.test(name) ? 'A' : 'VA', edition);

function holds(fields: string, wanted: Readonly<Record<string, number>>, tolerance = 1e-9): void {
  for (const [name, value] of Object.entries(wanted)) {
    near(field(fields, name), value, tolerance, name);
  }
}

const because = (fields: string, name: string) => {
  const value = valueOf(`dwelling_load(${fields})`);
  const found = value.kind === 'record' ? value.fields.get(name) : undefined;
  assert.ok(found?.kind === 'absent', name);
  return found.because;
};

describe('dwelling_load, standard method', () => {
  // Source: NEC Annex D Example D1(a) in a 2005 pocket guide.
  it('1500 ft², 12 kW range, 5.5 kW dryer: 18,600 VA, 77.5 A, neutral 14,550 VA, 60.6 A', () =>
    holds('area: 1500 ft², range: 12 kW, dryer: 5.5 kW', {
      lighting_connected: 9000,
      lighting_demand: 5100,
      range_demand: 8000,
      dryer_demand: 5500,
      total: 18600,
      current: 77.5,
      service_rating: 100,
      neutral_load: 14550,
      neutral_current: 60.625,
    }));

  // Source: classroom load-calculation worksheet: 12,900 VA to 6,465 VA.
  it('2800 ft²: lighting group 12,900 VA connected, 6,465 VA demand', () =>
    holds('area: 2800 ft²', { lighting_connected: 12900, lighting_demand: 6465 }));

  // Source: municipal ordinance, residential load example: 13,100 VA with a 12 kW range.
  it('1500 ft² and a 12 kW range: 13,100 VA', () => holds('area: 1500 ft², range: 12 kW', { total: 13100 }));

  // Source: NEC Annex D Example D4(a) in a 2005 pocket guide: an apartment without laundry.
  it('840 ft² apartment: 3,882 VA and 16.2 A; with a range 11,882 VA, 49.5 A, neutral 9,482 VA, 39.5 A', () => {
    holds('area: 840 ft², laundry_circuits: 0', { total: 3882, current: 16.175 });
    holds(
      'area: 840 ft², laundry_circuits: 0, range: 12 kW',
      {
        total: 11882,
        current: 49.50833,
        neutral_load: 9482,
        neutral_current: 39.50833,
      },
      1e-6,
    );
  });

  // Source: NEC Annex D Example D5(a) in a 2005 pocket guide: three-phase, ranges shared out over the phases.
  it('20 apartments with 10 ranges on 208Y/120 V: 40,590 VA and 34,500 VA', () =>
    holds(
      'area: 840 ft², laundry_circuits: 0, units: 20, range: 12 kW, ranges: 10, voltage: 208 V, phases: 3',
      {
        lighting_demand: 40590,
        range_demand: 34500,
        total: 75090,
        current: 208.43,
      },
      5e-5,
    ));

  it('40 apartments with 20 ranges: 112,650 VA, neutral 99,600 VA, 276.5 A, reduced to 253.5 A', () =>
    holds(
      'area: 840 ft², laundry_circuits: 0, units: 40, range: 12 kW, ranges: 20, voltage: 208 V, phases: 3',
      {
        lighting_demand: 69150,
        range_demand: 43500,
        total: 112650,
        neutral_load: 99600,
        neutral_current: 276.46,
        neutral_ampacity: 253.52,
      },
      5e-5,
    ));

  // NEC 220.53: 75 % for four or more; 220.60: the larger of heating and cooling.
  it('reduces four appliances, and counts the larger of heating and cooling', () => {
    const three = 'area: 1500 ft², water_heater: 4.5 kW, dishwasher: 1.2 kW, neutral_appliances: [900 W]';
    holds(three, { appliance_demand: 6600 });
    holds(`${three}, appliances: [2 kW]`, { appliance_demand: 0.75 * 8600, neutral_load: 5100 + 0.75 * 2100 });
    holds('area: 1500 ft², space_heating: 9 kW, air_conditioning: 5 kVA', { heating_cooling: 9000 });
    holds('area: 1500 ft², space_heating: 3 kW, air_conditioning: 5 kVA, largest_motor: 4 kVA', {
      heating_cooling: 5000,
      motor_allowance: 1000,
      total: 11100,
    });
  });

  // NEC 220.57, new in 2023 (memory): 7200 VA or the nameplate.
  it('counts a vehicle with at least 7,200 VA from 2023 on', () => {
    holds('area: 1500 ft², ev_charger: 3.8 kW', { vehicle_demand: 7200, total: 12300 });
    holds('area: 1500 ft², ev_charger: 9.6 kW', { vehicle_demand: 9600 });
    near(field('area: 1500 ft², ev_charger: 3.8 kW', 'vehicle_demand', 'NEC 2020'), 3800, 1e-12);
  });
});

describe('dwelling_load, optional method', () => {
  // Source: NEC Annex D Example D2(a) in a 2005 pocket guide.
  it('1500 ft² all-electric: general 29,700 VA, 17,880 VA; heat 3,600 VA; 21,480 VA, 89.5 A; neutral 15,400 VA', () =>
    holds(
      'area: 1500 ft², method: optional, range: 12 kW, water_heater: 2.5 kW, dishwasher: 1.2 kW, space_heating: 9 kW, heating_controls: 5, dryer: 5 kW, air_conditioning: 6 A * 230 V',
      {
        general_connected: 29700,
        general_demand: 17880,
        heating_cooling: 3600,
        total: 21480,
        current: 89.5,
        service_rating: 100,
        neutral_load: 15400,
      },
    ));

  // Source: worked optional-method example, 2014 edition: central heat at 65 %.
  it('2800 ft²: general 36,400 VA, 20,560 VA; heat 9,750 VA; 30,310 VA, 126 A', () =>
    holds(
      'area: 2800 ft², method: optional, range: 14 kW, water_heater: 3 kW, dryer: 5 kW, dishwasher: 1.5 kW, space_heating: 15 kW, air_conditioning: 29 A * 240 V',
      {
        general_connected: 36400,
        general_demand: 20560,
        heating_cooling: 9750,
        total: 30310,
        current: 126.2917,
        service_rating: 150,
      },
      1e-6,
    ));

  // NEC 220.82(C)(3) (memory): compressor whole, supplemental heat at 65 %.
  it('takes a heat pump with its supplemental heat at 65 %', () =>
    holds('area: 2000 ft², method: optional, heat_pump: 5 kVA, supplemental_heat: 10 kW', { heating_cooling: 11500 }));

  // NEC Table 220.84 (memory): 12 units, 41 %.
  it('takes many dwellings by their number', () =>
    holds('area: 900 ft², method: optional, units: 12, range: 8 kW, space_heating: 5 kW, laundry_circuits: 0', {
      general_connected: 12 * (2700 + 3000 + 8000 + 5000),
      total: 0.41 * 12 * 18700,
    }));

  it('says that one part has no line of its own, and refuses two dwellings', () => {
    assert.match(because('area: 1500 ft², method: optional', 'lighting_demand'), /no line of its own/);
    assert.match(because('area: 840 ft², voltage: 208 V', 'neutral_load'), /as large as a line/);
    assert.match(errorOf('dwelling_load(area: 900 ft², method: optional, units: 2)').message, /220\.85/);
    assert.equal(errorOf('dwelling_load(area: 900 ft², units: 2.5)').code, 'not-a-count');
  });
});

describe('the working of dwelling_load', () => {
  it('names method, edition and each table, memory where it is', () => {
    const { steps } = run('x = dwelling_load(area: 1500 ft², range: 12 kW, ev_charger: 7 kW)');
    const first = steps.find((step) => step.kind === 'assumption');
    assert.match(first?.kind === 'assumption' ? first.text : '', /Article 220 in NEC 2023, standard method/);
    const tables = steps.flatMap((step) => (step.kind === 'table' ? [step.source] : []));
    assert.deepEqual(
      tables.map(({ table, basis }) => `${table} ${basis}`),
      [
        '220.41 published',
        '220.52(A) published',
        '220.52(B) published',
        'Table 220.45 published',
        'Table 220.45 published',
        'Table 220.55 published',
        '220.57 memory',
        '230.79(C) memory',
        '220.61(B)(1) published',
      ],
    );
  });

  it('is written in square metres as well, and carries doubt', () => {
    near(field('area: 139.354 m²', 'lighting_connected'), 9000, 1e-5);
    const value = valueOf('x = dwelling_load(area: 1500 ft² ± 50 ft²)\nx.lighting_demand');
    assert.ok(value.kind === 'quantity' && value.uncertainty);
    near(value.uncertainty.limits ?? 0, 50 * 3 * 0.35, 1e-6);
  });

  it('feeds a service', () => {
    const value = valueOf(
      'house = dwelling_load(area: 1500 ft², range: 12 kW, dryer: 5.5 kW)\nfeed = circuit(kind: dwelling_service, load: house.total, voltage: 240 V)\nfeed.ocpd',
    );
    assert.ok(value.kind === 'quantity' && value.base === 100);
  });

  it('does not pass over a count of what has no rating', () => {
    for (const fields of ['ranges: 1', 'dryers: 2', 'heating_controls: 4']) {
      assert.equal(errorOf(`x = dwelling_load(area: 1500 ft², ${fields})`).code, 'too-few-givens', fields);
    }
    near(field('area: 1500 ft², ranges: 0', 'total'), 5100, 1e-9);
  });
});
