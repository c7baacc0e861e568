import { FilePositions, type PlacedDiagnostic } from '../../notebook';
import type { ReportMissing } from '../../report';
import type { SheetEvaluation } from '../evaluate-sheet';
import type { LineAt } from './index';

/** Every name and check that an error keeps from a value, and the error or the names that it waits for. */
export function missingValues({ cells, diagnostics, file }: SheetEvaluation, lineAt: LineAt): ReportMissing[] {
  const positions = new FilePositions(file);
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  const touching = touchingIn(errors);
  const told = new Set<(typeof errors)[number]>();
  const missing: ReportMissing[] = [];
  cells.forEach(({ results }, index) => {
    for (const { kind, name, label, value, missing: needs, span } of results) {
      const start = positions.offset(index, span.start);
      const end = positions.offset(index, span.end);
      const own = touching(start, end);
      for (const error of own) {
        told.add(error);
      }
      if (value !== undefined || (kind === 'other' && own.length === 0)) {
        continue;
      }
      const why = needs?.length
        ? `needs ${needs.join(' and ')}, which ${needs.length > 1 ? 'have' : 'has'} no value`
        : own.map(({ message }) => message).join(' ');
      const what = name ?? (kind === 'check' ? `check “${label}”` : 'a line of the calculation');
      missing.push({ what, why: why || 'its cell could not be evaluated', line: lineAt(String(index), span.start) });
    }
  });
  const others = errors.filter((error) => !told.has(error));
  return [...others.map(({ message, line }) => ({ what: 'the sheet', why: message, line })), ...missing];
}

/** Finds those of these diagnostics, which lie in order of place, that touch a stretch. */
function touchingIn(ordered: readonly PlacedDiagnostic[]): (start: number, end: number) => PlacedDiagnostic[] {
  /** The furthest that one of those up to each reaches: it never falls, so it can be searched by halves. */
  const reach: number[] = [];
  for (const { span } of ordered) {
    reach.push(Math.max(span.end, reach.at(-1) ?? 0));
  }
  return (start, end) => {
    let low = 0;
    let high = ordered.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (reach[middle] < start) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    const found: PlacedDiagnostic[] = [];
    for (let i = low; i < ordered.length && ordered[i].span.start <= end; i++) {
      if (ordered[i].span.end >= start) {
        found.push(ordered[i]);
      }
    }
    return found;
  };
}
