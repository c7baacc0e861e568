import { figure, type RacewayFact } from '../../functions';
import { argumentSpan } from '../argument-places';
import { exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { cited, editionOf } from '../editions';
import { callNodes } from '../statement-kinds';

/** More conductor area in a raceway than it may hold. */
export const racewayOverfilled = defineLint({
  id: 'raceway-overfilled',
  summary: 'The raceway holds more conductor area than it may.',
  why:
    'An overfull raceway tears insulation when the conductors are pulled, and keeps their heat in. Of its bore, one conductor ' +
    'may take 53 %, two 31 %, more 40 %; a nipple of at most 24 inches may be filled to 60 %.',
  sources: ['NEC Chapter 9 Table 1 and its notes, Tables 4 and 5'],
  severity: 'error',
  silent: [
    'The fill is at or below the limit.',
    'A nipple is filled to 60 % or less.',
    'The size is left to the calculation.',
  ],
  examples: {
    bad: ['fill = raceway_fill([6 AWG Cu THHN, 6 AWG Cu THHN, 6 AWG Cu THHN], EMT, 1/2)\n'],
    good: ['fill = raceway_fill([6 AWG Cu THHN, 6 AWG Cu THHN, 6 AWG Cu THHN], EMT, 3/4)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      for (const found of call.facts) {
        const fact = found as RacewayFact;
        if (fact.about === 'raceway' && exceeds(fact.areaIn2, fact.allowedIn2)) {
          const edition = editionOf(statement.program.library.settings);
          const larger = fact.smallestTradeSize
            ? `Use ${fact.type} ${fact.smallestTradeSize} or larger.`
            : 'No trade size holds them: part them between raceways.';
          report({
            span: argumentSpan(statement, call, 'size'),
            message: `${fact.conductors} conductors take ${figure(fact.areaIn2)} in² of ${fact.type} ${fact.tradeSize}, ${figure(fact.fillPercent)} %; ${figure(fact.allowedIn2)} in², ${figure(fact.limitPercent)} %, is allowed (${cited(edition, 'Chapter 9 Table 1')}). ${larger}`,
          });
        }
      }
    }
  },
});
