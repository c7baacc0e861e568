import type { Size } from './contract';
import { compareSizes, parseSize } from './size';
import { subjects } from './subjects';

let known: readonly Size[] | undefined;

/** Every size that a shipped conductor table has a row for, smallest first; for completion and for near misses. */
export function knownSizes(): readonly Size[] {
  known ??= collect();
  return known;
}

function collect(): Size[] {
  const bySize = new Map<string, Size>();
  for (const subject of subjects.filter((candidate) => candidate.key[0] === 'size')) {
    for (const file of subject.files) {
      const column = file.columns.indexOf('size');
      for (const cells of file.rows) {
        const size = parseSize(cells[column] ?? '');
        if (size) {
          bySize.set(size.text, size);
        }
      }
    }
  }
  return [...bySize.values()].sort(compareSizes);
}
