import type { CircuitKind } from '../../facts';
import { cord } from './cord';
import { dwellingService } from './dwelling-service';
import { firePump } from './fire-pump';
import { evse, general, spaceHeating, waterHeater } from './general';
import { hvac } from './hvac';
import type { KindOfCircuit } from './kind';
import { motor } from './motor';
import { tap } from './tap';
import { transformer } from './transformer';
import { welder } from './welder';

const kinds: readonly KindOfCircuit[] = [
  general,
  spaceHeating,
  waterHeater,
  evse,
  hvac,
  motor,
  welder,
  dwellingService,
  tap,
  transformer,
  firePump,
  cord,
];

/** How a kind of circuit is sized; a test holds that every kind has its rules. */
export const kindOfCircuit = (kind: CircuitKind | undefined): KindOfCircuit =>
  kinds.find((candidate) => candidate.kinds.includes(kind)) ?? general;
