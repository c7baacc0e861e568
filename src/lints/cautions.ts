import type { Fact, Program } from '../language';
import { parseUnit } from '../units';
import { ohmDimension } from './readings';

/** Advice about work that can hurt someone; shown once a sheet, never on a line. */
export interface Caution {
  readonly id: string;
  readonly text: string;
}

/** Texts in our own words; the practice behind them is that of NFPA 70E Article 120 and OSHA 1910.147 and 1910.333. */
const ohmsOnDeadCircuit =
  'Read resistance and continuity only on a circuit that is de-energised, locked out, proved dead and discharged, with one ' +
  'lead of the part lifted. Check the tester on a known source before and after. A parallel path makes a reading too low.';
const readingsAreLimited =
  'A result is only as good as its readings: the meter, its leads, the temperature, the isolation.';
const insulationTest =
  'Before an insulation test, isolate the part, disconnect electronics and keep people clear; discharge it afterwards.';
const aid =
  'This calculation is an aid and approves nothing. The adopted code with its local amendments, the listing of the ' +
  'equipment, the authority having jurisdiction and a licensed person decide.';

const insulationFunctions: ReadonlySet<string> = new Set(['insulation_resistance_at', 'polarization_index']);
const sizingFacts: ReadonlySet<Fact['about']> = new Set(['circuit', 'ampacity']);

/** The cautions that fit what the sheet holds. */
export function cautionsFor(program: Program, cells: Iterable<string>): Caution[] {
  const all = [...cells];
  const calls = all.flatMap((cell) => program.results(cell).flatMap((result) => result.calls()));
  const facts = calls.flatMap((call) => call.facts);
  const editions = new Set(facts.flatMap((fact) => ('edition' in fact ? [String(fact.edition)] : [])));
  const cautions: Caution[] = [];
  if (all.some((cell) => holdsOhms(program, cell))) {
    cautions.push({ id: 'ohms-on-dead-circuit', text: ohmsOnDeadCircuit });
    cautions.push({ id: 'readings-are-limited', text: readingsAreLimited });
  }
  if (calls.some((call) => insulationFunctions.has(call.function))) {
    cautions.push({ id: 'insulation-test', text: insulationTest });
  }
  if (facts.some((fact) => sizingFacts.has(fact.about))) {
    cautions.push({ id: 'aid-only', text: [aid, ...[...editions].map(editionText)].join(' ') });
  }
  return cautions;
}

const editionText = (edition: string): string =>
  `Tables and section numbers are those of ${edition}; other editions differ.`;

/** True when a resistance is written in the cell. */
const holdsOhms = (program: Program, cell: string): boolean =>
  (program.tree(cell)?.unitTexts ?? []).some((text) => {
    const unit = parseUnit(text);
    return !('problem' in unit) && unit.type.dimension === ohmDimension;
  });
