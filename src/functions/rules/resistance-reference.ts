import type { Found, Tables } from '../../tables';
import type { TableReference } from '../../text';
import type { Conductor } from '../conductor';
import { cellsOf } from './shown-cells';

/** A table's DC resistance per length, in Ω/kft at `referenceC`, and where it stands. */
export interface ResistanceReference {
  readonly ohmPerKft: number;
  /** The figure as its table prints it. */
  readonly printed: { readonly value: number; readonly unit: 'Ω/kft' | 'Ω/km' };
  readonly referenceC: 20 | 75;
  readonly source: TableReference;
  readonly shown: Found<unknown>['shown'];
}

type Made = Pick<Conductor, 'size' | 'material' | 'stranding' | 'coated'>;

/** What was found before, by the conductor's own object: a search asks for one some hundred times. */
const references = new WeakMap<Tables, WeakMap<Made, ResistanceReference>>();

/**
 * Table 8 where it has the conductor; IEC 60228 for sizes in mm²; the annealed-copper wire table for other solid copper,
 * such as 24 AWG. Undefined where no table has it.
 */
export function resistanceReference(tables: Tables, conductor: Made): ResistanceReference | undefined {
  let known = references.get(tables);
  if (!known) {
    known = new WeakMap();
    references.set(tables, known);
  }
  let reference = known.get(conductor);
  if (!reference) {
    reference =
      conductor.size.unit === 'mm²'
        ? byIec(tables, conductor)
        : (byTable8(tables, conductor) ?? byWireTable(tables, conductor));
    if (reference) {
      known.set(conductor, reference);
    }
  }
  return reference;
}

function byTable8(tables: Tables, { size, material, stranding, coated }: Made): ResistanceReference | undefined {
  const found = tables.conductorProperties(size.text, stranding);
  if (!found) {
    return undefined;
  }
  const { ohmPerKft } = found.row;
  const metal = material === 'Al' ? 'Al' : coated ? 'coated Cu' : 'uncoated Cu';
  const value = material === 'Al' ? ohmPerKft.Al : coated ? ohmPerKft.coatedCu : ohmPerKft.Cu;
  return {
    ohmPerKft: value,
    printed: { value, unit: 'Ω/kft' },
    referenceC: 75,
    source: found.source,
    shown: cellsOf(found, 'size', 'stranding', `Ω/kft, ${metal}, 75 °C`),
  };
}

function byWireTable(tables: Tables, { size, material, stranding, coated }: Made): ResistanceReference | undefined {
  const found = material === 'Cu' && stranding === 'solid' && !coated ? tables.wireTable(size.text) : undefined;
  return (
    found && {
      ohmPerKft: found.row.ohmPerKft,
      printed: { value: found.row.ohmPerKft, unit: 'Ω/kft' },
      referenceC: 20,
      source: found.source,
      shown: cellsOf(found, 'size', 'Ω/kft, annealed Cu, 20 °C'),
    }
  );
}

const kmPerKft = 0.3048;

/** By nominal area, class 1 for solid and class 2 for stranded: the largest resistance that the standard allows. */
function byIec(tables: Tables, { size, material, stranding, coated }: Made): ResistanceReference | undefined {
  const metal = material === 'Cu' && coated ? 'coated Cu' : material;
  const found = tables.iecConductor(size.text, metal, stranding === 'solid' ? '1' : '2');
  return (
    found && {
      ohmPerKft: found.row.maxOhmPerKm * kmPerKft,
      printed: { value: found.row.maxOhmPerKm, unit: 'Ω/km' },
      referenceC: 20,
      source: found.source,
      shown: found.shown,
    }
  );
}
