import { type Call, Failure } from '../../language';
import type { Material, Size, Tables } from '../../tables';
import type { AmpacityFact } from '../facts';
import { tablesOf } from '../settings';
import { type AmpacityQuestion, ampacityChain } from './ampacity-chain';
import { plainConductor } from './plain-conductor';
import { unwatched } from './unwatched';

/** What decides the ampacity of a size: everything but the size. */
export interface LadderQuestion extends Omit<AmpacityQuestion, 'conductor'> {
  readonly material: Material;
}

/** A size of the ladder; without an ampacity where the tables give it none under these conditions. */
export interface Rung {
  readonly size: Size;
  readonly ampacity: AmpacityFact | undefined;
}

/** So many ladders are kept for a set of tables; conditions worked out from readings would else fill the memory. */
const mostKept = 512;

const kept = new WeakMap<Tables, Map<string, Rung[]>>();

/**
 * The ampacities of every size in the tables under the same conditions, smallest first; nothing is shown. A long list of
 * circuits asks for few different ladders, so each is worked out once, and no further than somebody climbs.
 */
export function* ampacityLadder(call: Call, question: LadderQuestion): Generator<Rung> {
  const { material, insulation, terminals, ambient, bundled, rating } = question;
  const tables = tablesOf(call);
  const ladders = kept.get(tables) ?? new Map<string, Rung[]>();
  kept.set(tables, ladders);
  const key = [material, insulation, terminals, ambient, bundled, rating].join('|');
  let rungs = ladders.get(key);
  if (!rungs) {
    if (ladders.size >= mostKept) {
      ladders.clear();
    }
    rungs = [];
    ladders.set(key, rungs);
  }
  for (const [i, size] of tables.sizes.entries()) {
    if (i === rungs.length) {
      const conductor = plainConductor(size, material, insulation);
      const asked = { conductor, insulation, terminals, ambient, bundled, rating };
      const ampacity = ampacityChain(unwatched(call), asked);
      rungs.push({ size, ampacity: ampacity instanceof Failure ? undefined : ampacity });
    }
    yield rungs[i];
  }
}
