import { knownSizes, type Material, type Size, type Tables } from '../../tables';

/** Conductors of building wire start here, in mm². */
const smallest = 1.5;

/** Sizes in mm² that IEC 60228 lists as stranded in a metal, smallest first. */
export const metricSizes = (tables: Tables, material: Material): readonly Size[] =>
  knownSizes().filter(
    ({ unit, mm2, text }) =>
      unit === 'mm²' && mm2 >= smallest && tables.iecConductor(text, material, '2') !== undefined,
  );
