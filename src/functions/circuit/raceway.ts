import { Absent, type Call, Failure } from '../../language';
import { type Conductor, conductorText } from '../conductor';
import type { CircuitKind } from '../facts';
import { isSized, type RacewayWord } from '../raceway-words';
import { chooseRaceway } from '../rules/raceway-fill';

/** Taken where the sheet does not say the raceway. */
const usualRaceway = 'EMT';

/** Types that are a cable with a cover of its own, and go in no raceway as single conductors do. */
const cables: ReadonlySet<string> = new Set(['NM-B', 'UF-B', 'UF', 'SE', 'SEU', 'SER', 'MC', 'AC', 'USE']);

/** What the circuit runs in: its raceway, or why it has none. */
export interface RacewayQuestion {
  readonly kind: CircuitKind | undefined;
  readonly given: RacewayWord | undefined;
  readonly conductor: Conductor;
  readonly egc: Conductor | undefined;
  readonly phases: number;
  readonly sets: number;
  /** Current-carrying conductors together, where the sheet says so. */
  readonly bundled: number | undefined;
}

/** Trade size of the raceway for one set of the circuit's conductors and its equipment grounding conductor. */
export function circuitRaceway(call: Call, question: RacewayQuestion): string | Absent {
  const { given, conductor, egc, phases, sets, bundled } = question;
  // A dwelling's service has two lines and a neutral, which is taken as large as they are.
  const withNeutral = question.kind === 'dwelling_service';
  const own = phases === 3 || withNeutral ? 3 : 2;
  if (question.kind === 'cord') {
    return new Absent('a flexible cord runs in no raceway');
  }
  if (conductor.insulation && cables.has(conductor.insulation)) {
    return new Absent(`${conductor.insulation} is a cable and needs no raceway`);
  }
  if (given && !isSized(given)) {
    return new Absent(`${given} says the metal alone: name the type, such as EMT, IMC, RMC or PVC`);
  }
  if (bundled !== undefined && bundled > Math.max(own, 3) && sets === 1) {
    return new Absent(`other conductors share it (bundled ${bundled}): give all of them to raceway_for`);
  }
  const type = given && isSized(given) ? given : usualRaceway;
  if (!given) {
    call.assume(`${usualRaceway} taken for the trade size: raceway not given`);
  }
  const covered = (bare: Conductor): Conductor =>
    bare.bare || bare.insulation ? bare : { ...bare, insulation: conductor.insulation };
  const contents = [...Array<Conductor>(own).fill(conductor), ...(egc ? [covered(egc)] : [])];
  call.assume(
    `${sets > 1 ? 'each of the raceways' : 'raceway'} holds ${own} circuit conductors${egc ? ` and the grounding conductor, ${conductorText(covered(egc))}` : ''}; ${withNeutral ? 'the neutral as large as a line' : 'no further neutral'}`,
  );
  const found = chooseRaceway(call, type, contents, false);
  return found instanceof Failure ? new Absent(found.message) : found.row.tradeSize;
}
