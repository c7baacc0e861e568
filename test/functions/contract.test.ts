import assert from 'node:assert/strict';
import { tradeFunctions } from '../../src/functions';
import type { Parameter } from '../../src/language';

/**
 * The names that checks outside this project call: typed from the design's table of the trade library, not from the
 * code. A parameter with `=` has that default; a function may take more than these, but only named and optional.
 */
const contract: readonly (readonly [name: string, positional: string, named: string, fields?: string])[] = [
  ['resistance', 'conductor length', 'temperature=75'],
  ['resistance_per_length', 'conductor', 'temperature=75'],
  ['resistance_at', 'resistance', 'from to material=Cu'],
  ['conductor_length', 'resistance conductor', 'temperature=20 leads=0 loop=false'],
  ['ac_resistance', 'conductor', 'raceway=PVC'],
  ['reactance', 'conductor', 'raceway=PVC'],
  ['effective_impedance', 'conductor', 'raceway=PVC power_factor=0.85'],
  ['ampacity', 'conductor', 'insulation terminals ambient=30 bundled=3'],
  ['conductor_for', 'current', 'material=Cu insulation=THHN terminals ambient=30 bundled=3 continuous=false'],
  ['ocpd_for', 'current', 'continuous=false'],
  ['largest_ocpd', 'conductor', 'terminals'],
  ['egc_for', 'ocpd', 'material=Cu area_ratio=1'],
  ['gec_for', 'conductor', 'material=Cu'],
  ['supply_bonding_for', 'conductor', 'material=Cu'],
  ['voltage_drop', 'conductor current length', 'phases=1 temperature=75 sets=1 raceway power_factor'],
  ['longest_run', 'conductor current drop', 'phases=1'],
  ['conductor_for_drop', 'current length drop', 'phases=1 material=Cu'],
  ['line_current', 'power voltage', 'phases=1 power_factor=1 efficiency=1'],
  ['heater', '', 'resistance voltage rated_voltage phases=1', 'current power rated_power'],
  ['neutral_current', 'a b c', ''],
  ['unbalance', 'a b c', ''],
  ['correction_kvar', 'power', 'from to'],
  ['motor_current', 'power voltage', 'phases=3'],
  [
    'motor_circuit',
    '',
    'power voltage phases=3 device nameplate_current service_factor',
    'table_current conductor_ampacity ocpd overload',
  ],
  ['transformer_current', 'power voltage', 'phases=3'],
  ['transformer_ocpd', 'current', 'protection'],
  ['fault_current', 'power voltage impedance', 'phases=3'],
  ['fault_current_at', 'current voltage conductor length', 'phases=3 sets=1 raceway'],
  ['raceway_for', 'conductors', 'type=EMT nipple=false'],
  ['raceway_fill', 'conductors type size', ''],
  ['range_demand', 'count rating', ''],
  ['dryer_demand', 'count rating', ''],
  ['lighting_demand', 'load', ''],
  ['dwelling_load', '', 'area method=standard', 'total current'],
  ['cut_plan', 'reels cuts', '', 'plan left'],
  ['insulation_resistance_at', 'resistance', 'from to'],
  ['polarization_index', 'ten_minutes one_minute', ''],
  [
    'circuit',
    '',
    'load continuous voltage phases power_factor length conductor material insulation terminals ambient bundled sets ocpd device kind mca mocp duty drop_limit raceway egc',
    'design_current ampacity conductor ocpd egc drop drop_percent raceway',
  ],
];

const words = (text: string): readonly string[] => text.split(' ').filter(Boolean);

describe('the trade library keeps its names', () => {
  for (const [name, positional, named, fields] of contract) {
    it(name, () => {
      const definition = tradeFunctions.find((candidate) => candidate.name === name);
      assert.ok(definition, `${name} is missing`);
      const entries = Object.entries(definition.parameters);
      const inOrder = entries.filter(([, parameter]) => !parameter.named).map(([id]) => id);
      assert.deepEqual(inOrder, words(positional));
      for (const [id, value] of words(named).map((word) => word.split('='))) {
        const parameter: Parameter | undefined = definition.parameters[id];
        assert.ok(parameter?.named, `${name} takes no ${id}`);
        if (value !== undefined) {
          assert.equal(String(parameter.default), value, `${name}: ${id}`);
        }
      }
      const known = new Set([...words(positional), ...words(named).map((word) => word.split('=')[0])]);
      for (const [id, parameter] of entries.filter(([other]) => !known.has(other))) {
        assert.ok(parameter.named, `${name}: ${id} is one more, so it must be named`);
        assert.ok(parameter.optional || parameter.default !== undefined, `${name}: ${id} must not be required`);
      }
      const record = 'record' in definition.result ? Object.keys(definition.result.record) : [];
      assert.deepEqual(
        words(fields ?? '').filter((field) => !record.includes(field)),
        [],
      );
      assert.equal(record.length > 0, fields !== undefined);
    });
  }
});
