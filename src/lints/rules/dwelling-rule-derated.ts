import { figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn } from '../circuit-facts';
import { defineLint } from '../contract';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** The 83 % of a dwelling's service taken where conductors are derated. */
export const dwellingRuleDerated = defineLint({
  id: 'dwelling-rule-derated',
  summary: 'The 83 % for a dwelling’s service is taken where the conductors are derated for heat or bundling.',
  why:
    'The 83 % rests on the diversity of one dwelling’s whole load under ordinary conditions. Its table of sizes holds where ' +
    'no correction or adjustment is required; elsewhere the derated ampacity is compared.',
  sources: ['NEC 310.12'],
  severity: 'information',
  silent: ['No correction or adjustment applies.', 'The kind is not dwelling_service.'],
  examples: {
    bad: [
      'service = circuit(load: 152 A, kind: dwelling_service, voltage: 240 V, conductor: 3/0 AWG Cu THHN, ocpd: 200 A, ambient: 45 °C)\n',
    ],
    good: [
      'service = circuit(load: 152 A, kind: dwelling_service, voltage: 240 V, conductor: 2/0 AWG Cu THHN, ocpd: 200 A)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const { ambientFactor, bundlingFactor } = fact.ampacity;
      if (fact.kind === 'dwelling_service' && ambientFactor * bundlingFactor < 1) {
        report({
          span: argumentSpan(statement, call, ambientFactor < 1 ? 'ambient' : 'bundled'),
          message: `The conductors are derated to ${figure(100 * ambientFactor * bundlingFactor)} %, and the sizes by 83 % of the rating hold where no derating is required (${cited(fact.edition, '310.12')}). What is compared here is the derated ${figure(fact.totalAmpacity)} A with ${figure(fact.requiredAmpacity)} A; have it confirmed.`,
        });
      }
    }
  },
});
