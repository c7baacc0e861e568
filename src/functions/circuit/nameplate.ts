import { type Call, Failure } from '../../language';
import { type Demand, nameplateDemand } from '../rules/required-current';
import type { KindOfCircuit } from './kinds/kind';

/** A nameplate’s minimum circuit ampacity binds whatever the kind: the load asks for no less, in amperes. */
export function atLeastNameplate(demand: Demand | Failure, mca: number | undefined): Demand | Failure {
  return demand instanceof Failure || mca === undefined || demand.required >= mca
    ? demand
    : nameplateDemand(mca, demand.load);
}

/** What says something of welders alone would be passed over elsewhere: the sheet hears of it. */
export function onlyForWelders(args: {
  readonly kind?: string;
  readonly duty?: number;
  readonly welder?: string;
}): Failure | undefined {
  const given = args.duty !== undefined ? 'duty' : args.welder !== undefined ? 'welder' : undefined;
  return given === undefined || args.kind === 'welder'
    ? undefined
    : new Failure(
        `Only a welder is sized by \`${given}\`, and ${args.kind ? `the kind is ${args.kind}` : 'the kind is not said'}: write \`kind: welder\`, or take \`${given}\` out.`,
        given,
        'not-for-this-kind',
      );
}

/** The terminals’ rating in °C: as given, or what the kind’s own table takes; by rule where it is undefined. */
export function terminalsOf(
  call: Call,
  given: number | undefined,
  { unmarkedTerminals }: KindOfCircuit,
): number | undefined {
  if (given === undefined && unmarkedTerminals) {
    call.assume(`terminals not given: ${unmarkedTerminals.rating} °C, as ${unmarkedTerminals.by} takes`);
    return unmarkedTerminals.rating;
  }
  return given;
}
