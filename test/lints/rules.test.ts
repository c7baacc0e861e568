import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { evaluateSheet } from '../../src/core';
import { type Lint, rules } from '../../src/lints';
import { applyEdits, type Diagnostic, type Fix } from '../../src/text';
import { readCases, withCarets } from './fixture-text';
import { errorsIn, findingsIn, languageFindingsIn } from './lint-text';

const fixtures = join(__dirname, 'fixtures');
const folder = join(__dirname, '..', '..', 'src', 'lints', 'rules');
const withoutEnding = (name: string): string => name.replace(/\.\w+$/, '');

describe('lint rules', () => {
  it('the list holds every file of the folder, and every rule has fixtures', () => {
    const ids = rules.map((rule) => rule.id).sort();
    assert.deepEqual(ids, readdirSync(folder).map(withoutEnding).sort());
    assert.deepEqual(ids, readdirSync(fixtures).map(withoutEnding).sort());
  });

  for (const rule of rules) {
    describe(rule.id, () => {
      const own = (findings: readonly Diagnostic[]) => findings.filter(({ code }) => code === rule.id);
      const cases = readCases(readFileSync(join(fixtures, `${rule.id}.txt`), 'utf8'));
      const firing = cases.filter(({ fires }) => fires);
      const found = findingsOf(rule);

      it('has at least two cases that fire and two that are silent', () => {
        assert.ok(firing.length >= 2);
        assert.ok(cases.length - firing.length >= 2);
      });

      for (const { title, fires, source, written } of cases) {
        it(`${fires ? 'fires' : 'is silent'}: ${title}`, () => {
          const findings = found(source);
          assert.equal(withCarets(source, findings), written);
          assert.equal(own(findings).length, fires ? 1 : 0);
        });
      }

      for (const { title, source } of firing) {
        it(`mends: ${title}`, () => {
          for (const finding of own(found(source))) {
            for (const fix of finding.fixes ?? []) {
              mends(source, finding, fix, found);
            }
          }
        });
      }

      it('says whether it offers a fix', () => {
        const offers = firing.some(({ source }) => own(found(source)).some(({ fixes }) => fixes));
        assert.equal(rule.fix !== undefined, offers);
      });

      it('its documented examples give one finding or none', () => {
        for (const text of rule.examples.bad) {
          assert.deepEqual(
            own(found(text)).map(({ code }) => code),
            [rule.id],
            text,
          );
        }
        for (const text of rule.examples.good) {
          assert.deepEqual(found(text), [], text);
        }
      });

      it('says why, when it is silent and where it comes from', () => {
        for (const text of [rule.summary, rule.why, ...rule.silent, ...rule.sources]) {
          assert.ok(text.trim().length > 0);
        }
        assert.ok(rule.silent.length > 0 && rule.sources.length > 0);
      });
    });
  }
});

/** What is found in a cell's text; where lints look, the language must find no fault of its own. */
function findingsOf(rule: Lint): (source: string) => Diagnostic[] {
  return (source) => {
    if (rule.inFile) {
      return [...evaluateSheet(new TextEncoder().encode(source)).diagnostics];
    }
    if (!rule.check) {
      return languageFindingsIn(source);
    }
    assert.deepEqual(errorsIn(source), []);
    return findingsIn([source]);
  };
}

/** Answers to a question say what the sheet left open, so they may bring a fault to light that was there all along. */
const answersQuestion = ({ title }: Fix): boolean => title.startsWith('State ');

/** A fix removes its own finding, adds none, leaves the other bytes alone and has nothing left to do afterwards. */
function mends(source: string, finding: Diagnostic, fix: Fix, found: (source: string) => Diagnostic[]): void {
  const what = (mended: string) => `${fix.title}\n${mended}`;
  const { code, message } = finding;
  const before = new Set(found(source).map((other) => other.code));
  const mended = applyEdits(source, fix.edits);
  assert.equal(restOf(source, fix), restOf(mended, inverse(fix)), what(mended));
  const after = found(mended);
  const isAnswer = answersQuestion(fix);
  const remaining = after.filter((other) => other.code === code && (!isAnswer || other.message === message));
  assert.deepEqual(remaining, [], what(mended));
  if (!isAnswer) {
    const added = after.filter((other) => !before.has(other.code));
    assert.deepEqual(added, [], what(mended));
  }
  for (const again of after.flatMap((other) => (other.code === code ? (other.fixes ?? []) : []))) {
    const repeats = again.title === fix.title && applyEdits(mended, again.edits) !== mended;
    assert.ok(!repeats, `a second time: ${what(mended)}`);
  }
  assert.equal(fix.safe, false, 'no lint changes what is installed without a person looking at it');
}

/** The text with every stretch that the fix touches cut out. */
const restOf = (text: string, { edits }: Fix): string =>
  [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((rest, { span }) => rest.slice(0, span.start) + rest.slice(span.end), text);

/** The stretches that the fix wrote, where they stand afterwards. */
function inverse(fix: Fix): Fix {
  let shift = 0;
  const edits = [...fix.edits]
    .sort((a, b) => a.span.start - b.span.start)
    .map(({ span, newText }) => {
      const start = span.start + shift;
      shift += newText.length - (span.end - span.start);
      return { span: { start, end: start + newText.length }, newText: '' };
    });
  return { ...fix, edits };
}
