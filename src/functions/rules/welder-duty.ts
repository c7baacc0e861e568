import { type Call, Failure } from '../../language';
import type { WelderDutyRow } from '../../tables';
import { figure } from '../number-text';
import { tablesOf } from '../settings';

/** Welders as a sheet names them, and as the table does. */
const welders = {
  arc: 'arc',
  motor_generator: 'motor generator',
  resistance: 'resistance',
} as const satisfies Readonly<Record<string, WelderDutyRow['welder']>>;
export type WelderWord = keyof typeof welders;
export const welderWords = Object.keys(welders) as WelderWord[];

/** What part of its rated primary current a welder's conductors must carry (NEC Tables 630.11(A) and 630.31(A)). */
export function dutyMultiplier(call: Call, welder: WelderWord, duty: number): number | Failure {
  const found = tablesOf(call).welderDuty(welders[welder], duty);
  if (!found) {
    return new Failure(
      `The table of ${welders[welder]} welders ends below a duty cycle of ${figure(duty)} %: size it as general.`,
      'duty',
      'not-in-table',
    );
  }
  call.table({ symbol: 'k', value: found.row.multiplier, unit: '', source: found.source, row: found.shown });
  return found.row.multiplier;
}
