import { Absent, type Call, defineFormula } from '../../../language';
import { sumOfParts } from '../../rules/sum-of-parts';
import { loadFigure } from './load-figure';

const sum = sumOfParts('S_N', 'VA');
const reduced = defineFormula({ symbol: 'S_neutral', text: 'k * S', units: { k: '%', S: 'VA' }, result: 'VA' });
const singlePhase = defineFormula({ symbol: 'I_neutral', text: 'S / U', units: { S: 'VA', U: 'V' }, result: 'A' });
const threePhase = defineFormula({
  symbol: 'I_neutral',
  text: 'S / (sqrt(3) * U)',
  units: { S: 'VA', U: 'V' },
  result: 'A',
});
const overEnd = defineFormula({
  symbol: 'I_reduced',
  text: 'I_whole + k * (I_neutral - I_whole)',
  units: { I_whole: 'A', k: '%', I_neutral: 'A' },
  result: 'A',
});

/** Up to here the neutral counts whole, in amperes (NEC 220.61(B)(2)). */
const wholeUpTo = 200;

export interface NeutralParts {
  /** Demand in VA of lighting, small-appliance and laundry circuits, of ranges, of dryers and of 120 V appliances. */
  readonly lighting: number;
  readonly ranges: number;
  readonly dryers: number;
  readonly appliances: number;
  readonly voltage: number;
  readonly phases: number;
}

export interface NeutralLoad {
  readonly load: number | Absent;
  readonly current: number | Absent;
  readonly ampacity: number | Absent;
}

/** What the neutral of a dwelling's service or feeder must carry (NEC 220.61). */
export function neutralLoad(call: Call, parts: NeutralParts): NeutralLoad {
  const { voltage, phases } = parts;
  if (phases === 1 && voltage < 220) {
    // Two phases and the neutral of a wye: the neutral carries about what a line does, and nothing is taken off.
    const because = new Absent(
      'two phases and the neutral of a wye: the neutral is taken as large as a line, 220.61(C)',
    );
    return { load: because, current: because, ampacity: because };
  }
  const cooking = parts.ranges + parts.dryers;
  const k = cooking > 0 ? loadFigure(call, 'neutral of ranges and dryers', 'k') : 100;
  const shares = [
    parts.lighting,
    ...[parts.ranges, parts.dryers].filter((part) => part > 0).map((S) => reduced(call, { k, S })),
    ...(parts.appliances > 0 ? [parts.appliances] : []),
  ];
  const load = sum(call, shares, 'neutral: lighting group, 70 % of cooking and drying, 120 V appliances');
  const current = (phases === 3 ? threePhase : singlePhase)(call, { S: load, U: voltage });
  if (current <= wholeUpTo) {
    return { load, current, ampacity: current };
  }
  const over = loadFigure(call, 'neutral over 200 A', 'k');
  return { load, current, ampacity: overEnd(call, { I_whole: wholeUpTo, k: over, I_neutral: current }) };
}
