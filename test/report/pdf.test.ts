import assert from 'node:assert/strict';
import { inflateSync } from 'node:zlib';
import { readFont } from '../../src/cli/fonts';
import { writeReport } from '../../src/core';
import { formulaLines } from '../../src/report/pdf/formula-lines';
import { isFormulaDrawing } from '../../src/report/pdf/picture-sizes';
import { Typesetter } from '../../src/report/pdf/typesetter';
import { bytesOf, reportOf, sheetOf } from './report-of';

const sheet = sheetOf(
  'title: Hall 5\ndate: 2026-11-12\nrevision: B',
  'supply = 207.6 V\nelement = 11.9 Ω ± 0.1 Ω\ncurrent = supply / element\ncheck current <= 20 A "carries it"',
  '# Hall 5\n\nThe signs: Ω ∠ √ ≤ ≥ ± µ φ ✓ ✔ ✘ ⚠ ² ³ ° × · – — “ ” ’ …',
);

/** The file with its compressed streams opened, one character a byte. */
function opened(pdf: Uint8Array): string {
  const raw = Buffer.from(pdf).toString('latin1');
  return raw.replace(/stream\r?\n([\s\S]*?)\r?\nendstream/g, (whole, body) => {
    try {
      return inflateSync(Buffer.from(body, 'latin1')).toString('latin1');
    } catch {
      return whole; // Not compressed.
    }
  });
}

describe('PDF', () => {
  it('has a title, a language, bookmarks, embedded fonts, and the date of the sheet', async () => {
    const text = opened(await bytesOf(sheet, 'pdf'));
    assert.match(text, /^%PDF-1\.7/);
    assert.match(text, /\/Lang \(en\)/);
    assert.match(text, /\/DisplayDocTitle true/);
    assert.match(text, /\(D:20261112000000Z\)/);
    for (const bookmark of ['Hall 5', 'Readings', 'Checks', 'Signatures']) {
      assert.ok(text.includes(`/Title (${bookmark})`), bookmark);
    }
    assert.match(text, /\/FontFile2 /);
    assert.doesNotMatch(text, /\/JavaScript|\/Launch/);
  });

  it('has a glyph for every sign, and none is the one for a missing character', async () => {
    // The table from glyphs to characters holds each sign that was written, once it stands in the subset of the font.
    const text = opened(await bytesOf(sheet, 'pdf'));
    const shown = new Set([...text.matchAll(/<([0-9a-f]{4})>/gi)].map(([, code]) => Number.parseInt(code, 16)));
    for (const sign of 'Ω∠√≤≥±µφ✓✔✘⚠²³°×·–—“”’…') {
      assert.ok(shown.has(sign.codePointAt(0)!), sign);
    }
  });

  it('tells what it is doing', async () => {
    const told: { doing: string; share: number }[] = [];
    await writeReport(reportOf(sheet), 'pdf', { font: readFont, progress: (step) => told.push(step) });
    assert.match(told[0].doing, /^Laying out page 1$/);
    assert.match(told.at(-1)!.doing, /^Drawing page (\d+) of \1$/);
    assert.equal(told.at(-1)!.share, 1);
    for (const [i, { share }] of told.entries()) {
      assert.ok(share >= (told[i - 1]?.share ?? 0), `${share} after ${told[i - 1]?.share}`);
    }
  });
});

describe('formulas in lines', () => {
  it('stay on one line where they fit, break before equals signs, and shrink where that is not enough', async () => {
    const typesetter = await Typesetter.load(4.4);
    const latex = 'U = \\frac{2 \\times I}{n} = \\left(3 = 3\\right) = \\mathrm{12345}\\,\\mathrm{V}';
    const [whole] = formulaLines(typesetter, latex, 500);
    assert.ok(whole.width > 50 && whole.width < 500);
    const broken = formulaLines(typesetter, latex, whole.width * 0.7);
    assert.ok(broken.length > 1 && broken.length <= 3);
    for (const { width } of [...broken, ...formulaLines(typesetter, latex, 12)]) {
      assert.ok(width <= whole.width * 0.7 + 1e-9);
    }
  });

  it('are vectors, with conditions as cases', async () => {
    const typesetter = await Typesetter.load(4.4);
    const { svg, height } = typesetter.set('\\begin{cases}a & \\text{if } b\\\\ c & \\text{otherwise}\\end{cases}');
    assert.ok(isFormulaDrawing(svg));
    // The brace, three variables and the letters of “if” and “otherwise”, each once however often it comes.
    assert.equal(svg.glyphs.length, 1 + new Set('abc').size + new Set('ifotherwise').size);
    assert.equal(svg.operators.match(/ Do /g)?.length, 1 + 3 + 'ifotherwise'.length);
    assert.ok(height > 15);
  });

  it('are left to SVG where the typesetter’s font lacks a letter', async () => {
    const { svg } = (await Typesetter.load(4.4)).set('\\text{\u6f22}');
    assert.ok(typeof svg === 'string' && /<text /.test(svg));
  });
});
