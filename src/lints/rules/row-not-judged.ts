import { callSpan } from '../argument-places';
import { defineLint } from '../contract';
import { callNodes } from '../statement-kinds';

/** A row of a schedule of circuits that lacks what the lints for circuits go by. */
export const rowNotJudged = defineLint({
  id: 'row-not-judged',
  summary: 'A row is laid out as a circuit and cannot be judged as one.',
  why:
    'Rows with a load and a conductor or device are held to the same rules as `circuit`. Where a row lacks what a rule goes ' +
    'by, such as a motor’s rating in hp or the conductor’s insulation, none of them speaks; silence would then read as if ' +
    'all were well.',
  sources: ['common practice, no source'],
  severity: 'hint',
  silent: [
    'The row has all that its kind of circuit needs.',
    'The row is a spare: it has no load, or neither conductor nor device.',
    'A formula of the schedule calls `circuit` itself: then its own message says what is missing.',
  ],
  examples: {
    bad: [
      'panel = schedule\n  | tag | load | voltage | conductor | ocpd |\n  | P1 | 2 kVA | 208 V | 12 AWG Cu | 20 A |\n',
    ],
    good: [
      'panel = schedule\n  | tag | load | voltage | conductor | ocpd |\n  | P1 | 2 kVA | 208 V | 12 AWG Cu THHN | 20 A |\n',
    ],
  },
  looksAt: callNodes,
  check(statement, report) {
    const call = statement.calls.find(({ unjudged }) => unjudged !== undefined);
    if (call) {
      report({
        span: callSpan(statement, call),
        message: `This row is not judged as a circuit, and nor are others that lack the same. ${call.unjudged}`,
      });
    }
  },
});
