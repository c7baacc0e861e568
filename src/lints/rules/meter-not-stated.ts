import { figure } from '../../functions';
import { children, Node } from '../../language';
import { argumentNode, argumentSpan, calledName, standsHere } from '../argument-places';
import { defineLint } from '../contract';
import { isOhmReading, type Place, resolved } from '../readings';
import { callNodes } from '../statement-kinds';
import { ownWords, wordsBehind } from '../words';

const measuring: ReadonlySet<string> = new Set(['conductor_length', 'heater']);
const notMeasured = /\bnameplate\b|\blabel(led)?\b|\btable\b|\bassumed\b|\bdata ?sheet\b|\brated\b|\bsample\b/i;

/** A reading without a meter in a sheet that states meters for others. */
export const meterNotStated = defineLint({
  id: 'meter-not-stated',
  summary: 'A reading carries no doubt, in a sheet that states its meters.',
  why:
    'A check on a plain number answers yes or no as if the number were exact. Where a sheet states its meters, a reading ' +
    'without one gives a firmer answer than it can.',
  sources: ['JCGM 106 and ILAC-G8: a verdict takes the doubt of the measurement into account'],
  severity: 'hint',
  silent: [
    'The sheet states no meter at all: it is a sketch.',
    'The value is marked as nameplate, table or assumed.',
    'The reading says its meter or its limits.',
  ],
  examples: {
    bad: [
      'pocket = meter(reading: 0.8 %, digits: 5)\nvolts = 240 V by pocket\nleft = conductor_length(0.52 Ω, 12 AWG Cu stranded, temperature: 20 °C, leads: 0.04 Ω)\ntwice = 2 * volts\n',
    ],
    good: ['left = conductor_length(0.52 Ω, 12 AWG Cu stranded, temperature: 20 °C, leads: 0.04 Ω)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      const node = argumentNode(statement, call, 'resistance');
      if (!measuring.has(call.function) || node === undefined || !standsHere(statement, call)) {
        continue;
      }
      const place = { ...statement, node };
      const words = `${ownWords(statement)} ${wordsBehind(place)}`;
      const value = call.arguments.get('resistance')?.value;
      if (isOhmReading(place) && !carriesDoubt(place) && !notMeasured.test(words) && statement.sheet.statesMeters()) {
        const ohms = value?.kind === 'quantity' ? `${figure(value.base)} Ω` : 'This reading';
        report({
          span: argumentSpan(statement, call, 'resistance'),
          message: `Which meter read ${ohms}? Other readings here say theirs; without one, what hangs on it looks surer than it is. Write \`by\` and the meter, or \`±\` its limits.`,
        });
      }
    }
  },
});

/** True when a meter or limits are written somewhere on the way to the reading. */
function carriesDoubt(place: Place): boolean {
  const { tree, node, ...rest } = resolved(place);
  switch (tree.kinds[node]) {
    case Node.Reading:
    case Node.PlusMinus:
      return true;
    case Node.Call:
      return calledName(tree, node) === 'measured';
    case Node.Binary:
      return [...children(tree, node)].some((side) => carriesDoubt({ ...rest, tree, node: side }));
    default:
      return false;
  }
}
