import assert from 'node:assert/strict';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { SheetSession } from '../../src/session';
import { type Diagnostic, LineIndex } from '../../src/text';

const folder = join(__dirname, 'mistakes');
const fixtures = readdirSync(folder).sort();

const isMark = (line: string): boolean => /^ *(\^+ [a-z-]+: |or: )/.test(line);

/** The cell with each problem under its line, and under that each fix as the line that it makes. */
function marked(text: string, diagnostics: readonly Diagnostic[]): string {
  const index = new LineIndex(text);
  const lines = text.split('\n').map((line) => [line]);
  for (const { code, span, message, fixes = [] } of diagnostics) {
    const from = index.at(span.start);
    const to = index.at(span.end);
    const width = to.line === from.line ? Math.max(1, to.column - from.column) : 1;
    const below = lines[from.line - 1];
    below.push(`${' '.repeat(from.column - 1)}${'^'.repeat(width)} ${code}: ${message}`);
    for (const { edits } of fixes) {
      const mended = [...edits]
        .sort((a, b) => b.span.start - a.span.start)
        .reduce((old, { span, newText }) => old.slice(0, span.start) + newText + old.slice(span.end), text);
      below.push(`or: ${mended.split('\n')[from.line - 1]}`);
    }
  }
  return lines.flat().join('\n');
}

function problemsIn(text: string): readonly Diagnostic[] {
  const session = new SheetSession();
  session.update([{ id: 'cell', kind: 'calculation', text }]);
  return session.diagnostics('cell');
}

describe('typical mistakes', () => {
  for (const name of fixtures) {
    it(`are told with their place and what to do: ${name.replace('.txt', '').replaceAll('-', ' ')}`, () => {
      const stored = readFileSync(join(folder, name), 'utf8');
      const text = stored
        .split('\n')
        .filter((line) => !isMark(line))
        .join('\n');
      const actual = marked(text, problemsIn(text));
      if (process.env.UPDATE_FIXTURES === '1') {
        writeFileSync(join(folder, name), actual);
      }
      assert.equal(actual, readFileSync(join(folder, name), 'utf8'));
    });
  }

  it('are at least sixty of different kinds, and most offer what to write instead', () => {
    const all = fixtures.flatMap((name) => readFileSync(join(folder, name), 'utf8').split('\n'));
    const kinds = new Set(all.flatMap((line) => /^ *\^+ ([a-z-]+): /.exec(line)?.[1] ?? []));
    const marks = all.filter((line) => /^ *\^+ /.test(line));
    assert.ok(marks.length >= 60, `${marks.length}`);
    assert.ok(kinds.size >= 40, `${kinds.size}`);
    assert.ok(all.filter((line) => line.startsWith('or: ')).length >= 40);
  });

  it('mended as the first fix says, show one problem less', () => {
    for (const name of fixtures) {
      const text = readFileSync(join(folder, name), 'utf8')
        .split('\n')
        .filter((line) => !isMark(line))
        .join('\n');
      const before = problemsIn(text);
      for (const { code, fixes, span } of before) {
        const edits = [...(fixes?.[0]?.edits ?? [])].sort((a, b) => b.span.start - a.span.start);
        if (edits.length > 0) {
          const mended = edits.reduce((old, e) => old.slice(0, e.span.start) + e.newText + old.slice(e.span.end), text);
          const same = problemsIn(mended).filter((left) => left.code === code).length;
          const were = before.filter((left) => left.code === code).length;
          assert.ok(same < were, `${name}: ${code} at ${text.slice(span.start, span.end)}`);
        }
      }
    }
  });
});
