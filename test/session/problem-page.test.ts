import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createProgram } from '../../src/language';
import { ruleById } from '../../src/lints';
import { evaluateSheet, explain, problemPage } from '../../src/session';
import { problemsIn } from '../../src/session/problem-page';
import { readTableFile } from '../../src/tables';
import {
  applyEdits,
  codesOfLints,
  type Diagnostic,
  type Problem,
  type ProblemExample,
  problemCalled,
  problemCodes,
  problemGroups,
} from '../../src/text';
import { run } from '../cli/fake-console';
import { smallLibrary } from '../language/small-library';
import { smallConductorLimits } from '../local-amendment';

const declared = problemGroups.flatMap(({ problems }) => Object.entries<Problem>(problems));

type Situation = Extract<ProblemExample, { situation: string }>;
const isSituation = (example: ProblemExample): example is Situation =>
  typeof example !== 'string' && 'situation' in example;

/** What an example cannot do without, beside the problem that it shows. */
const alongside: Readonly<Record<string, readonly string[]>> = { 'live-value-missing': ['division-by-zero'] };

const cell = (text: string) => evaluateSheet(`\`\`\`kft\n${text}\n\`\`\`\n`).diagnostics;
const lines = (count: number, line: string) => Array.from({ length: count }, () => line).join('\n');
const table = (rows: readonly unknown[]) =>
  readTableFile(JSON.stringify(smallConductorLimits(rows)), 'limits.kft-table.json');
const problemsOf = (read: Awaited<ReturnType<typeof table>>) => ('diagnostics' in read ? read.diagnostics : []);

interface Said {
  readonly code: string;
  readonly message: string;
}

/** Brings about what no example can hold. */
const situations: Readonly<Record<string, () => readonly Said[] | Promise<readonly Said[]>>> = {
  'nested-too-deep': () => cell(`x = ${'('.repeat(300)}1${')'.repeat(300)}`),
  'too-many-unknowns': () => cell(`solve ${Array.from({ length: 100 }, (_, i) => `x${i}`).join(', ')}\n  x0 == 1`),
  'more-rows': () =>
    cell(`panel = schedule\n  | load | v |\n  | --- | --- |\n${lines(200, '  | 1 W | 0 V |')}\n  amps = load / v`),
  'function-fault': () => {
    const program = createProgram(smallLibrary);
    program.update([{ id: 'cell', text: 'fault = broken()' }]);
    return program.diagnostics('cell');
  },
  'not-utf-8': () => evaluateSheet(Uint8Array.of(65, 0xff, 66)).diagnostics,
  'binary-file': () => evaluateSheet(Uint8Array.of(65, 0, 66)).diagnostics,
  'file-too-large': () => evaluateSheet(new Uint8Array(30_000_000).fill(65)).diagnostics,
  'unreadable-file': async () => {
    const { out } = await run(['check', 'absent.kft.md', '--format', 'json']);
    return (JSON.parse(out) as { diagnostics: Said[] }).diagnostics;
  },
  'invalid-table-file': async () => problemsOf(await readTableFile('{}', 'limits.kft-table.json')),
  'implausible-table-value': async () => problemsOf(await table([['12AWG', 'Cu', 35]])),
};

describe('the page of a problem', () => {
  it('is there for every code that a fixture shows, and for no lint, which has its own', () => {
    const shown = fixtureCodes(join(__dirname, '..'));
    assert.ok(shown.size > 100, `${shown.size}`);
    assert.deepEqual(
      [...shown].filter((code) => !problemCalled(code) && !ruleById.has(code)),
      [],
    );
    assert.deepEqual(
      problemCodes.filter((code) => ruleById.has(code)),
      [],
    );
    assert.equal(new Set(problemCodes).size, problemCodes.length);
    for (const code of codesOfLints) {
      assert.ok(ruleById.has(code), code);
    }
  });

  it('tells what, why and what to do in a sentence each', () => {
    for (const [code, { means, why, remedy }] of declared) {
      for (const sentence of [means, why, remedy]) {
        assert.match(sentence, /^[A-Z0-9`“−].*[.]$/s, code);
      }
    }
  });

  for (const [code, { example }] of declared) {
    if (isSituation(example)) {
      it(`${code} says what is told of it`, async () => {
        const said = await situations[code]();
        const own = said.find((one) => one.code === code);
        assert.equal(own?.message, example.says);
      });
      continue;
    }
    it(`${code} shows it in its example, and nothing else that is wrong`, () => {
      const { found } = problemsIn(example);
      assert.ok(
        found.some((one) => one.code === code),
        found.map((one) => one.code).join(),
      );
      const others = found.filter(({ severity, code: other }) => severity === 'error' && other !== code);
      assert.deepEqual(
        others.map((other) => other.code),
        alongside[code] ?? [],
      );
      for (const fix of found.flatMap(({ code: other, fixes = [] }) => (other === code ? fixes : []))) {
        assert.ok(countOf(code, mendedExample(example, fix.edits)) < countOf(code, found), fix.title);
      }
    });
  }

  it('is what explain tells, as it is for a lint, and near names are offered', () => {
    assert.deepEqual(explain('unknown-unit'), { page: problemPage('unknown-unit') });
    const missing = explain('unknown-unti');
    assert.ok('nearest' in missing && missing.nearest.includes('unknown-unit'));
    for (const code of codesOfLints) {
      const page = explain(code);
      assert.ok('page' in page && page.page.startsWith(`# ${code}`));
    }
  });

  it('shows the place, the message and what the fix makes', () => {
    const page = problemPage('conductor-metal-missing');
    assert.match(page!, /\nwire = 12 AWG\n {7}\^{6}\n```\n\n> 12 AWG names no metal: add Cu or Al\./);
    assert.match(page!, /\n- \*Write 12 AWG Cu\*: `wire = 12 AWG Cu`\n/);
  });
});

const countOf = (code: string, found: readonly Diagnostic[]): number => found.filter((one) => one.code === code).length;

function mendedExample(
  example: Exclude<ProblemExample, Situation>,
  edits: Parameters<typeof applyEdits>[1],
): readonly Diagnostic[] {
  const { found } = problemsIn(
    typeof example === 'string' ? applyEdits(example, edits) : { ...example, sheet: applyEdits(example.sheet, edits) },
  );
  return found;
}

/** The codes below the carets of all fixtures. */
function fixtureCodes(folder: string): Set<string> {
  const codes = new Set<string>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (entry.isFile() && entry.name.endsWith('.txt')) {
      const text = readFileSync(join(entry.parentPath, entry.name), 'utf8');
      for (const [, code] of text.matchAll(/^ *\^+ ([a-z]+(?:-[a-z0-9]+)*)(?: \(\w+\))?: /gm)) {
        codes.add(code);
      }
    }
  }
  return codes;
}
