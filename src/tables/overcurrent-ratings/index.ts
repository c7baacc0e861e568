import { rising } from '../checks';
import type { StandardRatingRow } from '../contract';
import type { Subject } from '../subject';
import type { TableFile } from '../table-file';
import nec2020 from './nec-2020.json';
import nec2023 from './nec-2023.json';

/** Standard ampere ratings, NEC 240.6(A). 10 A became a breaker rating in 2023. */
export const overcurrentRatings: Subject<StandardRatingRow> = {
  id: 'overcurrent-ratings',
  needed: true,
  columns: {
    rating: { label: 'rating, A', type: 'number', atLeast: 1, atMost: 10000 },
    appliesTo: { label: 'applies to', type: ['breaker and fuse', 'fuse only'] },
  },
  key: ['rating'],
  checks: [rising('rating', (row) => row.rating)],
  files: [nec2020 as TableFile, nec2023 as TableFile],
};
