import { conductorText, figure, type LengthFact } from '../../functions';
import { argumentNode, argumentSpan, standsHere } from '../argument-places';
import { defineLint } from '../contract';
import { statementFix } from '../device-fixes';
import { callNodes } from '../statement-kinds';
import { ownWords, wordsBehind } from '../words';

const cables: ReadonlySet<string> = new Set(['NM-B', 'UF-B', 'UF', 'SE', 'SEU', 'SER', 'MC', 'AC']);
const speaksOfPair =
  /\bpairs?\b|\btwisted\b|\bcables?\b|\bfar end\b|\bjoined\b(?!.*\bleads\b)|\bloop(ed)?\b|\btwo conductors\b/i;

/** The length of a cable or pair, without a word on whether two conductors were measured in a loop. */
export const loopNotSaid = defineLint({
  id: 'loop-not-said',
  summary: 'A cable or pair is measured, and the sheet does not say whether two conductors are joined at the far end.',
  why:
    'With two conductors joined at the far end the meter reads both, so the length is half of what one conductor would ' +
    'give. Forgetting the half promises twice the cable that is there.',
  sources: ['Ohm’s law: two equal resistances in series'],
  severity: 'hint',
  silent: [
    '`loop: yes` or `loop: no` is said.',
    'It is a single conductor, and nothing speaks of a cable, a pair or a joined end.',
  ],
  fix: 'Inserts `loop: yes` or `loop: no`, for one who knows.',
  examples: {
    bad: ['left = conductor_length(54.6 Ω, 24 AWG Cu solid, temperature: 20 °C) // pair, far end joined\n'],
    good: ['left = conductor_length(54.6 Ω, 24 AWG Cu solid, temperature: 20 °C, loop: yes) // pair, far end joined\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      for (const found of call.facts) {
        const fact = found as LengthFact;
        const node = argumentNode(statement, call, 'resistance');
        if (fact.about !== 'length' || fact.loopGiven || node === undefined || !standsHere(statement, call)) {
          continue;
        }
        const isCable = cables.has(fact.conductor.insulation ?? '');
        const words = `${ownWords(statement)} ${wordsBehind({ ...statement, node })}`;
        if (isCable || speaksOfPair.test(words)) {
          report({
            span: argumentSpan(statement, call, 'resistance'),
            message: `Were two conductors joined at the far end? As one conductor of ${conductorText(fact.conductor)} this is ${figure(fact.lengthFt)} ft, as a loop half of it, ${figure(fact.lengthFt / 2)} ft. Say \`loop: yes\` or \`loop: no\`.`,
            fixes: ['yes', 'no'].flatMap((answer) =>
              statementFix(statement, call, 'loop', answer, `State \`loop: ${answer}\``),
            ),
          });
        }
      }
    }
  },
});
