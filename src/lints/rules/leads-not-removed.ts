import { figure, type HeaterFact, type LengthFact } from '../../functions';
import type { CallRecord } from '../../language';
import { argumentNode, argumentSpan, standsHere } from '../argument-places';
import { defineLint, type LintedStatement } from '../contract';
import { statementFix } from '../device-fixes';
import { isOhmReading, remarksBehind, subtracts } from '../readings';
import { remarkOn } from '../remarks';
import { callNodes } from '../statement-kinds';

/** What a pair of meter leads commonly adds to a reading, in ohms. */
const typicalLeads = { least: 0.2, most: 0.5 };

/** Below ten times the leads they spoil the reading; above a hundred times the leads they do not matter. */
const spoiledBelow = 10 * typicalLeads.most;
const unharmedAbove = 100 * typicalLeads.least;

/** Remarks that say the leads are dealt with. */
const dealtWith = /\bleads?\b|\bnull(ed)?\b|\bzeroed\b|\b(4|four)[- ]?wire\b|\b(4|four)[- ]?terminal\b|\bkelvin\b/i;

/** A low resistance reading that may still hold the meter's own leads. */
export const leadsNotRemoved = defineLint({
  id: 'leads-not-removed',
  summary: 'A low resistance reading may still hold the resistance of the meter leads.',
  why:
    'A pair of meter leads commonly reads 0.2 to 0.5 Ω. In a low reading that is a large part: a reel looks longer than it ' +
    'is, and an element seems to draw less than it does. Join the leads, note what they read and subtract it, or zero the ' +
    'meter on them.',
  sources: ['Low-resistance testing guide (reels); hand-held meter manuals: 0.2 to 0.5 Ω for a pair of leads'],
  severity: 'warning',
  silent: [
    'The leads are given, even as `leads: 0 Ω`.',
    'The resistance was worked out by a subtraction.',
    'A remark on the reading says that the leads were zeroed or nulled, or that four wires were used.',
    'The reading is above 20 Ω, or for a length above 5 Ω.',
    'The resistance is not a reading: it was worked out from other quantities.',
  ],
  fix: 'Inserts `leads: 0 Ω` for a meter that was zeroed; a person decides whether it was.',
  examples: {
    bad: [
      'left = conductor_length(0.52 Ω, 12 AWG Cu stranded, temperature: 20 °C)\n',
      'reading = 12.9 Ω\nunmarked = heater(resistance: reading, voltage: 240 V)\n',
    ],
    good: [
      'left = conductor_length(0.52 Ω, 12 AWG Cu stranded, temperature: 20 °C, leads: 0.04 Ω)\n',
      'unmarked = heater(resistance: 12.9 Ω - 0.3 Ω, voltage: 240 V, isolated: yes)\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      for (const fact of call.facts) {
        if (fact.about === 'length') {
          const { leadsGiven, resistanceOhm } = fact as LengthFact;
          if (!leadsGiven && resistanceOhm < spoiledBelow && isUntreated(statement, call)) {
            report({
              span: argumentSpan(statement, call, 'resistance'),
              message: `${reads(resistanceOhm)}, which makes the length come out too long. Give what the joined leads read as \`leads:\`, or \`leads: 0 Ω\` when the meter was zeroed on them or four wires were used.`,
              fixes: statementFix(statement, call, 'leads', '0 Ω', 'State `leads: 0 Ω`: zeroed, or four wires'),
            });
          }
        } else if (fact.about === 'heater') {
          const { resistanceOhm } = fact as HeaterFact;
          if (resistanceOhm !== undefined && resistanceOhm < unharmedAbove && isUntreated(statement, call)) {
            report({
              span: argumentSpan(statement, call, 'resistance'),
              severity: resistanceOhm < spoiledBelow ? 'warning' : 'hint',
              message: `${reads(resistanceOhm)}, which makes the current come out too low. Subtract what the joined leads read, or say in a remark on the reading that the meter was zeroed on them.`,
            });
          }
        }
      }
    }
  },
});

const reads = (ohms: number): string =>
  `Meter leads may be ${typicalLeads.least} to ${typicalLeads.most} Ω of these ${figure(ohms)} Ω`;

function isUntreated(statement: LintedStatement, call: CallRecord): boolean {
  const node = argumentNode(statement, call, 'resistance');
  if (node === undefined || !standsHere(statement, call)) {
    return false;
  }
  const place = { ...statement, node };
  const remarks = [...remarksBehind(place), remarkOn(statement.tree, statement.result.index)];
  return isOhmReading(place) && !subtracts(place) && !remarks.some((remark) => dealtWith.test(remark));
}
