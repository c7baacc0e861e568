import type { ArgumentsOf } from '../../../language';
import * as shared from '../../parameters';

const open = { named: true, optional: true } as const;
const rated = (meaning: string) => ({ units: ['VA', 'W'], ...open, above: 0, meaning }) as const;
const list = (meaning: string) => ({ listOf: { units: ['VA', 'W'] }, ...open, meaning }) as const;
const count = (meaning: string) => ({ unit: '', ...open, atLeast: 0, meaning }) as const;

/** Everything that a sheet may say of a dwelling, or of several alike, in the order in which people fill it in. */
export const dwellingParameters = {
  area: { unit: 'ft²', named: true, symbol: 'A', above: 0, meaning: 'floor area of one dwelling, by its outside' },
  method: {
    choice: ['standard', 'optional'],
    named: true,
    default: 'standard',
    meaning: 'calculation of Article 220: part III, or the optional one of part IV',
  },
  voltage: { unit: 'V', named: true, default: 240, symbol: 'U', above: 0, meaning: 'supply voltage, line to line' },
  phases: { ...shared.phases, meaning: '1 for a three-wire service, 3 for a four-wire one' },
  units: { unit: '', named: true, default: 1, atLeast: 1, meaning: 'dwellings alike on this service or feeder' },
  small_appliance_circuits: {
    unit: '',
    named: true,
    default: 2,
    atLeast: 0,
    meaning: 'small-appliance branch circuits of each dwelling',
  },
  laundry_circuits: {
    unit: '',
    named: true,
    default: 1,
    atLeast: 0,
    meaning: 'laundry branch circuits of each dwelling; 0 where the laundry is shared',
  },
  range: rated('rating of the range, or of each'),
  ranges: count('number of ranges; one for each dwelling if not said'),
  dryer: rated('rating of the clothes dryer, or of each'),
  dryers: count('number of dryers; one for each dwelling if not said'),
  water_heater: rated('water heater of each dwelling, line to line'),
  dishwasher: rated('dishwasher of each dwelling, on 120 V'),
  appliances: list('other appliances fastened in place in each dwelling, line to line'),
  neutral_appliances: list('other appliances fastened in place in each dwelling, on 120 V'),
  space_heating: rated('electric space heating of each dwelling'),
  heating_controls: {
    unit: '',
    named: true,
    default: 1,
    atLeast: 1,
    meaning: 'heating units of a dwelling with a control of their own; 1 for central heat',
  },
  air_conditioning: rated('air conditioning of each dwelling'),
  heat_pump: rated('heat pump of each dwelling, without its supplemental heat'),
  supplemental_heat: rated('supplemental electric heat of a heat pump'),
  thermal_storage: rated('thermal storage heating of each dwelling'),
  ev_charger: rated('vehicle supply equipment of each dwelling'),
  largest_motor: rated('largest motor, which counts with a quarter more'),
} as const;

export type Dwelling = ArgumentsOf<typeof dwellingParameters>;

type Power = { readonly value: number } | undefined;

/** A rating in VA; a kilowatt counts as a kilovolt-ampere (NEC 220.54, 220.55). Zero where there is none. */
export const voltAmperes = (power: Power): number => power?.value ?? 0;
