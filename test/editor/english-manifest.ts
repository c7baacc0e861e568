import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const read = (name: string) => readFileSync(join(__dirname, '..', '..', name), 'utf8');
const texts: Record<string, string> = JSON.parse(read('package.nls.json'));

/** The manifest with the English texts in place of their keys. */
export const manifest = JSON.parse(read('package.json'), (_, value) =>
  typeof value === 'string' ? (texts[/^%(.+)%$/.exec(value)?.[1] ?? ''] ?? value) : value,
);
