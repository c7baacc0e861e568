import { figure, type HeaterFact } from '../../functions';
import { children, Node, spanOf } from '../../language';
import { argumentNode, argumentSpan, standsHere } from '../argument-places';
import { defineLint, type LintedStatement, type Report } from '../contract';
import { statementFix } from '../device-fixes';
import { isOhmReading, ohmDimension } from '../readings';
import { callNodes } from '../statement-kinds';
import { ownWords, wordsBehind } from '../words';
import { writtenBase, writtenNode } from '../written-values';

/** Words that say that the circuit was live; `de-energised` does not. */
const live = /(?<!\bde-?|\bnot )\benergi[sz]ed\b|(?<!not )\blive\b|\bpower(ed)? on\b|\bunder load\b/i;
const dead = /\bde-?energi[sz]ed\b|\bisolated\b|\bdead\b|\blocked out\b/i;

/** Ohms read on a circuit that was live, or of which nobody says that it was isolated. */
export const circuitNotIsolated = defineLint({
  id: 'circuit-not-isolated',
  summary: 'Ohms are read on a circuit that is live or may not be isolated.',
  why:
    'A meter on ohms puts out a small current of its own: on a live circuit the reading is wrong, the meter may burst and the ' +
    'hand with it. On a dead circuit that is still connected, every other path lowers the reading, so a heater seems to draw ' +
    'more than it does.',
  sources: ['NFPA 70E Article 120: an electrically safe work condition', 'Kirchhoff’s laws: parallel paths'],
  severity: 'hint',
  silent: [
    'The sheet says, in a field, a remark or its prose, that the circuit was isolated, dead or disconnected.',
    'The part is out of the circuit, such as wire on a reel.',
    'The resistance is worked out from volts and amperes.',
    'It was asked once: the question is put once a sheet.',
  ],
  fix: 'Inserts `isolated: yes` or `isolated: no`, for one who was there.',
  examples: {
    bad: [
      'tank = heater(resistance: 25.6 Ω, voltage: 240 V)\n',
      'element = 25.6 Ω // energised\ntwice = 2 * element\n',
    ],
    good: ['tank = heater(resistance: 25.6 Ω, voltage: 240 V, isolated: yes)\n'],
  },
  looksAt: [...callNodes, Node.Quantity],
  once: true,
  check(statement, report) {
    if (reportLive(statement, report)) {
      return;
    }
    for (const call of statement.calls) {
      for (const found of call.facts) {
        const { about, isolated, resistanceOhm } = found as HeaterFact;
        const node = argumentNode(statement, call, 'resistance');
        if (about !== 'heater' || node === undefined || resistanceOhm === undefined || !standsHere(statement, call)) {
          continue;
        }
        const place = { ...statement, node };
        const span = argumentSpan(statement, call, 'resistance');
        const ohms = `${figure(resistanceOhm)} Ω`;
        if (isolated === false) {
          report({
            span,
            severity: 'warning',
            message: `${ohms} was read with the element connected: other paths can only lower it, so current and power come out too high. Open every source, prove it dead, lift one end and read again.`,
          });
        } else if (
          isolated === undefined &&
          isOhmReading(place) &&
          !saysDead(statement, node) &&
          !statement.sheet.recordsIsolation()
        ) {
          report({
            span,
            message: `Was the element disconnected and proved dead when it read ${ohms}? Connected, other paths lower the reading; live, it means nothing. Say \`isolated: yes\` or \`isolated: no\`.`,
            fixes: ['yes', 'no'].flatMap((answer) =>
              statementFix(statement, call, 'isolated', answer, `State \`isolated: ${answer}\``),
            ),
          });
        }
      }
    }
  },
});

const saysDead = (statement: LintedStatement, node: number): boolean =>
  dead.test(`${ownWords(statement)} ${wordsBehind({ ...statement, node })}`);

/** A reading whose own remark says that the circuit was live. */
function reportLive(statement: LintedStatement, report: Report): boolean {
  const { tree, node } = statement;
  const expression = [...children(tree, node)][1];
  if (tree.kinds[node] !== Node.Definition || expression === undefined) {
    return false;
  }
  const literal = writtenNode(tree, expression);
  const written = literal === undefined ? undefined : writtenBase(tree, literal);
  if (written?.dimension !== ohmDimension) {
    return false;
  }
  const words = ownWords(statement);
  if (!live.test(words) || dead.test(words)) {
    return false;
  }
  report({
    span: spanOf(tree, expression),
    severity: 'warning',
    message: `${figure(written.base)} Ω is said to be read on a live circuit: neither the reading nor the meter can be trusted now. Open every source, prove it dead, discharge it and read again.`,
  });
  return true;
}
