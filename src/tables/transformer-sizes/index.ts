import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import ansi from './ansi.json';

export interface TransformerSizeRow {
  readonly phases: 'single-phase' | 'three-phase';
  readonly kVA: number;
}

/** Preferred transformer ratings. */
export const transformerSizes: Subject<TransformerSizeRow> = {
  id: 'transformer-sizes',
  needed: false,
  columns: {
    phases: { label: 'phases', type: ['single-phase', 'three-phase'] },
    kVA: { label: 'rating, kVA', type: 'number', atLeast: 0.01, atMost: 1e6 },
  },
  key: ['kVA', 'phases'],
  checks: [],
  files: [ansi as TableFile],
};
