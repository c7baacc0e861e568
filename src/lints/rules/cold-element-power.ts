import { figure, type HeaterFact } from '../../functions';
import { Node, nodesBelow, spanOf, textOf } from '../../language';
import { defineLint } from '../contract';
import { callBehind } from '../readings';

/** Kilowatts from a cold element's ohms that a check leans on. */
export const coldElementPower = defineLint({
  id: 'cold-element-power',
  summary: 'A check leans on the power of an element that was measured cold.',
  why:
    'Heating alloys have 1 to 8 % more resistance hot than cold. Amperes from cold ohms are therefore the most that it draws, ' +
    'which suits the conductor; kilowatts from them are the most that it gives, which does not suit a promise of heat.',
  sources: ['heating-alloy data sheets: hot to cold 1.01 to 1.08'],
  severity: 'information',
  silent: [
    'Only its current is used: the conductor is judged on the safe side.',
    'The power is that of the nameplate.',
    'A hot factor is given, or the resistance multiplied by one first.',
  ],
  examples: {
    bad: [
      'tank = heater(resistance: 25.6 Ω, voltage: 240 V, isolated: yes)\ncheck tank.power >= 2.2 kW "gives its heat"\n',
    ],
    good: [
      'tank = heater(resistance: 25.6 Ω, voltage: 240 V, isolated: yes)\ncheck tank.current <= 16 A "within the device"\n',
    ],
  },
  looksAt: [Node.Check],
  check(statement, report) {
    const { tree, node } = statement;
    for (const member of nodesBelow(tree, node)) {
      if (tree.kinds[member] !== Node.Member) {
        continue;
      }
      const record = tree.firstChildren[member];
      if (textOf(tree, tree.nextSiblings[record]) !== 'power') {
        continue;
      }
      const call = callBehind(statement, { ...statement, node: record })?.call;
      const fact = call?.facts.find((candidate) => candidate.about === 'heater') as HeaterFact | undefined;
      if (call && fact?.resistanceOhm !== undefined && !call.arguments.get('hot_factor')?.given) {
        report({
          span: spanOf(tree, member),
          message: `${figure(fact.powerW / 1000)} kW follows from a cold reading of ${figure(fact.resistanceOhm)} Ω; hot, the element gives 1 to 8 % less, down to about ${figure(fact.powerW / 1080)} kW. For a promise of heat, say \`hot_factor:\`, or go by the nameplate or by volts and amperes hot.`,
        });
      }
    }
  },
});
