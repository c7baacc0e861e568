import type { Material, Size } from '../../tables';
import type { Conductor } from '../conductor';

/** A conductor as a choice: of the size and metal asked for, everything else as usual. */
export const plainConductor = (size: Size, material: Material, insulation?: string): Conductor => ({
  size,
  material,
  stranding: 'stranded',
  strandingGiven: false,
  coated: false,
  bare: false,
  ...(insulation ? { insulation } : {}),
});
