import { figure } from '../../functions';
import { type CallRecord, Node, unitSpanOf } from '../../language';
import { argumentNode, argumentSpan, ungrouped } from '../argument-places';
import { defineLint } from '../contract';
import { callNodes } from '../statement-kinds';

/** Above these, in °C, the number was more likely read in °F. */
const oddFrom: Readonly<Record<string, { readonly parameter: string; readonly celsius: number } | undefined>> = {
  conductor_length: { parameter: 'temperature', celsius: 50 },
  ampacity: { parameter: 'ambient', celsius: 72 },
  circuit: { parameter: 'ambient', celsius: 72 },
  conductor_for: { parameter: 'ambient', celsius: 72 },
  largest_ocpd: { parameter: 'ambient', celsius: 72 },
};

/** The conductor tables' own temperature, in °C, is stated on purpose. */
const tableTemperature = 75;

const celsiusUnit = /^(°C|degC)$/;

/** Degrees Celsius where Fahrenheit is likelier. */
export const fahrenheitSlip = defineLint({
  id: 'fahrenheit-slip',
  summary: 'A temperature in °C is so high that °F may have been meant.',
  why:
    'A reel that lies in a store is not at 68 °C, and wiring seldom runs through air of 86 °C; both are ordinary in °F. The slip ' +
    'changes a length by a fifth and an ampacity by half.',
  sources: ['common practice, no source'],
  severity: 'hint',
  silent: [
    'The temperature is one that a reel or a roof has.',
    'It is 75 °C, that of the tables.',
    'It is written in °F.',
  ],
  fix: 'Writes °F, on a person’s word.',
  examples: {
    bad: ['left = conductor_length(0.52 Ω, 12 AWG Cu stranded, temperature: 68 °C, leads: 0.04 Ω)\n'],
    good: ['left = conductor_length(0.52 Ω, 12 AWG Cu stranded, temperature: 68 °F, leads: 0.04 Ω)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    const { tree } = statement;
    for (const call of statement.calls) {
      const odd = oddFrom[call.function];
      const argument = odd && argumentNode(statement, call, odd.parameter);
      const node = argument === undefined ? undefined : ungrouped(tree, argument);
      if (!odd || node === undefined || tree.kinds[node] !== Node.Quantity) {
        continue;
      }
      const value = tree.numbers[node];
      if (celsiusUnit.test(tree.unitTexts[tree.units[node]]) && value > odd.celsius && value !== tableTemperature) {
        const span = unitSpanOf(tree, node);
        report({
          span: argumentSpan(statement, call, odd.parameter),
          message: `Is ${figure(value)} °C meant, and not ${figure(value)} °F? ${whatItIs(call)} is seldom as hot.`,
          fixes: [{ title: 'Write °F', edits: [{ span, newText: '°F' }], safe: false }],
        });
      }
    }
  },
});

const whatItIs = (call: CallRecord): string =>
  call.function === 'conductor_length' ? 'A conductor that is measured' : 'The air around a conductor';
