import { conductorText, figure, type LengthFact, type ResistancePerLengthFact } from '../../functions';
import { type CallRecord, children, Node, nodesBelow, Operator, spanOf } from '../../language';
import type { Fix } from '../../text';
import { argumentInsertion, argumentSpan } from '../argument-places';
import { defineLint, type LintedStatement } from '../contract';
import { statementFix } from '../device-fixes';
import { callBehind, isOhmReading, ohmPerLengthDimension, resolved, writtenQuantity } from '../readings';
import { callNodes } from '../statement-kinds';
import { tableFigureText } from '../table-figures';

/** What a copper or aluminum conductor reads at 20 °C, as a part of its 75 °C table figure, is about this. */
const roomTemperatureC = 20;

/** Figures for a length, printed or called for. */
const anyFigure = /(Ω|Ω|ohms?)\/|resistance_per_length/;

/** A measured resistance set against a table figure for another temperature. */
export const tableTemperature = defineLint({
  id: 'table-temperature',
  summary: 'A measured resistance meets a table figure whose temperature is not the conductor’s.',
  why:
    'The conductor tables of the code give resistance at 75 °C, an operating temperature. A reel at 20 °C reads 18 % less, so ' +
    'its length comes out 18 % short when the table figure is used as it stands. Each 10 °C is about 4 % of resistance.',
  sources: [
    'NEC Chapter 9 Table 8: resistances at 75 °C, note on other temperatures',
    'NBS copper wire tables: resistances at 20 °C',
  ],
  severity: 'warning',
  silent: [
    'The temperature is given.',
    'A figure at 20 °C is used.',
    'The resistance is an allowance worked out from volts and amperes: voltage drop is judged at operating temperature.',
    'The resistance per length comes from a sample of the same reel.',
  ],
  fix: 'Inserts the temperature, to be filled in with the conductor’s own.',
  examples: {
    bad: [
      'left = conductor_length(0.52 Ω, 12 AWG Cu stranded, leads: 0.04 Ω)\n',
      'reading = 0.48 Ω\nleft = reading / resistance_per_length(12 AWG Cu stranded)\n',
      'reading = 0.48 Ω\nleft = reading / 1.98 Ω/kft\n',
    ],
    good: [
      'left = conductor_length(0.52 Ω, 12 AWG Cu stranded, temperature: 18 °C, leads: 0.04 Ω)\n',
      'reading = 0.48 Ω\nleft = reading / resistance_per_length(12 AWG Cu stranded, temperature: 20 °C)\n',
      'allowed = 3.6 V / 16 A\nlongest = allowed / 2 / resistance_per_length(12 AWG Cu stranded)\n',
    ],
  },
  looksAt: [...callNodes, Node.Binary],
  check(statement, report) {
    for (const call of statement.calls) {
      for (const fact of call.facts) {
        const { temperatureGiven } = fact as LengthFact;
        if (fact.about === 'length' && !temperatureGiven) {
          report({
            span: argumentSpan(statement, call, 'resistance'),
            severity: 'hint',
            message: untoldMessage(fact as LengthFact),
            fixes: temperatureFix(statement, call, (fact as LengthFact).temperatureC),
          });
        }
      }
    }
    if (!statement.sheet.mentions(anyFigure)) {
      return;
    }
    for (const { quotient, divisor } of lengthDivisions(statement)) {
      const found = hotFigure(statement, divisor);
      if (found && isOhmReading({ ...statement, node: statement.tree.firstChildren[quotient] })) {
        report({ span: spanOf(statement.tree, quotient), message: found.message, fixes: found.fixes });
      }
    }
  },
});

const untoldMessage = (fact: LengthFact): string =>
  `At what temperature was the conductor? ${figure(fact.temperatureC)} °C is taken, which gives ${figure(fact.lengthFt)} ft; at the table's own 75 °C it would be ${figure(fact.lengthAtTableTemperatureFt)} ft, and each 10 °C is about 4 %. Give the reel's own temperature as \`temperature:\`.`;

const temperatureFix = (statement: LintedStatement, call: CallRecord, celsius: number): Fix[] =>
  statementFix(statement, call, 'temperature', `${celsius} °C`, `State \`temperature: ${celsius} °C\``);

/** Divisions in the statement, outermost first. */
function* lengthDivisions(statement: LintedStatement): Generator<{ quotient: number; divisor: number }> {
  const { tree } = statement;
  for (const node of nodesBelow(tree, statement.node)) {
    if (tree.kinds[node] === Node.Binary && tree.operators[node] === Operator.Divide) {
      const [, divisor] = [...children(tree, node)];
      yield { quotient: node, divisor };
    }
  }
}

/** What to say of a divisor that is a 75 °C figure whose temperature nobody gave; nothing for any other. */
function hotFigure(
  statement: LintedStatement,
  divisor: number,
): { message: string; fixes: readonly Fix[] } | undefined {
  const place = resolved({ ...statement, node: divisor });
  const written = writtenQuantity(place, ohmPerLengthDimension);
  if (written) {
    const named = tableFigureText(statement.program.library.settings, written.value, written.unit);
    return named === undefined
      ? undefined
      : { message: `${figure(written.value)} ${written.unit} is the ${named}; ${consequence}`, fixes: [] };
  }
  const found = callBehind(statement, place)?.call;
  const fact = found?.facts.find((candidate) => candidate.about === 'resistance per length') as
    | ResistancePerLengthFact
    | undefined;
  if (!found || !fact || fact.temperatureGiven || found.function !== 'resistance_per_length') {
    return undefined;
  }
  const edit = argumentInsertion(statement, found, 'temperature', `${roomTemperatureC} °C`);
  return {
    message: `The figure for ${conductorText(fact.conductor)}, ${figure(fact.ohmPerKft)} Ω/kft, is at ${figure(fact.temperatureC)} °C; ${consequence}`,
    fixes: edit ? [{ title: `State \`temperature: ${roomTemperatureC} °C\``, edits: [edit], safe: false }] : [],
  };
}

const consequence =
  'a conductor at 20 °C reads about 18 % less, so this length comes out about 18 % short. Give the temperature of the conductor, or use `conductor_length`.';
