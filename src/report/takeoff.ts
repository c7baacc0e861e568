import { showNumber } from '../display';
import { message, type Part, paragraph, type Table, words } from './document';
import type { ReportCircuit, ReportInput } from './input';

/** Quantities to order, from the circuits of a sheet. Lengths in feet. */
export interface Takeoff {
  readonly wire: readonly WireLine[];
  readonly raceway: readonly { readonly raceway: string; readonly feet: number; readonly feetToOrder: number }[];
  readonly devices: readonly { readonly device: string; readonly count: number }[];
  /** Added to every length. */
  readonly wastePercent: number;
  /** True when the sheet says how much. */
  readonly wasteGiven: boolean;
  /** The circuits that are counted. */
  readonly of: readonly string[];
  /** Circuits left out, because their length is not given. */
  readonly without: readonly string[];
}

export interface WireLine {
  readonly conductor: string;
  readonly feet: number;
  readonly feetToOrder: number;
}

/** Cable waste of 5 to 10 % is usual: common practice, no source. */
const usualWastePercent = 5;

/**
 * Totals per conductor size and metal, raceway and device. Each circuit takes its live conductors (three for three
 * phases, else two) in every set, and one equipment grounding conductor a set. `takeoff: a, b` in the front matter names
 * the circuits to count, for a sheet that also works out what is not to be ordered.
 */
export function takeoffOf({ circuits: all, details }: ReportInput): Takeoff | undefined {
  const named = details
    .find(([key]) => key === 'takeoff')?.[1]
    .split(',')
    .map((tag) => tag.trim());
  const circuits = named ? all.filter(({ tag }) => named.includes(tag)) : all;
  if (circuits.length === 0) {
    return undefined;
  }
  const stated = Number(/^(\d+(?:\.\d+)?) ?%?$/.exec(details.find(([key]) => key === 'waste')?.[1].trim() ?? '')?.[1]);
  const wasteGiven = Number.isFinite(stated);
  const wastePercent = wasteGiven ? stated : usualWastePercent;
  const wire = new Map<string, number>();
  const raceway = new Map<string, number>();
  const devices = new Map<string, number>();
  for (const circuit of circuits) {
    add(devices, `${showNumber(circuit.ocpdAmps)} A, ${poles(circuit)} pole`, 1);
    if (circuit.lengthFeet === undefined) {
      continue;
    }
    add(wire, circuit.conductorSize, circuit.lengthFeet * circuit.sets * (circuit.phases === 3 ? 3 : 2));
    if (circuit.egc !== '') {
      add(wire, `${circuit.egc}, equipment grounding`, circuit.lengthFeet * circuit.sets);
    }
    if (circuit.raceway !== '') {
      add(raceway, circuit.raceway, circuit.lengthFeet * circuit.sets);
    }
  }
  const factor = 1 + wastePercent / 100;
  const inOrder = (map: Map<string, number>) =>
    [...map].sort(([a], [b]) => a.localeCompare(b, 'en', { numeric: true }));
  return {
    wire: inOrder(wire).map(([conductor, feet]) => ({ conductor, feet, feetToOrder: Math.ceil(feet * factor) })),
    raceway: inOrder(raceway).map(([name, feet]) => ({ raceway: name, feet, feetToOrder: Math.ceil(feet * factor) })),
    devices: inOrder(devices).map(([device, count]) => ({ device, count })),
    wastePercent,
    wasteGiven,
    of: circuits.map(({ tag }) => tag),
    without: circuits.filter(({ lengthFeet }) => lengthFeet === undefined).map(({ tag }) => tag),
  };
}

/** Up to 150 V to ground from one live conductor, else one pole a live conductor. */
const poles = ({ phases, volts }: ReportCircuit): number =>
  phases === 3 ? 3 : volts !== undefined && onePole.has(Math.round(volts)) ? 1 : 2;

/** Nominal and utilisation voltages from one line to neutral: common practice, no source. */
const onePole: ReadonlySet<number> = new Set([115, 120, 265, 277, 347]);

function add(totals: Map<string, number>, key: string, amount: number): void {
  totals.set(key, (totals.get(key) ?? 0) + amount);
}

/** Longer lists of circuits stand in the schedule. */
const mostNamed = 12;

export function takeoffParts(takeoff: Takeoff | undefined): Part[] {
  if (!takeoff) {
    return [];
  }
  const { wire, raceway, devices, wastePercent, wasteGiven, without, of } = takeoff;
  const lengths = (title: string, lines: readonly (readonly [string, number, number])[]): Table[] =>
    lines.length === 0
      ? []
      : [
          {
            kind: 'table',
            columns: [
              { title, width: 3 },
              { title: 'Length ft', align: 'right' },
              { title: 'To order ft', align: 'right' },
            ],
            rows: lines.map(([name, feet, order]) => [words(name), words(showNumber(feet)), words(showNumber(order))]),
          },
        ];
  return [
    {
      kind: 'paragraph',
      content: message(
        `Of ${of.length > mostNamed ? `all ${of.length} circuits` : of.join(', ')}. Lengths to order include ` +
          `${showNumber(wastePercent)} % for waste${wasteGiven ? '' : ', taken because the sheet states none (`waste: 7 %` in its front matter)'}. ` +
          'Counted are two live conductors a circuit, three for three phases, and one equipment grounding conductor, in ' +
          'each set; neutrals of three-phase circuits and make-up at the ends are not.',
      ),
    },
    ...lengths(
      'Conductor',
      wire.map((line) => [line.conductor, line.feet, line.feetToOrder] as const),
    ),
    ...lengths(
      'Raceway',
      raceway.map((line) => [line.raceway, line.feet, line.feetToOrder] as const),
    ),
    {
      kind: 'table',
      columns: [
        { title: 'Overcurrent device', width: 4 },
        { title: 'Count', align: 'right' },
      ],
      rows: devices.map(({ device, count }) => [words(device), words(String(count))]),
    },
    ...(without.length > 0 ? [paragraph(`Without a length, and so not counted: ${without.join(', ')}.`)] : []),
  ];
}
