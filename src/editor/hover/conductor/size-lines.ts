import { showNumber } from '../../../display';
import type { Conductor } from '../../../functions';
import type { Tables } from '../../../tables';
import { citations } from '../../citations';
import { escaped } from '../../markdown';

/** Area, diameters, insulation and the small-conductor limit, each where it is known, with its table. */
export function sizeLines(tables: Tables, { size, material, stranding, insulation }: Conductor): string[] {
  const lines: string[] = [];
  const properties = tables.conductorProperties(size.text, stranding);
  const wire = properties ? undefined : tables.wireTable(size.text);
  if (properties) {
    const { areaCmil, areaMm2, overallDiameterIn, strands } = properties.row;
    const metric = areaMm2 === null ? '' : ` · ${areaMm2} mm²`;
    const made = strands === 1 ? 'one wire' : `${strands} strands`;
    lines.push(
      `Metal: ${showNumber(areaCmil)} cmil${metric}, ${made}, ${overallDiameterIn} in across (${cite(properties)})`,
    );
  } else if (wire) {
    const { areaCmil, diameterMils } = wire.row;
    lines.push(`Metal: ${showNumber(areaCmil)} cmil, ${showNumber(diameterMils)} mil across (${cite(wire)})`);
  }
  const type = insulation === undefined ? undefined : tables.insulation(insulation);
  if (type) {
    const wet = type.row.ratingWetC === null ? 'not for wet locations' : `${type.row.ratingWetC} °C wet`;
    lines.push(`${type.row.type}: ${type.row.ratingDryC} °C dry, ${wet} (${cite(type)})`);
  }
  const covered = insulation === undefined ? undefined : tables.insulatedArea(insulation, size.text);
  if (covered) {
    lines.push(`With insulation: ${covered.row.diameterIn} in across, ${covered.row.areaIn2} in² (${cite(covered)})`);
  }
  const limit = tables.smallConductorLimit(size.text, material);
  if (limit) {
    lines.push(
      `Overcurrent device: at most ${limit.row.maxOcpd} A, with the exceptions of the small-conductor rule (${cite(limit)})`,
    );
  }
  return lines.map(escaped);
}

const cite = ({ source }: { readonly source: Parameters<typeof citations>[0][number] }): string =>
  citations([source])[0];
