import { type CallRecord, type Fact, Node, type Program, type StatementResult, type SyntaxTree } from '../language';
import type { Dimension } from '../units';
import { ohmDimension } from './readings';
import { ampereDimension, voltDimension, writtenBase } from './written-values';

/** Advice about work that can hurt someone; shown once a sheet, never on a line. */
export interface Caution {
  readonly id: string;
  readonly text: string;
}

/** What a sheet holds, as far as cautions hang on it. */
interface Held {
  readonly ohms: boolean;
  /** Volts or amperes read with a meter: somebody stood before live parts. */
  readonly liveReadings: boolean;
  readonly calls: readonly CallRecord[];
  readonly facts: readonly Fact[];
  readonly findings: ReadonlySet<string>;
}

interface Rule extends Caution {
  readonly applies: (held: Held) => boolean;
}

const insulationFunctions: ReadonlySet<string> = new Set(['insulation_resistance_at', 'polarization_index']);
const sizingFacts: ReadonlySet<Fact['about']> = new Set(['circuit', 'ampacity', 'fault', 'raceway']);
/** Functions that size or choose something and leave no fact. */
const sizingFunctions: ReadonlySet<string> = new Set([
  'conductor_for_drop',
  'dryer_demand',
  'dwelling_load',
  'egc_for',
  'gec_for',
  'lighting_demand',
  'longest_run',
  'motor_circuit',
  'ocpd_for',
  'range_demand',
  'supply_bonding_for',
  'transformer_ocpd',
  'voltage_drop',
]);

/** Texts in our own words; the practice behind them is that of NFPA 70E Article 120, OSHA 1910.147 and 1910.333 and IEC 61010. */
const rules: readonly Rule[] = [
  {
    id: 'open-neutral',
    text:
      'An open neutral can wreck what is connected within minutes: open the main and call the utility or an electrician. Leave ' +
      'nothing on to take more readings.',
    applies: ({ findings }) => findings.has('open-neutral'),
  },
  {
    id: 'ohms-on-dead-circuit',
    text:
      'Read resistance and continuity only on a circuit that is de-energised, locked out, proved dead and discharged, with one ' +
      'lead of the part lifted. Check the tester on a known source before and after. A parallel path makes a reading too low.',
    applies: ({ ohms }) => ohms,
  },
  {
    id: 'live-readings',
    text:
      'Readings on live parts are for qualified people, with the protective equipment and permit that the task asks for. Meter, ' +
      'leads and probes carry the category and voltage of the place, and the lowest of them counts: CAT II at outlets, CAT III ' +
      'at panels and feeders, CAT IV at the service. A pen that glows, or a voltage that collapses, proves nothing dead.',
    applies: ({ liveReadings }) => liveReadings,
  },
  {
    id: 'insulation-test',
    text: 'Before an insulation test, isolate the part, disconnect electronics and keep people clear; discharge it afterwards.',
    applies: ({ calls }) => calls.some((call) => insulationFunctions.has(call.function)),
  },
  {
    id: 'readings-are-limited',
    text: 'A result is only as good as its readings: the meter, its leads, the temperature, the isolation.',
    applies: ({ ohms, liveReadings }) => ohms || liveReadings,
  },
  {
    id: 'aid-only',
    text:
      'This calculation is an aid and approves nothing. The adopted code with its local amendments, the listing of the ' +
      'equipment, the authority having jurisdiction and a licensed person decide.',
    applies: ({ facts, calls }) =>
      facts.some((fact) => sizingFacts.has(fact.about)) || calls.some((call) => sizingFunctions.has(call.function)),
  },
];

/** The cautions that fit what the sheet holds, each once; `findings` are the ids of what its lints found. */
export function cautionsFor(
  program: Program,
  cells: Iterable<string>,
  findings: ReadonlySet<string> = new Set(),
): Caution[] {
  const all = [...cells];
  const trees = all.flatMap((cell) => program.tree(cell) ?? []);
  const calls = all.flatMap((cell) => program.results(cell).flatMap(callsIn));
  const facts = calls.flatMap((call) => call.facts);
  const held: Held = {
    ohms: trees.some((tree) => holds(tree, Node.Quantity, [ohmDimension])),
    liveReadings: trees.some((tree) => holds(tree, Node.Reading, [voltDimension, ampereDimension])),
    calls,
    facts,
    findings,
  };
  const editions = new Set(facts.flatMap((fact) => ('edition' in fact ? [String(fact.edition)] : [])));
  return rules
    .filter((rule) => rule.applies(held))
    .map(({ id, text }) => ({
      id,
      text: id === 'aid-only' ? [text, ...[...editions].map(editionText)].join(' ') : text,
    }));
}

/** The calls of a statement. Of a schedule one row is enough: all rows call the same. */
function callsIn(result: StatementResult): readonly CallRecord[] {
  for (const { calls } of result.rows?.() ?? []) {
    return calls;
  }
  return result.calls();
}

const editionText = (edition: string): string =>
  `Tables and section numbers are those of ${edition}; other editions differ.`;

/** True when a quantity of one of these dimensions is written in the tree, for a reading with its meter. */
function holds(tree: SyntaxTree, kind: Node.Quantity | Node.Reading, dimensions: readonly Dimension[]): boolean {
  for (let node = 0; node < tree.count; node++) {
    const literal = kind === Node.Reading ? tree.firstChildren[node] : node;
    if (tree.kinds[node] === kind && literal >= 0 && tree.kinds[literal] === Node.Quantity) {
      const written = writtenBase(tree, literal);
      if (written && dimensions.includes(written.dimension)) {
        return true;
      }
    }
  }
  return false;
}
