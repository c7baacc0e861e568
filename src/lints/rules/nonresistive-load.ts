import { figure } from '../../functions';
import { Node } from '../../language';
import { defineLint } from '../contract';
import { ohmsAsLoad } from '../ohms-as-load';
import { callNodes } from '../statement-kinds';

const nonresistive =
  /\b(motor|winding|coil|solenoid|transformer|ballast|driver|led|relay|contactor|compressor|power supply|inverter)s?\b/i;
const anyNonresistive = new RegExp(nonresistive.source.replaceAll('\\b', ''), 'i');
const resistive = /\b(heat\w*|element|nichrome|continuity|balance)\b/i;

/** Running current of a winding or of electronics from its DC ohms. */
export const nonresistiveLoad = defineLint({
  id: 'nonresistive-load',
  summary: 'The current of a motor, coil, transformer or electronics is worked out from its DC ohms.',
  why:
    'The ohms of a winding say nothing of its running current: its inductance and what it drives set that. Electronics draw ' +
    'what they need, whatever a meter reads across them. The use of such readings is the balance of three windings.',
  sources: ['circuit theory: impedance and back electromotive force'],
  severity: 'warning',
  silent: [
    'The load is a heater or another resistance.',
    'Readings of windings are compared with one another.',
    'Nothing in names and remarks speaks of such a load.',
  ],
  examples: {
    bad: ['winding = 3.2 Ω // of the pump motor\namps = 230 V / winding\n'],
    good: [
      'first = 3.2 Ω // winding, leads subtracted\nsecond = 3.3 Ω // winding, leads subtracted\nratio = first / second\n',
    ],
  },
  looksAt: [...callNodes, Node.Binary],
  check(statement, report) {
    if (!statement.sheet.mentions(anyNonresistive)) {
      return;
    }
    const load = ohmsAsLoad(statement);
    if (load && nonresistive.test(load.words) && !resistive.test(load.words)) {
      const ohms = Number.isNaN(load.ohms) ? 'The' : `The ${figure(load.ohms)}`;
      report({
        span: load.span,
        message: `${ohms} ohms of ${nonresistive.exec(load.words)![0].toLowerCase()} do not set its current. Use the nameplate, the motor tables (\`motor_current\`) or a measured current.`,
      });
    }
  },
});
