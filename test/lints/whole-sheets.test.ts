import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ruleById } from '../../src/lints';
import { evaluateSheet } from '../../src/session';

const root = join(__dirname, '..', '..');

/** What the examples are there to show. Every other finding in an example or a starter sheet is a false alarm. */
const intended: Readonly<Record<string, readonly string[]>> = {
  'examples/kiln.kft.md': ['undersized-conductor', 'small-conductor-limit'],
  'examples/part-reel.kft.md': ['meter-too-coarse'],
  'seeds/open-neutral.kft.md': ['open-neutral'],
};

describe('the examples and starter sheets', () => {
  for (const folder of ['examples', 'seeds']) {
    for (const name of readdirSync(join(root, folder)).filter((file) => /\.kft(\.md)?$/.test(file))) {
      it(`${folder}/${name} has the findings that it is there to show, and no other`, () => {
        const { diagnostics } = evaluateSheet(readFileSync(join(root, folder, name)));
        assert.deepEqual(
          diagnostics.filter(({ code }) => ruleById.has(code)).map(({ code }) => code),
          intended[`${folder}/${name}`] ?? [],
        );
      });
    }
  }
});
