import { figure } from '../../functions';
import { Node } from '../../language';
import { defineLint } from '../contract';
import { ohmsAsLoad } from '../ohms-as-load';
import { callNodes } from '../statement-kinds';

const filament = /\b(lamp|bulb|filament|tungsten|incandescent|halogen)s?\b/i;
const anyFilament = /lamp|bulb|filament|tungsten|incandescent|halogen/i;
/** Words of one who held a meter to it, or says that it was cold. */
const readCold = /\bcold\b|\bmeter\b|\bmeasured\b|\breads?\b|\breading\b|\bleads?\b|\bsocket\b|\bisolated\b/i;
const hot = /\b(hot|lit|glowing|burning|running)\b/i;
const inrush = /\binrush|\bswitch(ed|ing)? on\b|\bstarting\b|\bcontinuity\b/i;

/** Running watts or amperes of a lamp from the ohms of its cold filament. */
export const coldFilament = defineLint({
  id: 'cold-filament',
  summary: 'Running watts or amperes of a lamp are worked out from the ohms of its cold filament.',
  why:
    'Tungsten has ten to fifteen times its cold resistance while it glows. A 60 W lamp that reads 18 Ω cold would seem to be ' +
    'one of several hundred watts.',
  sources: ['lecture demonstration on a lamp that does not follow Ohm’s law: about 200 Ω lit, 18 Ω cold'],
  severity: 'warning',
  silent: [
    'Nothing says that it was read cold or with a meter: a problem in a book states what the lamp has.',
    'The resistance was read lit, by volts over amperes.',
    '`heater` is told a hot factor, or that it is a filament: it then asks for the factor itself.',
    'The current as it is switched on is what is asked for, or only continuity.',
    'Nothing in names and remarks speaks of a lamp or filament.',
  ],
  examples: {
    bad: ['lamp = 18 Ω // cold\nwatts = (110 V)^2 / lamp\n'],
    good: ['lamp = 9.5 Ω // cold\ninrush = 120 V / lamp\n'],
  },
  looksAt: [...callNodes, Node.Binary],
  check(statement, report) {
    if (!statement.sheet.mentions(anyFilament)) {
      return;
    }
    const load = ohmsAsLoad(statement);
    if (
      load &&
      filament.test(load.words) &&
      readCold.test(load.words) &&
      !hot.test(load.words) &&
      !inrush.test(load.words)
    ) {
      const ohms = Number.isNaN(load.ohms) ? 'This' : `${figure(load.ohms)} Ω`;
      report({
        span: load.span,
        message: `${ohms} is the reading of a cold filament, which has ten to fifteen times that while it glows: watts and amperes from it come out that much too high. Use the rated power, or volts over amperes measured lit.`,
      });
    }
  },
});
