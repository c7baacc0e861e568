import { defineFunction, Failure } from '../../language';
import * as shared from '../parameters';
import { sizedRaceways } from '../raceway-words';
import { fillLimit, racewayContents, showFill } from '../rules/raceway-fill';
import { tablesOf } from '../settings';

/** A trade size as people write it: `1-1/4`, `1 1/4 in`, `1-1/4"`; or a metric designator: `35`. */
const asPrinted = (text: string): string =>
  text
    .trim()
    .replace(/\s*(?:in|inch|″|")$/, '')
    .replace(/\s+(?=\d\/)/, '-');

export const raceway_fill = defineFunction({
  name: 'raceway_fill',
  summary: 'How full a raceway is.',
  parameters: {
    conductors: shared.conductors,
    type: shared.racewayType,
    size: { text: true, verbatim: true, meaning: 'trade size, such as 3/4 or 1-1/4 in, or metric designator' },
    nipple: shared.nipple,
  },
  result: { unit: '%', meaning: 'area of the conductors over the area of the raceway' },
  formula: 'fill = A / A_100',
  assumptions: [
    'a complete raceway, not a sleeve for protection alone',
    'no compact-stranded conductors; a cable of several conductors is left out: it counts as one, by its own diameter',
    'areas of some raceways and insulations are from memory, and say so where they are used',
  ],
  sources: ['NEC Chapter 9 Tables 1, 4, 5 and 8, and their notes'],
  examples: [
    { text: 'raceway_fill([12 AWG Cu THHN, 12 AWG Cu THHN, 12 AWG Cu THHN], EMT, 1/2)', gives: '13.12 %' },
    { text: 'raceway_fill([4/0 AWG Cu THHN, 4/0 AWG Cu THHN, 4/0 AWG Cu THHN], PVC, 2 in)', gives: '29.51 %' },
  ],
  evaluate: ({ conductors, type, size, nipple }, call) => {
    const listed = tablesOf(call).raceways(sizedRaceways[type]);
    const wanted = asPrinted(size);
    const found =
      listed.find(({ row }) => row.tradeSize === wanted) ??
      listed.find(({ row }) => String(row.metricDesignator) === wanted);
    if (!found) {
      const sizes = listed.map(({ row }) => row.tradeSize).join(', ');
      return new Failure(`${type} has no trade size ${size}; it has ${sizes}.`, 'size', 'not-in-table');
    }
    const contents = racewayContents(call, conductors);
    if (contents instanceof Failure) {
      return contents;
    }
    const limitPercent = fillLimit(call, contents.count, nipple);
    return showFill(call, { type, found, contents, nipple, limitPercent });
  },
});
