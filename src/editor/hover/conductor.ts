import { showNumber } from '../../display';
import { type Conductor, conductorText, conductorType, type TradeSettings } from '../../functions';
import type { Program, Value } from '../../language';
import type { Material, Size, Stranding, Tables, TemperatureColumn } from '../../tables';
import type { TableReference } from '../../text';
import { citations } from '../citations';
import { escaped, table } from '../markdown';
import { unwatchedCall } from '../unwatched-call';

const strandings: readonly Stranding[] = ['stranded', 'solid'];
const columns: readonly TemperatureColumn[] = [60, 75, 90];
const feetPerKilometre = 1 / 0.3048;

/** All that the tables tell of a conductor, with its neighbours in size and where each figure stands. */
export function conductorPage(program: Program, value: Value | undefined): string | undefined {
  if (value?.kind !== 'object' || value.object !== conductorType) {
    return undefined;
  }
  const conductor = value.value as Conductor;
  const { tables } = program.library.settings as TradeSettings;
  const sources: TableReference[] = [];
  const parts = [
    `**${escaped(conductorText(conductor))}**${conductor.strandingGiven ? '' : `, ${conductor.stranding} (the sheet does not say)`}`,
    resistanceTable(program, tables, conductor, sources),
    ampacityTable(tables, conductor, sources),
    ...sizeLines(tables, conductor, sources),
    sources.length > 0
      ? `Sources: ${citations(sources).map(escaped).join('; ')}. At 20 °C by the table's own temperature coefficient.`
      : '',
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

/** One row for each make of this size: stranded or solid, and for copper coated or not; the conductor's own in bold. */
function resistanceTable(program: Program, tables: Tables, conductor: Conductor, sources: TableReference[]): string {
  const rows = strandings.flatMap((stranding) => {
    const found = tables.conductorProperties(conductor.size.text, stranding);
    if (!found) {
      return [];
    }
    sources.push(found.source);
    const coatings = conductor.material === 'Cu' ? [false, true] : [false];
    return coatings.map((coated) => {
      const kind = coated ? 'coatedCu' : conductor.material;
      const make = conductor.material === 'Cu' ? `${stranding}, ${coated ? 'coated' : 'uncoated'}` : stranding;
      const own = stranding === conductor.stranding && coated === conductor.coated;
      const printed = `${found.row.ohmPerKft[kind]} Ω/kft · ${found.row.ohmPerKm[kind]} Ω/km`;
      const cells = [make, printed, coldResistance(program, { ...conductor, stranding, coated, strandingGiven: true })];
      return own ? cells.map((cell) => `**${cell}**`) : cells;
    });
  });
  return rows.length > 0 ? table(['DC resistance', 'at 75 °C', 'at 20 °C'], rows) : '';
}

/** By the trade function, so that hover and sheet agree. */
function coldResistance(program: Program, conductor: Conductor): string {
  const { library } = program;
  const definition = library.functions.get('resistance_per_length');
  const found = definition?.evaluate({ conductor, temperature: 20 } as never, unwatchedCall(library.settings));
  return typeof found === 'number'
    ? `${showNumber(found, 3)} Ω/kft · ${showNumber(found * feetPerKilometre, 3)} Ω/km`
    : 'not known';
}

function ampacityTable(tables: Tables, { size, material, insulation }: Conductor, sources: TableReference[]): string {
  const type = insulation === undefined ? undefined : tables.insulation(insulation);
  const sizes = neighbours(tables, size, material);
  const rows = sizes.flatMap(([place, { text }]) => {
    const found = tables.ampacity(text);
    const resistance = tables.conductorProperties(text, 'stranded') ?? tables.conductorProperties(text, 'solid');
    if (!found) {
      return [];
    }
    sources.push(found.source);
    const amperes = columns.map((column) => {
      const rating = found.row.amperes[material][column];
      const shown = rating === null ? '–' : `${rating} A`;
      return place === '' && column === type?.row.columnDryC ? `**${shown}**` : shown;
    });
    const name = place === '' ? `**${text}**` : `${text} (${place})`;
    return [[name, ...amperes, resistance ? `${resistance.row.ohmPerKft[material]} Ω/kft` : '–']];
  });
  if (type) {
    sources.push(type.source);
  }
  const head = [`ampacity, ${material}`, ...columns.map((column) => `${column} °C`), 'DC, 75 °C'];
  return rows.length > 0 ? table(head, rows) : '';
}

/** The next size down, the size itself, the next size up, among those the ampacity table has in this metal. */
function neighbours(tables: Tables, size: Size, material: Material): [place: string, size: Size][] {
  const sizes = tables.sizes.filter(({ text }) =>
    columns.some((column) => tables.ampacity(text)?.row.amperes[material][column] != null),
  );
  const index = sizes.findIndex(({ text }) => text === size.text);
  if (index < 0) {
    return [];
  }
  const found: [string, Size][] = [['', sizes[index]]];
  if (index > 0) {
    found.unshift(['next down', sizes[index - 1]]);
  }
  if (index + 1 < sizes.length) {
    found.push(['next up', sizes[index + 1]]);
  }
  return found;
}

/** Area, diameter, insulation and the small-conductor limit, each where it is known. */
function sizeLines(tables: Tables, conductor: Conductor, sources: TableReference[]): string[] {
  const { size, material, stranding, insulation } = conductor;
  const lines: string[] = [];
  const properties = tables.conductorProperties(size.text, stranding);
  if (properties) {
    const { areaCmil, areaMm2, overallDiameterIn, strands } = properties.row;
    const metric = areaMm2 === null ? '' : ` · ${areaMm2} mm²`;
    lines.push(
      `Area ${showNumber(areaCmil)} cmil${metric}; ${strands === 1 ? 'one wire' : `${strands} strands`}, ${overallDiameterIn} in across, bare`,
    );
  }
  const type = insulation === undefined ? undefined : tables.insulation(insulation);
  if (type) {
    const wet = type.row.ratingWetC === null ? 'not for wet locations' : `${type.row.ratingWetC} °C wet`;
    lines.push(`${type.row.type}: ${type.row.ratingDryC} °C dry, ${wet}`);
  }
  const limit = tables.smallConductorLimit(size.text, material);
  if (limit) {
    sources.push(limit.source);
    lines.push(`Overcurrent device at most ${limit.row.maxOcpd} A, with the exceptions of the small-conductor rule`);
  }
  return lines.map(escaped);
}
