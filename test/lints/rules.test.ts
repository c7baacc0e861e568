import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { rules } from '../../src/lints';
import { applyEdits, type Diagnostic } from '../../src/text';
import { readCases, withCarets } from './fixture-text';
import { errorsIn, findingsIn } from './lint-text';

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

      it('has at least two cases that fire and two that are silent', () => {
        assert.ok(cases.filter(({ fires }) => fires).length >= 2);
        assert.ok(cases.filter(({ fires }) => !fires).length >= 2);
      });

      for (const { title, fires, source, written } of cases) {
        it(`${fires ? 'fires' : 'is silent'}: ${title}`, () => {
          assert.deepEqual(errorsIn(source), []);
          const findings = findingsIn([source]);
          assert.equal(withCarets(source, findings), written);
          assert.equal(own(findings).length, fires ? 1 : 0);
        });
      }

      for (const { title, source } of cases.filter(({ fires }) => fires)) {
        it(`mends: ${title}`, () => mendsEach(source, rule.id));
      }

      it('its documented examples give one finding or none', () => {
        for (const text of rule.examples.bad) {
          assert.deepEqual(errorsIn(text), []);
          assert.deepEqual(
            own(findingsIn([text])).map(({ code }) => code),
            [rule.id],
            text,
          );
        }
        for (const text of rule.examples.good) {
          assert.deepEqual(errorsIn(text), []);
          assert.deepEqual(findingsIn([text]), [], text);
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

/** Answers to a question say what the sheet left open, so they may bring a fault to light that was there all along. */
const answersQuestion = (title: string): boolean => title.startsWith('State ');

/** Every fix removes its own finding, adds none, leaves the other bytes alone and has nothing left to do afterwards. */
function mendsEach(source: string, id: string): void {
  const before = findingsIn([source]);
  const idsBefore = new Set(before.map(({ code }) => code));
  for (const finding of before.filter(({ code }) => code === id)) {
    for (const fix of finding.fixes ?? []) {
      const isAnswer = answersQuestion(fix.title);
      const mended = applyEdits(source, fix.edits);
      const untouched = fix.edits.reduceRight(
        (text, { span }) => text.slice(0, span.start) + text.slice(span.end),
        source,
      );
      const inserted = fix.edits.map(({ newText }) => newText).join('').length;
      assert.equal(mended.length, untouched.length + inserted, fix.title);
      assert.deepEqual(errorsIn(mended), [], fix.title);
      const after = findingsIn([mended]);
      assert.deepEqual(
        after.filter(({ code, message }) => code === id && (!isAnswer || message === finding.message)),
        [],
        `${fix.title}\n${mended}`,
      );
      if (!isAnswer) {
        assert.deepEqual(
          after.filter(({ code }) => !idsBefore.has(code)),
          [],
          `${fix.title}\n${mended}`,
        );
      }
      assert.equal(fix.safe, false, 'no lint changes what is installed without a person looking at it');
    }
  }
}
