import { type Call, defineFormula, Failure } from '../../language';
import type { Found, RacewayAreaRow } from '../../tables';
import { type Conductor, conductorText } from '../conductor';
import { leaveFact } from '../leave-fact';
import { figure } from '../number-text';
import { type SizedRaceway, sizedRaceways } from '../raceway-words';
import { tablesOf } from '../settings';
import { conductorOutline } from './conductor-area';
import { reaches } from './last-bits';
import { cellsOf } from './shown-cells';
import { sumOfParts } from './sum-of-parts';

const groupArea = defineFormula({
  symbol: 'A',
  text: 'n * A_one',
  units: { n: '', A_one: 'in²' },
  result: 'in²',
});
const totalArea = sumOfParts('A', 'in²');
const fillOf = defineFormula({ symbol: 'fill', text: 'A / A_100', units: { A: 'in²', A_100: 'in²' }, result: '%' });
const jamRatio = defineFormula({ symbol: 'jam', text: 'D / d', units: { D: 'in', d: 'in' }, result: '' });

/** Bore over diameter between which three like conductors may wedge when they are pulled (NEC Chapter 9 Table 1, note). */
const jamsFrom = 2.8;
const jamsTo = 3.2;

/** What lies in a raceway. */
export interface RacewayContents {
  readonly count: number;
  readonly areaIn2: number;
  /** Of every conductor, where all are alike. */
  readonly diameterIn: number | undefined;
}

/** Count and area of conductors, like ones together, each group with its table row. */
export function racewayContents(call: Call, conductors: readonly Conductor[]): RacewayContents | Failure {
  const groups = new Map<string, { conductor: Conductor; count: number }>();
  for (const conductor of conductors) {
    const key = conductorText(conductor);
    groups.set(key, { conductor, count: (groups.get(key)?.count ?? 0) + 1 });
  }
  const areas: number[] = [];
  const diameters = new Set<number>();
  for (const { conductor, count } of groups.values()) {
    const outline = conductorOutline(call, conductor, 'A_one');
    if (outline instanceof Failure) {
      return outline;
    }
    diameters.add(outline.diameterIn);
    areas.push(count === 1 ? outline.areaIn2 : groupArea(call, { n: count, A_one: outline.areaIn2 }));
  }
  const [diameterIn] = diameters;
  return {
    count: conductors.length,
    areaIn2: totalArea(call, areas),
    diameterIn: diameters.size === 1 ? diameterIn : undefined,
  };
}

const columnFor = (count: number, nipple: boolean): keyof RacewayAreaRow['areaIn2'] =>
  nipple ? 'nipple' : count === 1 ? 'oneWire' : count === 2 ? 'twoWires' : 'overTwoWires';

/** The share of a raceway's area that its conductors may take, in percent (NEC Chapter 9 Table 1 and Note 4). */
export function fillLimit(call: Call, count: number, nipple: boolean): number {
  const found = tablesOf(call).racewayFill(count, nipple);
  if (!found) {
    return 0;
  }
  call.table({ symbol: 'fill_limit', value: found.row.percent, unit: '%', source: found.source, row: found.shown });
  return found.row.percent;
}

/** The smallest trade size whose printed area for that many conductors holds them. */
const smallestRaceway = (
  call: Call,
  type: SizedRaceway,
  contents: RacewayContents,
  nipple: boolean,
): Found<RacewayAreaRow> | undefined =>
  tablesOf(call)
    .raceways(sizedRaceways[type])
    .find(({ row }) => reaches(row.areaIn2[columnFor(contents.count, nipple)], contents.areaIn2));

/** Shows the raceway's row, how full it is and whether three like conductors may jam; gives the fill in percent. */
export function showFill(
  call: Call,
  raceway: {
    readonly type: SizedRaceway;
    readonly found: Found<RacewayAreaRow>;
    readonly contents: RacewayContents;
    readonly nipple: boolean;
    readonly limitPercent: number;
  },
): number {
  const { type, found, contents, nipple, limitPercent } = raceway;
  const { tradeSize, areaIn2, internalDiameterIn } = found.row;
  if (type === 'ENT') {
    call.assume('bore of ENT as older printings have it; newer ones give it that of PVC Schedule 40, from memory');
  }
  call.table({
    symbol: 'A_100',
    value: areaIn2.total,
    unit: 'in²',
    source: found.source,
    row: cellsOf(found, 'raceway', 'trade size, in', 'metric designator', 'area, in², 100 %'),
  });
  const fillPercent = fillOf(call, { A: contents.areaIn2, A_100: areaIn2.total });
  const { count, diameterIn } = contents;
  let jam: number | undefined;
  if (count === 3 && diameterIn !== undefined) {
    jam = internalDiameterIn / diameterIn;
    if (jam >= jamsFrom && jam <= jamsTo) {
      jamRatio(
        call,
        { D: internalDiameterIn, d: diameterIn },
        `between ${jamsFrom} and ${jamsTo}: three conductors may jam at a bend; a size up pulls easier`,
      );
    }
  }
  if (call.watched) {
    leaveFact(call, {
      about: 'raceway',
      type,
      tradeSize,
      nipple,
      conductors: count,
      areaIn2: contents.areaIn2,
      allowedIn2: areaIn2[columnFor(count, nipple)],
      fillPercent,
      limitPercent,
      jamRatio: jam,
      smallestTradeSize: smallestRaceway(call, type, contents, nipple)?.row.tradeSize,
    });
  }
  return fillPercent;
}

/** The smallest raceway for the conductors, with its working. */
export function chooseRaceway(
  call: Call,
  type: SizedRaceway,
  conductors: readonly Conductor[],
  nipple: boolean,
): Found<RacewayAreaRow> | Failure {
  const contents = racewayContents(call, conductors);
  if (contents instanceof Failure) {
    return contents;
  }
  const limitPercent = fillLimit(call, contents.count, nipple);
  const found = smallestRaceway(call, type, contents, nipple);
  if (!found) {
    return new Failure(
      `No trade size of ${type} holds ${figure(contents.areaIn2)} in² of conductors at ${limitPercent} %: part them between raceways.`,
      'conductors',
      'no-sufficient-size',
    );
  }
  showFill(call, { type, found, contents, nipple, limitPercent });
  call.choose({
    result: { kind: 'text', value: found.row.tradeSize },
    because: `smallest trade size of ${type} whose ${limitPercent} % holds ${figure(contents.areaIn2)} in²`,
  });
  return found;
}
