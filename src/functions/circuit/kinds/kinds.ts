import { Failure } from '../../../language';
import type { CircuitKind } from '../../facts';
import { dwellingService } from './dwelling-service';
import { evse, general, spaceHeating, waterHeater } from './general';
import { hvac } from './hvac';
import type { KindOfCircuit } from './kind';
import { motor } from './motor';
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
];

/** How a kind of circuit is sized, or a plain word that this version does not know how. */
export const kindOfCircuit = (kind: CircuitKind | undefined): KindOfCircuit | Failure =>
  kinds.find((candidate) => candidate.kinds.includes(kind)) ??
  new Failure(
    `kind: ${kind} is not available in this version: size that circuit by hand, or leave the kind out to see it by the general rule.`,
    'kind',
    'not-available',
  );
