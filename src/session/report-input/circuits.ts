import { showValue } from '../../display';
import { type CircuitFact, conductorText } from '../../functions';
import type { CallRecord, Program, Value } from '../../language';
import type { ReportCircuit } from '../../report';
import { fromBase } from '../../units';

/** Every circuit of the sheet in order of place, as its rules saw it. */
export const circuitsOf = (program: Program, cells: readonly string[]): ReportCircuit[] =>
  cells.flatMap((cell) =>
    program.results(cell).flatMap((result) => {
      const calls = result.calls().filter((call) => call.function === 'circuit' && call.result);
      return calls.flatMap((call, i) => circuitOf(call, tagOf(result.name, calls.length, i)));
    }),
  );

const tagOf = (name: string | undefined, count: number, i: number): string =>
  count > 1 ? `${name ?? 'circuit'} ${i + 1}` : (name ?? 'circuit');

function circuitOf(call: CallRecord, tag: string): ReportCircuit[] {
  const fact = call.facts.find((found): found is CircuitFact => found.about === 'circuit');
  if (!fact) {
    return [];
  }
  const { size, material } = fact.conductor;
  return [
    {
      tag,
      kind: fact.kind ?? '',
      phases: number(call.arguments.get('phases')?.value),
      volts: number(call.arguments.get('voltage')?.value),
      loadAmps: fact.loadCurrent,
      continuous: fact.continuousGiven ? fact.continuous : undefined,
      ampacityAmps: fact.totalAmpacity,
      requiredAmps: fact.requiredAmpacity,
      ocpdAmps: fact.ocpd,
      sets: fact.sets,
      conductor: conductorText(fact.conductor),
      conductorSize: `${size.text} ${material}`,
      egc: fact.egc ? `${fact.egc.size.text} ${fact.egc.material}` : '',
      raceway: racewayOf(call),
      lengthFeet: feet(call.arguments.get('length')?.value),
      dropPercent: fact.drop?.percent,
      dropLimitPercent: fact.drop?.limitPercent,
    },
  ];
}

/** Size and type where a size is worked out, which is of EMT where the sheet names no type; else nothing. */
function racewayOf({ result, arguments: given }: CallRecord): string {
  const size = result?.kind === 'record' ? result.fields.get('raceway') : undefined;
  const type = given.get('raceway')?.value;
  return size && size.kind !== 'absent' ? `${showValue(size)} ${type?.kind === 'choice' ? type.value : 'EMT'}` : '';
}

const number = (value: Value | undefined): number | undefined =>
  value?.kind === 'quantity'
    ? fromBase(value.base, value.unit)
    : value?.kind === 'choice'
      ? Number(value.value)
      : undefined;

const metresPerFoot = 0.3048;

export const feet = (value: Value | undefined): number | undefined =>
  value?.kind === 'quantity' ? value.base / metresPerFoot : undefined;

/** What a circuit does not say, so that a rule could not speak. */
export function openQuestions(circuits: readonly ReportCircuit[]): string[] {
  const without = (sentence: string, open: (circuit: ReportCircuit) => boolean) => {
    const tags = circuits.filter(open).map(({ tag }) => tag);
    return tags.length === 0 ? [] : [`${sentence}: ${tags.join(', ')}.`];
  };
  return [
    ...without(
      'The kind of load is not stated, so rules for one kind alone were not applied',
      ({ kind }) => kind === '',
    ),
    ...without('Whether the load is continuous is not stated', ({ continuous }) => continuous === undefined),
    ...without(
      'No length is stated, so the voltage drop was not worked out',
      ({ lengthFeet }) => lengthFeet === undefined,
    ),
  ];
}
