import { conductorType } from '../conductor';
import { circuitKinds } from '../facts';
import * as shared from '../parameters';
import { deviceWords } from '../rules/motor-circuit';
import { welderWords } from '../rules/welder-duty';

const open = { named: true, optional: true } as const;

/** Everything that a sheet may say of a circuit, in the order in which people fill it in. */
export const circuitParameters = {
  load: { units: ['A', 'W', 'VA'], ...open, atLeast: 0, meaning: 'current or power of the load' },
  continuous: { ...shared.continuous, default: undefined, optional: true },
  voltage: { unit: 'V', ...open, symbol: 'U', above: 0, meaning: 'supply voltage, line to line for three-phase' },
  phases: shared.phases,
  power_factor: { ...shared.powerFactor, named: true, default: 1 },
  length: { ...shared.length, ...open },
  conductor: { ...shared.conductor, ...open },
  material: {
    ...shared.material,
    default: undefined,
    optional: true,
    meaning: 'metal, where no conductor is given; copper if not said',
  },
  insulation: shared.insulation,
  terminals: shared.terminals,
  ambient: shared.ambient,
  bundled: shared.bundled,
  sets: shared.sets,
  ocpd: { unit: 'A', ...open, symbol: 'I_n', above: 0, meaning: 'rating of the overcurrent device' },
  device: {
    choice: deviceWords,
    ...open,
    meaning: 'type of the overcurrent device, where a rule hangs on it',
  },
  kind: { choice: circuitKinds, ...open, meaning: 'what the circuit feeds; decides which rules hold' },
  mca: { unit: 'A', ...open, above: 0, meaning: 'nameplate minimum circuit ampacity' },
  mocp: { unit: 'A', ...open, above: 0, meaning: 'nameplate maximum overcurrent protection' },
  duty: { unit: '%', ...open, above: 0, atMost: 100, meaning: 'duty cycle of a welder' },
  welder: { choice: welderWords, ...open, meaning: 'type of a welder' },
  drop_limit: { unit: '%', ...open, above: 0, atMost: 25, meaning: 'largest voltage drop that is wanted' },
  raceway: { ...shared.raceway, default: undefined, optional: true },
  egc: { object: conductorType, ...open, meaning: 'equipment grounding conductor' },
} as const;
