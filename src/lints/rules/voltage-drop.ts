import { type CircuitFact, figure } from '../../functions';
import { argumentSpan, standsHere } from '../argument-places';
import { circuitsIn, conductorsText, exceeds } from '../circuit-facts';
import { sizeAdvice, sizeFixes } from '../conductor-fixes';
import { defineLint } from '../contract';
import { callNodes } from '../statement-kinds';

/** More voltage lost on the run than the sheet's own limit, or than the advisory 3 %. */
export const voltageDrop = defineLint({
  id: 'voltage-drop',
  summary: 'The run loses more voltage than the limit.',
  why:
    'Voltage lost on the way is missing at the load: heaters give less, motors run hotter, lamps dim. A limit that the sheet ' +
    'declares is binding. Where it declares none, 3 % on a branch circuit or feeder, and 5 % for both together, is advice ' +
    'and not a rule.',
  sources: ['NEC 210.19 and 215.2, informational notes: 3 % and 5 %, advisory'],
  severity: 'error',
  silent: ['The drop is at or below the limit.', 'No length is given.'],
  fix: 'Offers sizes within the declared limit; a person chooses, never fix-all.',
  examples: {
    bad: [
      'gate = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 160 ft, conductor: 10 AWG Cu THHN, drop_limit: 2 %)\n',
      'shed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 160 ft, conductor: 12 AWG Cu THHN)\n',
    ],
    good: [
      'shed = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 60 ft, conductor: 12 AWG Cu THHN)\n',
      'gate = circuit(load: 12 A, kind: general, continuous: no, voltage: 120 V, length: 160 ft, conductor: 10 AWG Cu THHN, drop_limit: 5 %)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const { drop } = fact;
      if (!drop || !exceeds(drop.percent, drop.limitPercent)) {
        continue;
      }
      const limit = call.arguments.get('drop_limit');
      report({
        span: argumentSpan(statement, call, 'conductor', 'length'),
        severity: drop.limitGiven ? undefined : 'information',
        message: messageFor(fact, drop),
        fixes:
          fact.conductorGiven && drop.limitGiven
            ? sizeFixes(statement, call, 'conductor', fact.conductor, fact.sufficient)
            : [],
        related:
          limit?.given && standsHere(statement, call)
            ? [{ span: argumentSpan(statement, call, 'drop_limit'), message: 'The limit is declared here.' }]
            : undefined,
      });
    }
  },
});

function messageFor(fact: CircuitFact, drop: NonNullable<CircuitFact['drop']>): string {
  const found = `${figure(drop.volts)} V, ${figure(drop.percent)} %, is lost on ${conductorsText(fact)} at ${figure(fact.loadCurrent)} A`;
  return drop.limitGiven
    ? `${found}; the sheet allows ${figure(drop.limitPercent)} %. ${sizeAdvice(fact.sufficient)}`
    : `${found}; the advisory limit is ${figure(drop.limitPercent)} % (${fact.edition}: informational notes to 210.19 and 215.2). A larger conductor loses less; \`drop_limit:\` declares a limit of your own.`;
}
