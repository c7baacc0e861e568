import { type Conductor, conductorText, conductorType } from '../../functions';
import { argumentSpan } from '../argument-places';
import { defineLint } from '../contract';
import { cited, editionOf } from '../editions';
import { callNodes } from '../statement-kinds';

/** Area between 14 AWG (2.08 mm²) and 12 AWG (3.31 mm²), the smallest aluminum conductor for wiring. */
const below12Mm2 = 2.6;

/** Calls that measure or compare conductors and do not install them. */
const notInstalled: ReadonlySet<string> = new Set(['conductor_length', 'resistance_per_length', 'resistance']);

/** Aluminum below the smallest size for wiring. */
export const aluminumTooSmall = defineLint({
  id: 'aluminum-too-small',
  summary: 'An aluminum conductor is smaller than aluminum is made for wiring.',
  why:
    'Aluminum is weaker than copper and its small sizes break at terminals, so its smallest size for general wiring is ' +
    '12 AWG, where copper begins at 14 AWG.',
  sources: ['NEC 310.3(A); Table 310.106(A) before 2020; from memory'],
  severity: 'error',
  silent: ['The conductor is copper, or aluminum of 12 AWG or larger.', 'A length or a resistance is only measured.'],
  examples: {
    bad: ['drop = voltage_drop(14 AWG Al, 10 A, 40 ft)\n'],
    good: ['drop = voltage_drop(12 AWG Al, 10 A, 40 ft)\n'],
  },
  looksAt: callNodes,
  check(statement, report) {
    for (const call of statement.calls) {
      const value = call.arguments.get('conductor')?.value;
      if (value?.kind !== 'object' || value.object !== (conductorType as unknown) || notInstalled.has(call.function)) {
        continue;
      }
      const conductor = value.value as Conductor;
      if (conductor.material === 'Al' && conductor.size.mm2 < below12Mm2) {
        report({
          span: argumentSpan(statement, call, 'conductor'),
          message: `${conductorText(conductor)} is smaller than aluminum is allowed: wiring begins at 12 AWG aluminum, 14 AWG copper (${cited(editionOf(statement.program.library.settings), '310.3(A)')}, from memory). Use 12 AWG Al or larger, or copper.`,
        });
      }
    }
  },
});
