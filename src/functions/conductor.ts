import type { ObjectType } from '../language';
import type { Material, Size, Stranding } from '../tables';

/** One conductor as a sheet names it. */
export interface Conductor {
  readonly size: Size;
  readonly material: Material;
  readonly stranding: Stranding;
  /** False when the table has both and neither was said: stranded is then assumed. */
  readonly strandingGiven: boolean;
  readonly coated: boolean;
  readonly bare: boolean;
  /** `THHN`; absent when not said. */
  readonly insulation?: string;
}

/** Canonical words in canonical order: `10 AWG Cu THHN`, `12 AWG Cu stranded`. Reads back as the same conductor. */
export function conductorText(c: Conductor): string {
  const stranding = c.strandingGiven ? ` ${c.stranding}` : '';
  const insulation = c.insulation ? ` ${c.insulation}` : '';
  return `${c.size.text} ${c.material}${stranding}${c.coated ? ' coated' : ''}${c.bare ? ' bare' : ''}${insulation}`;
}

export const conductorType: ObjectType<Conductor> = {
  name: 'conductor',
  described: 'a conductor',
  text: conductorText,
  unordered:
    'Gauge numbers run backwards: compare what matters instead, such as ampacity(…) or resistance_per_length(…).',
};
