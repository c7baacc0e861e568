import assert from 'node:assert/strict';
import fc from 'fast-check';
import { type otherKeys, readFrontMatter, sheetKeys } from '../../src/notebook';

const problemsOf = (text: string) =>
  readFrontMatter(text).diagnostics.map(({ code, span }) => [code, text.slice(span.start, span.end)]);

describe('front matter', () => {
  it('gives the keys it knows as they were written, and minds no other', () => {
    const text =
      '---\ntitle: "Kiln: small"\ndate: 2026-11-12\nrevision: 01\ncode: NEC 2023\nunits: SI\nproject:\ntags: [a, b]\n---';
    assert.deepEqual(readFrontMatter(text).frontMatter, {
      title: 'Kiln: small',
      date: '2026-11-12',
      revision: '01',
      code: 'NEC 2023',
      units: 'SI',
    });
    assert.deepEqual(problemsOf(text), []);
  });

  it('tells where a value stands', () => {
    const text = '---\ntitle: Kiln\ncode:  NEC 1999  # old\n---';
    const span = readFrontMatter(text).places.get('code')!;
    assert.equal(text.slice(span.start, span.end), 'NEC 1999');
  });

  it('refuses units it does not know, with both answers as fixes', () => {
    const text = '---\nunits: metric\n---';
    assert.deepEqual(problemsOf(text), [['unknown-unit-system', 'metric']]);
    const [{ fixes }] = readFrontMatter(text).diagnostics;
    assert.deepEqual(
      fixes!.map((fix) => fix.edits[0].newText),
      ['US', 'SI'],
    );
  });

  it('says of a waste that is no percentage what is expected, and takes the usual ways to write one', () => {
    assert.deepEqual(problemsOf('---\nwaste: seven\n---'), [['front-matter-value', 'seven']]);
    for (const waste of ['7 %', '7%', '7', '7.5 %']) {
      assert.deepEqual(problemsOf(`---\nwaste: ${waste}\n---`), [], waste);
    }
  });

  it('keeps the format of the file out of the title block, and another use of the word in it', () => {
    assert.deepEqual(readFrontMatter('---\nformat: 1\n---').details, []);
    assert.deepEqual(readFrontMatter('---\nformat: A4\n---').details, [['format', 'A4']]);
  });

  it('takes each key of its table as that says', () => {
    for (const [key, { choice }] of Object.entries(sheetKeys)) {
      const value = choice?.words[0] ?? 'NEC 2023';
      const { frontMatter, diagnostics, details } = readFrontMatter(`---\n${key}: ${value}\n---`);
      assert.deepEqual([frontMatter, diagnostics, details], [{ [key]: value }, [], []], key);
    }
    for (const key of ['waste', 'takeoff'] satisfies (keyof typeof otherKeys)[]) {
      assert.deepEqual(readFrontMatter(`---\n${key}: 5\n---`).details, [[key, '5']], key);
    }
  });

  it('reads how much warnings weigh, each with its place', () => {
    const text = '---\nseverities:\n  voltage-drop: off\n  unused-name: warning\n---';
    const { severities, diagnostics } = readFrontMatter(text);
    assert.deepEqual(diagnostics, []);
    assert.deepEqual(
      severities.map(({ id, idSpan, severity }) => [id, text.slice(idSpan.start, idSpan.end), severity]),
      [
        ['voltage-drop', 'voltage-drop', 'off'],
        ['unused-name', 'unused-name', 'warning'],
      ],
    );
    assert.deepEqual(problemsOf('---\nseverities: off\n---'), [['front-matter-value', 'off']]);
    assert.deepEqual(problemsOf('---\nseverities:\n  voltage-drop: mild\n---'), [['front-matter-value', 'mild']]);
    assert.deepEqual(problemsOf('---\nseverities:\n  voltage-drop:\n---'), [['front-matter-value', 'voltage-drop']]);
  });

  it('says of a format later than its own that it is one, and minds no other use of the word', () => {
    assert.deepEqual(problemsOf('---\ntitle: T\nformat: 2\n---'), [['newer-format', '2']]);
    const [{ severity, message }] = readFrontMatter('---\nformat: 12\n---').diagnostics;
    assert.equal(severity, 'error');
    assert.match(message, /^This sheet is in format 12; .* do not rely on these results\. Update Kilofoot\./);
    for (const fine of ['1', '0', 'A4', '2.5', '[2]', '"two"']) {
      assert.deepEqual(problemsOf(`---\nformat: ${fine}\n---`), [], fine);
    }
    assert.deepEqual(readFrontMatter('---\nformat: A4\n---').details, [['format', 'A4']]);
  });

  it('takes one word for cautions that were read', () => {
    assert.equal(readFrontMatter('---\ncautions: acknowledged\n---').frontMatter.cautions, 'acknowledged');
    assert.deepEqual(problemsOf('---\ncautions: off\n---'), [['front-matter-value', 'off']]);
  });

  it('takes the papers it knows and refuses another, with each as a fix', () => {
    assert.equal(readFrontMatter('---\nreport: load memo\n---').frontMatter.report, 'load memo');
    const text = '---\nreport: invoice\n---';
    assert.deepEqual(problemsOf(text), [['unknown-report', 'invoice']]);
    const [{ fixes, message }] = readFrontMatter(text).diagnostics;
    assert.match(message, /load memo, service report or circuit schedule is expected/);
    assert.deepEqual(
      fixes!.map((fix) => fix.edits[0].newText),
      ['load memo', 'service report', 'circuit schedule'],
    );
  });

  it('gives on keys of others that hold one text, and no others', () => {
    const { details } = readFrontMatter('---\nsite: Hall 5\ntitle: x\ntags: [a]\ntoString: y\n---');
    assert.deepEqual(details, [
      ['site', 'Hall 5'],
      ['toString', 'y'],
    ]);
  });

  it('wants text on one line', () => {
    assert.deepEqual(problemsOf('---\ntitle: [a, b]\n---'), [['front-matter-value', '[a, b]']]);
  });

  it('says where it cannot be read', () => {
    assert.deepEqual(
      problemsOf('---\ntitle: "Kiln\n---').map(([code]) => code),
      ['front-matter-syntax'],
    );
    assert.deepEqual(
      problemsOf('---\ntitle: a\ntitle: b\n---').map(([code]) => code),
      ['front-matter-syntax'],
    );
    assert.deepEqual(problemsOf('---\njust words\n---'), [['front-matter-syntax', 'just words']]);
  });

  it('says of a key that stands twice where it does, in a section too', () => {
    const text = '---\ntitle: Kiln\nseverities:\n  cold-filament: off\n  "cold-filament": hint\ntitle: Oven\n---';
    assert.deepEqual(problemsOf(text), [
      ['front-matter-syntax', 'title'],
      ['front-matter-syntax', '"cold-filament"'],
    ]);
    assert.equal(
      readFrontMatter(text).diagnostics[0].message,
      'The key `title` stands here twice, and only one can count. Take one out.',
    );
  });

  it('is empty where there is none', () => {
    for (const text of ['', '# Kiln', '---\n---', '--- \n\n---']) {
      assert.deepEqual(readFrontMatter(text).frontMatter, {});
      assert.deepEqual(problemsOf(text), []);
    }
  });

  it('never throws', () => {
    const line = fc.constantFrom(
      'a: b',
      'title: ',
      '- x',
      '"',
      "'",
      '{',
      '}',
      '[',
      ': :',
      '&a *a',
      '!!int x',
      '\t',
      '? ',
      '|',
      '%TAG',
      '<<: *a',
      '__proto__: 1',
      'code: 1',
      'units: ~',
    );
    fc.assert(
      fc.property(fc.array(line), (lines) => {
        const text = ['---', ...lines, '---'].join('\n');
        for (const { span } of readFrontMatter(text).diagnostics) {
          assert.ok(0 <= span.start && span.start <= span.end && span.end <= text.length);
        }
      }),
      { numRuns: 300 },
    );
  });
});
