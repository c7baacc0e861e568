import { type Call, defineFormula } from '../../../language';
import { figure } from '../../number-text';
import { sumOfParts } from '../../rules/sum-of-parts';
import { quantityValue } from '../../step-values';
import { loadFigure } from './load-figure';
import { type Dwelling, voltAmperes } from './parameters';

const share = defineFormula({ symbol: 'S_climate', text: 'k * S', units: { k: '%', S: 'VA' }, result: 'VA' });
const pumpAndHeat = defineFormula({
  symbol: 'S_climate',
  text: 'S_pump + k * S_heat',
  units: { S_pump: 'VA', k: '%', S_heat: 'VA' },
  result: 'VA',
});
const heatingSum = sumOfParts('S_heating', 'VA');
const coolingSum = sumOfParts('S_cooling', 'VA');

const present = (...powers: readonly ({ readonly value: number } | undefined)[]): number[] =>
  powers.map(voltAmperes).filter((power) => power > 0);

function larger(call: Call, choices: readonly (readonly [what: string, load: number])[], rule: string): number {
  const [what, load] = choices.reduce((best, choice) => (choice[1] > best[1] ? choice : best));
  if (choices.length > 1) {
    const others = choices.map(([name, value]) => `${name} ${figure(value)} VA`).join(', ');
    call.choose({
      symbol: { base: 'S', subscript: 'climate' },
      result: quantityValue(load, 'VA'),
      because: `the largest counts, ${what}, as they do not run together: ${others}`,
      rule,
    });
  }
  return load;
}

/** Heating or cooling of one dwelling in VA, whichever is larger, each at its whole load (NEC 220.51, 220.60). */
export function climateWhole(call: Call, dwelling: Dwelling): number {
  const { space_heating, heat_pump, supplemental_heat, thermal_storage, air_conditioning } = dwelling;
  const heating = present(space_heating, heat_pump, supplemental_heat, thermal_storage);
  const cooling = present(air_conditioning, heat_pump);
  const choices = [
    ...(heating.length > 0 ? [['heating', heatingSum(call, heating)] as const] : []),
    ...(cooling.length > 0 ? [['cooling', coolingSum(call, cooling)] as const] : []),
  ];
  return choices.length === 0 ? 0 : larger(call, choices, '220.60');
}

/** From this number of separately controlled units on, space heating counts with less (NEC 220.82(C)). */
const manyControls = 4;

/** The largest of the optional method's choices for heating and cooling, in VA (NEC 220.82(C)). */
export function climateOptional(call: Call, dwelling: Dwelling): number {
  const { heating_controls, supplemental_heat, heat_pump } = dwelling;
  const choices: (readonly [string, number])[] = [];
  const add = (what: string, load: number, rule: string) => {
    if (load > 0) {
      const k = loadFigure(call, `optional method, ${rule}`, 'k');
      choices.push([what, share(call, { k, S: load })]);
    }
  };
  add('cooling', voltAmperes(dwelling.air_conditioning), 'cooling');
  add('thermal storage', voltAmperes(dwelling.thermal_storage), 'thermal storage heat');
  if (supplemental_heat && heat_pump) {
    const k = loadFigure(call, 'optional method, supplemental heat', 'k');
    const load = pumpAndHeat(call, { S_pump: heat_pump.value, k, S_heat: supplemental_heat.value });
    choices.push(['heat pump with supplemental heat', load]);
  } else {
    add('heat pump', voltAmperes(heat_pump), 'heat pump');
  }
  add(
    'space heating',
    voltAmperes(dwelling.space_heating) + (heat_pump ? 0 : voltAmperes(supplemental_heat)),
    heating_controls < manyControls ? 'heat with fewer than four controls' : 'heat with four or more controls',
  );
  return choices.length === 0 ? 0 : larger(call, choices, '220.82(C)');
}
