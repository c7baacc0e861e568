import { showNumber } from '../../../display';
import { type Conductor, resistanceReference, type TradeSettings } from '../../../functions';
import type { Program } from '../../../language';
import type { Stranding } from '../../../tables';
import { captioned, table } from '../../markdown';
import { unwatchedCall } from '../../unwatched-call';

const strandings: readonly Stranding[] = ['stranded', 'solid'];
const feetPerKilometre = 1 / 0.3048;

/**
 * DC resistance at the temperatures that tables print, 75 °C and 20 °C: one row for each make of the size, stranded or
 * solid, and for copper coated or not; the conductor's own in bold.
 */
export function resistanceTable(program: Program, conductor: Conductor): string {
  const { tables } = program.library.settings as TradeSettings;
  const coatings = conductor.material === 'Cu' ? [false, true] : [false];
  const makes = strandings.flatMap((stranding) =>
    coatings.map((coated): Conductor => ({ ...conductor, stranding, coated, strandingGiven: true })),
  );
  const found = makes.flatMap((make) => {
    const reference = resistanceReference(tables, make);
    return reference ? [{ make, reference }] : [];
  });
  // A size that two standards have in different makes is told by the standard of its own make.
  const own = found.find(({ make }) => isOwn(make, conductor)) ?? found[0];
  const listed = found.filter(({ reference }) => reference.source.standard === own?.reference.source.standard);
  if (!own) {
    return '';
  }
  const { referenceC } = own.reference;
  const rows = listed.map(({ make }) => {
    const name = make.material === 'Cu' ? `${make.stranding}, ${make.coated ? 'coated' : 'uncoated'}` : make.stranding;
    const cells = [name, at(program, make, 75), at(program, make, 20)];
    return isOwn(make, conductor) ? cells.map((cell) => `**${cell}**`) : cells;
  });
  const coefficient = tables.temperatureCoefficient(conductor.material, referenceC);
  const other = referenceC === 75 ? 20 : 75;
  const alpha = coefficient?.row.alphaPerC;
  return captioned(
    conductor.size.unit === 'mm²' ? 'DC resistance, the most that the standard allows' : 'DC resistance',
    [...listed.map(({ reference }) => reference.source), ...(coefficient ? [coefficient.source] : [])],
    table(['', 'at 75 °C', 'at 20 °C'], rows),
    alpha == null
      ? ''
      : `Read at ${referenceC} °C; at ${other} °C by α = ${alpha} per °C, which holds at ${referenceC} °C.`,
  );
}

const isOwn = (make: Conductor, conductor: Conductor): boolean =>
  make.stranding === conductor.stranding && make.coated === conductor.coated;

/** As printed where the table has it, else by the trade function, so that hover and sheet agree. */
function at(program: Program, make: Conductor, celsius: 20 | 75): string {
  const { library } = program;
  const { tables } = library.settings as TradeSettings;
  const printed = celsius === 75 ? tables.conductorProperties(make.size.text, make.stranding)?.row : undefined;
  if (printed) {
    const metal = make.coated ? 'coatedCu' : make.material;
    return both(String(printed.ohmPerKft[metal]), String(printed.ohmPerKm[metal]));
  }
  const definition = library.functions.get('resistance_per_length');
  const found = definition?.evaluate(
    { conductor: make, temperature: celsius } as never,
    unwatchedCall(library.settings),
  );
  const reference = resistanceReference(tables, make);
  if (typeof found !== 'number') {
    return 'not known';
  }
  const isPrinted = reference?.referenceC === celsius;
  const digits = isPrinted ? 5 : 3;
  const perKilometre = showNumber(
    found * feetPerKilometre,
    isPrinted && reference.printed.unit === 'Ω/km' ? digits : 3,
  );
  return both(showNumber(found, isPrinted && reference.printed.unit === 'Ω/kft' ? digits : 3), perKilometre);
}

const both = (perKft: string, perKm: string): string => `${perKft} Ω/kft · ${perKm} Ω/km`;
