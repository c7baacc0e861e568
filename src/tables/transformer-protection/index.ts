import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2023 from './nec-2023.json';

export interface TransformerProtectionRow {
  /** `primary only`, `primary and secondary: primary`, `primary and secondary: secondary`, or with thermal protection. */
  readonly protection: string;
  /** Rated current from and below which the row holds; null for no end. */
  readonly fromA: number | null;
  readonly belowA: number | null;
  readonly percent: number;
  /** Whether the next standard rating up may be taken. */
  readonly nextSizeUp: 'yes' | 'no';
}

/** NEC Table 450.3(B): overcurrent devices that protect a transformer of 1000 V and less, not its conductors. */
export const transformerProtection: Subject<TransformerProtectionRow> = {
  id: 'transformer-protection',
  needed: true,
  columns: {
    protection: { label: 'protection', type: 'text' },
    fromA: { label: 'rated current from, A', type: 'number', blank: true, atLeast: 0, atMost: 1e5 },
    belowA: { label: 'rated current below, A', type: 'number', blank: true, atLeast: 0, atMost: 1e5 },
    percent: { label: '% of rated current', type: 'number', atLeast: 100, atMost: 1000 },
    nextSizeUp: { label: 'next size up', type: ['yes', 'no'] },
  },
  key: ['protection', 'fromA'],
  checks: [],
  files: [nec2023 as TableFile],
};
