import { figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { ratingFix } from '../device-fixes';
import { cited } from '../editions';
import { callNodes } from '../statement-kinds';

/** Up to this current, in amperes, the rule allows a 20 A device instead. */
const smallAppliance = 13.3;

/** A device above 150 % of a single appliance's current. */
export const applianceOcpdTooLarge = defineLint({
  id: 'appliance-ocpd-too-large',
  summary: 'The overcurrent device is above 150 % of the current of the one appliance on it.',
  why:
    'A single appliance without a motor that is not marked with a device rating and draws more than 13.3 A stands behind ' +
    'at most 150 % of its current, or the next standard rating, so that a fault inside it opens the device.',
  sources: ['NEC 422.11(E)(3)'],
  severity: 'warning',
  silent: [
    'The device is at or below 150 % of the current, or the next standard rating.',
    'The appliance draws 13.3 A or less.',
    'The kind is not water_heater.',
    'The nameplate states a device rating: give it as `mocp`.',
  ],
  fix: 'Offers the largest rating that is allowed; a person chooses, never fix-all.',
  examples: {
    bad: ['tank = circuit(load: 4.5 kW, kind: water_heater, voltage: 240 V, conductor: 8 AWG Cu THHN, ocpd: 40 A)\n'],
    good: ['tank = circuit(load: 4.5 kW, kind: water_heater, voltage: 240 V, conductor: 10 AWG Cu THHN, ocpd: 30 A)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const { loadCurrent, ocpd, largestApplianceOcpd } = fact;
      const unmarked = fact.kind === 'water_heater' && fact.mocp === undefined;
      if (fact.ocpdGiven && unmarked && loadCurrent > smallAppliance && exceeds(ocpd, largestApplianceOcpd)) {
        report({
          span: argumentSpan(statement, call, 'ocpd'),
          message: `The device is ${figure(ocpd)} A; 150 % of the appliance’s ${figure(loadCurrent)} A is ${figure(1.5 * loadCurrent)} A, so at most ${figure(largestApplianceOcpd)} A is allowed (${cited(fact.edition, '422.11(E)(3)')}). If its nameplate states a device, give that as \`mocp:\`.`,
          fixes: ratingFix(statement, call, largestApplianceOcpd),
        });
      }
    }
  },
});
