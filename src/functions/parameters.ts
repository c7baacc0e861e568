import { conductorType } from './conductor';
import { insulationWords } from './conductor-words';
import { racewayWords, sizedRacewayWords } from './raceway-words';

/** Parameters that several functions share, so that a name means the same everywhere. */

export const conductor = { object: conductorType, meaning: 'size, metal and, where it matters, insulation' } as const;

export const material = {
  choice: ['Cu', 'Al'],
  named: true,
  default: 'Cu',
  meaning: 'metal of the conductor',
} as const;

export const insulation = {
  choice: insulationWords,
  named: true,
  optional: true,
  meaning: 'insulation or cable type, where the conductor does not say it',
} as const;

export const terminals = {
  unit: '°C',
  named: true,
  optional: true,
  meaning: 'temperature rating of the terminals at both ends: 60 °C, 75 °C or 90 °C',
} as const;

export const ambient = {
  unit: '°C',
  named: true,
  default: 30,
  symbol: 'T_ambient',
  meaning: 'temperature of the air or earth around the conductor',
} as const;

export const bundled = {
  unit: '',
  named: true,
  default: 3,
  symbol: 'n_bundled',
  atLeast: 1,
  meaning: 'current-carrying conductors in the same raceway or cable',
} as const;

export const continuous = {
  yesNo: true,
  named: true,
  default: false,
  meaning: 'yes when the load is expected to run three hours or more',
} as const;

export const phases = {
  unit: '',
  named: true,
  default: 1,
  meaning: '1 for a two-wire or single-phase circuit, 3 for three-phase',
} as const;

export const sets = {
  unit: '',
  named: true,
  default: 1,
  symbol: 'n',
  atLeast: 1,
  meaning: 'conductors in parallel for each phase',
} as const;

export const operatingTemperature = {
  unit: '°C',
  named: true,
  default: 75,
  symbol: 'T',
  atLeast: -100,
  atMost: 300,
  meaning: 'temperature of the conductor itself',
} as const;

export const length = { unit: 'ft', symbol: 'L', atLeast: 0, meaning: 'one-way length of the run' } as const;

export const current = { unit: 'A', symbol: 'I', atLeast: 0, meaning: 'current in each line conductor' } as const;

export const interruptingRating = {
  unit: 'A',
  named: true,
  optional: true,
  above: 0,
  meaning: 'interrupting rating of the equipment there, to be compared with the result',
} as const;

export const powerFactor = {
  unit: '',
  symbol: 'cos_phi',
  above: 0,
  atMost: 1,
  meaning: 'real power over apparent power',
} as const;

export const raceway = {
  choice: racewayWords,
  named: true,
  default: 'PVC',
  meaning: 'raceway around the conductors; EMT, IMC, RMC, FMC and LFMC count as steel',
} as const;

/** Conductors that share a raceway. */
export const conductors = {
  listOf: { object: conductorType },
  meaning: 'every conductor in the raceway, equipment grounding conductors and neutrals included',
} as const;

export const racewayType = { choice: sizedRacewayWords, meaning: 'type of raceway; PVC is Schedule 40' } as const;

export const nipple = {
  yesNo: true,
  named: true,
  default: false,
  meaning: 'yes for a piece of no more than 24 in between two boxes or enclosures',
} as const;
