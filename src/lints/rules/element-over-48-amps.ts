import { type CircuitKind, figure } from '../../functions';
import { argumentSpan } from '../argument-places';
import { circuitsIn, exceeds } from '../circuit-facts';
import { defineLint } from '../contract';
import { callNodes } from '../statement-kinds';

/** Largest load of resistance elements on one overcurrent device, and the largest device for it, in amperes. */
const largestLoad = 48;
const largestDevice = 60;

const sections: { readonly [K in CircuitKind]?: string } = { space_heating: '424.22(B)', water_heater: '422.11(F)' };

/** Resistance elements beyond 48 A behind one device. */
export const elementOver48Amps = defineLint({
  id: 'element-over-48-amps',
  summary: 'Resistance heating above 48 A is fed through one overcurrent device.',
  why:
    'Resistance elements are subdivided so that each overcurrent device carries at most 48 A and is rated at most 60 A; a ' +
    'fault in one element then cannot draw on the whole supply. Most equipment is subdivided by its maker.',
  sources: ['NEC 424.22(B), 422.11(F)'],
  severity: 'warning',
  silent: [
    'The load is 48 A or less.',
    'The kind is neither space_heating nor water_heater.',
    'The equipment is subdivided inside, or is a boiler or vessel of a listed kind: write `allow element-over-48-amps` with that as the reason.',
  ],
  examples: {
    bad: ['furnace = circuit(load: 15 kW, kind: space_heating, voltage: 240 V)\n'],
    good: ['furnace = circuit(load: 10 kW, kind: space_heating, voltage: 240 V)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const { call, fact } of circuitsIn(statement)) {
      const section = fact.kind && sections[fact.kind];
      if (section && exceeds(fact.loadCurrent, largestLoad)) {
        report({
          span: argumentSpan(statement, call, 'load'),
          message: `Resistance elements of ${figure(fact.loadCurrent)} A stand behind one device; above ${largestLoad} A they are to be subdivided, each part on a device of at most ${largestDevice} A (${fact.edition}: ${section}). If the equipment is subdivided inside, allow this with that as the reason.`,
        });
      }
    }
  },
});
