/** The few assertions the suite needs; a web worker host has no `node:assert`. */
export function ok(value: unknown, message: string): asserts value {
  if (!value) {
    throw new Error(message);
  }
}

export function equal<T>(found: T, expected: T, what: string): void {
  const [a, b] = [JSON.stringify(found), JSON.stringify(expected)];
  ok(a === b, `${what}: expected ${b}, found ${a}`);
}

export function includes(found: string, part: string): void {
  ok(found.includes(part), `expected ${JSON.stringify(part)} in ${JSON.stringify(found)}`);
}

/** Waits until `look` gives something. */
export async function until<T>(what: string, look: () => T | undefined | false, limit = 20_000): Promise<T> {
  const end = Date.now() + limit;
  for (;;) {
    const found = look();
    if (found) {
      return found;
    }
    ok(Date.now() < end, `timed out waiting for ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
