/** Milliseconds of one run. */
export function once(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** The median of several runs after some that only warm up, in milliseconds. */
export function warm(work: () => unknown, runs = 7, before = 3): number {
  for (let i = 0; i < before; i++) {
    work();
  }
  const times = Array.from({ length: runs }, () => once(work));
  return times.sort((a, b) => a - b)[times.length >> 1];
}
