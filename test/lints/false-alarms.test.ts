import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { findingsIn } from './lint-text';

const folder = join(__dirname, '..', 'reference', 'examples');

interface Published {
  readonly id: string;
  readonly sheet: readonly string[];
  readonly expect: readonly { readonly name?: string }[];
  readonly speaks?: readonly string[];
}

/** What a published situation leaves open or does, beside the fault that it is published for. */
const alsoFound: Readonly<Record<string, readonly string[]>> = {
  F39: ['undersized-conductor'], // 4/0 aluminum carries 180 A; the thread asks for its drop at 200 A
  'phys-heat-1': ['other-than-rated-voltage'],
  'HTR-02': ['other-than-rated-voltage'],
  'HTR-05': ['other-than-rated-voltage'],
  'HTR-07': ['other-than-rated-voltage'],
  'LEN-03': ['leads-not-removed', 'leads-not-removed'], // an ohm of pair, with nothing said of the leads
};

describe('published situations raise no false alarm', () => {
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.json'))) {
    const examples: readonly Published[] = JSON.parse(readFileSync(join(folder, file), 'utf8'));
    it(`${file}: nothing but questions, beside what is meant`, () => {
      for (const { id, sheet, expect, speaks = [] } of examples) {
        const shown = expect.flatMap(({ name }, i) => (name === undefined ? [] : [`shown_${i} = ${name}`]));
        const found = findingsIn([`${[...sheet, ...shown].join('\n')}\n`])
          .filter(({ severity, code }) => severity !== 'hint' && !speaks.includes(code))
          .map(({ code }) => code);
        assert.deepEqual(found, alsoFound[id] ?? [], id);
      }
    });
  }
});
