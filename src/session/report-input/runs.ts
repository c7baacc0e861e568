import { showNumber, showValue } from '../../display';
import { type Conductor, conductorType } from '../../functions';
import type { Program, Value } from '../../language';
import type { ReportCircuit, ReportPrice, ReportRun } from '../../report';
import { dimensionOf, fromBase } from '../../units';
import { feet } from './circuits';

/** What is pulled and installed: every circuit, and every row of a schedule that names a conductor. */
export function runsOf(program: Program, cells: readonly string[], circuits: readonly ReportCircuit[]): ReportRun[] {
  const rows = cells.flatMap((cell) =>
    program
      .results(cell)
      .flatMap(({ value }) => (value?.kind === 'list' && value.schedule ? value.items.flatMap(rowRun) : [])),
  );
  return [...circuits.map(circuitRun), ...rows];
}

const circuitRun = (circuit: ReportCircuit): ReportRun => ({
  tag: circuit.tag,
  phases: circuit.phases,
  sets: circuit.sets,
  conductorSize: circuit.conductorSize,
  egc: circuit.egc,
  raceway: circuit.raceway,
  lengthFeet: circuit.lengthFeet,
  device: deviceText(circuit.ocpdAmps, circuit.phases, circuit.volts),
});

/** Columns are known by the names that `circuit` has for the same. */
function rowRun(row: Value): ReportRun[] {
  const field = (name: string) => (row.kind === 'record' ? row.fields.get(name) : undefined);
  const conductor = sizeOf(field('conductor'));
  if (row.kind !== 'record' || conductor === undefined) {
    return [];
  }
  const phases = numberOf(field('phases'));
  const ocpd = numberOf(field('ocpd'));
  const [first] = row.fields.values();
  return [
    {
      tag: first ? showValue(first) : '',
      phases,
      sets: numberOf(field('sets')) ?? 1,
      conductorSize: conductor,
      egc: sizeOf(field('egc')) ?? '',
      raceway: '',
      lengthFeet: feet(field('length')),
      ...(ocpd !== undefined && { device: deviceText(ocpd, phases, numberOf(field('voltage'))) }),
    },
  ];
}

const sizeOf = (value: Value | undefined): string | undefined => {
  if (value?.kind !== 'object' || value.object.name !== conductorType.name) {
    return undefined;
  }
  const { size, material } = value.value as Conductor;
  return `${size.text} ${material}`;
};

const numberOf = (value: Value | undefined): number | undefined =>
  value?.kind === 'quantity' ? fromBase(value.base, value.unit) : undefined;

const deviceText = (amps: number, phases: number | undefined, volts: number | undefined): string =>
  `${showNumber(amps)} A, ${poles(phases, volts)} pole`;

/** One pole for a voltage from one line to neutral, else one a live conductor. */
const poles = (phases: number | undefined, volts: number | undefined): number =>
  phases === 3 ? 3 : volts !== undefined && lineToNeutral.has(Math.round(volts)) ? 1 : 2;

/** Nominal and utilisation voltages from one line to neutral: common practice, no source. */
const lineToNeutral: ReadonlySet<number> = new Set([115, 120, 265, 277, 347]);

const currencies = ['USD', 'CAD', 'MXN', 'EUR', 'GBP'] as const;
const metresPerFoot = 0.3048;

/** Names that begin with `price_` and are money, or money for a length. */
export const pricesOf = (values: ReadonlyMap<string, Value>): ReportPrice[] =>
  [...values].flatMap(([name, value]): ReportPrice[] => {
    if (!name.startsWith('price_') || value.kind !== 'quantity') {
      return [];
    }
    const { dimension } = value.type;
    for (const currency of currencies) {
      if (dimension === dimensionOf({ [currency]: 1 })) {
        return [{ name, currency, each: value.base }];
      }
      if (dimension === dimensionOf({ [currency]: 1, length: -1 })) {
        return [{ name, currency, perFoot: value.base * metresPerFoot }];
      }
    }
    return [];
  });
