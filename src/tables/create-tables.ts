import { ambientCorrection } from './ambient-correction';
import { ampacity } from './ampacity';
import { bundling } from './bundling';
import { conductorProperties } from './conductor-properties';
import type { Tables } from './contract';
import { canonicalEdition, defaultEdition, editionsAvailable } from './edition';
import { equipmentGrounding } from './equipment-grounding';
import { insulation } from './insulation';
import { installationTables } from './lookups/installations';
import { loadTables } from './lookups/loads';
import { machineTables } from './lookups/machines';
import { overcurrentRatings } from './overcurrent-ratings';
import { parseSize } from './size';
import { smallConductors } from './small-conductors';
import type { Subject } from './subject';
import { tableInForce } from './table';
import type { TableFile } from './table-file';
import { temperatureCoefficients } from './temperature-coefficients';
import { wireTable } from './wire-table';

/** Whole degrees are printed, and a converted 86 °F must stay 30 °C. */
const degreeRounding = 1e-6;

const shipped = new Map<string, Tables>();

/**
 * Every table of a code edition, with the workspace's own files laid over. An edition that is not here is refused with
 * the list of those that are.
 */
export function createTables({
  edition: asked = defaultEdition,
  overrides = [],
}: {
  readonly edition?: string;
  readonly overrides?: readonly TableFile[];
} = {}): Tables | { readonly problem: string } {
  const edition = canonicalEdition(asked);
  const available = editionsAvailable(overrides);
  if (!available.includes(edition)) {
    return {
      problem: `There are no tables for ${edition || 'an edition without a name'}. Name one of ${available.join(', ')}, or add a table file for it to the workspace.`,
    };
  }
  if (overrides.length > 0) {
    return tablesOf(edition, overrides);
  }
  const known = shipped.get(edition) ?? tablesOf(edition, []);
  shipped.set(edition, known);
  return known;
}

function tablesOf(edition: string, overrides: readonly TableFile[]): Tables {
  const table = <Row>(subject: Subject<Row>) => tableInForce(subject, edition, overrides);
  const properties = table(conductorProperties);
  const wires = table(wireTable);
  const ampacities = table(ampacity);
  const ambient = table(ambientCorrection);
  const bundles = table(bundling);
  const small = table(smallConductors);
  const ratings = table(overcurrentRatings);
  const grounding = table(equipmentGrounding);
  const insulations = table(insulation);
  const coefficients = table(temperatureCoefficients);
  // Read on first use, and once: every search for a conductor goes through them.
  let sizes: Tables['sizes'] | undefined;
  return {
    ...installationTables(table),
    ...machineTables(table),
    ...loadTables(table),
    edition,
    get sizes() {
      sizes ??= ampacities.all.flatMap((row) => parseSize(row.size) ?? []);
      return sizes;
    },
    conductorProperties: (size, stranding) => properties.exact(size, stranding),
    wireTable: (size) => wires.exact(size),
    ampacity: (size) => ampacities.exact(size),
    ambientCorrection: (ambientC) => ambient.upTo(ambientC - degreeRounding, (row) => row.maxC),
    bundling: (conductors) => (conductors < 1 ? undefined : bundles.upTo(conductors, (row) => row.max)),
    smallConductorLimit: (size, material) => small.exact(size, material),
    standardRatingAtLeast: (amperes) => ratings.upTo(amperes, (row) => row.rating, breakerToo),
    standardRatingAtMost: (amperes, device) =>
      ratings.downTo(amperes, (row) => row.rating, device === 'fuse' ? undefined : breakerToo),
    get standardRatings() {
      return ratings.all.filter(breakerToo).map((row) => row.rating);
    },
    equipmentGrounding: (ocpd) => grounding.upTo(ocpd, (row) => row.ocpdNotOver),
    insulation: (type) => insulations.exact(type) ?? insulations.exact(type.toUpperCase()),
    get insulationTypes() {
      return insulations.all.map((row) => row.type);
    },
    temperatureCoefficient: (material, referenceC) =>
      coefficients.first((row) => row.material === material && row.referenceC === referenceC && row.alphaPerC !== null),
  };
}

const breakerToo = (row: { readonly appliesTo: string }): boolean => row.appliesTo !== 'fuse only';
