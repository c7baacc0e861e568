import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { toText } from '../../src/display';
import { evaluateSheet, formatSheet, SheetSession } from '../../src/session';

const root = join(__dirname, '..', '..');
const sheets = ['examples', 'seeds'].flatMap((folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.kft.md'))
    .map((name) => readFileSync(join(root, folder, name), 'utf8')),
);

/** Pieces that mean something to the language, to the trade or to the machine below. */
const pieces = [
  ...[
    'circuit',
    'solve ',
    'schedule',
    'input ',
    'use ',
    'check ',
    'allow ',
    'where ',
    'by ',
    'if ',
    ' then ',
    ' else ',
  ],
  ...[
    '12 AWG Cu',
    '1/0 AWG Al XHHW-2',
    '240 V',
    '5 kVA',
    '3 %',
    '20 °C',
    '±',
    ' in ',
    '==',
    '<=',
    '^',
    '**',
    '=>',
    '..',
  ],
  ...['(', ')', '[', ']', '"', '|', '\n', '\n  ', ': ', ', ', '.', '//', '```', '---', '\u0000', '\u2028', '😀'],
  ...['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', 'NaN', 'Infinity', '1e999', '-0'],
];

const anySheet = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.array(fc.constantFrom(...pieces), { maxLength: 40 }).map((parts) => `\`\`\`kft\n${parts.join('')}\n\`\`\`\n`),
  // A finished sheet with a stretch taken out and something put in its place.
  fc
    .tuple(
      fc.constantFrom(...sheets),
      fc.nat(),
      fc.nat({ max: 60 }),
      fc.array(fc.constantFrom(...pieces), { maxLength: 4 }),
    )
    .map(([sheet, at, length, parts]) => {
      const start = at % (sheet.length + 1);
      return sheet.slice(0, start) + parts.join('') + sheet.slice(start + length);
    }),
);

describe('any sheet at all', () => {
  it('is read, checked, evaluated, linted, shown and formatted without a throw', () => {
    fc.assert(
      fc.property(anySheet, (text) => {
        const { cells, diagnostics } = evaluateSheet(text);
        for (const { blocks } of cells) {
          assert.equal(typeof toText(blocks), 'string');
        }
        const lines = text.split(/\r\n|\n|\r/).length;
        for (const { line, column, message } of diagnostics) {
          assert.ok(line >= 1 && line <= lines && column >= 1, `${line}:${column} ${message}`);
          assert.match(message, /\S/);
        }
        formatSheet(new TextEncoder().encode(text));
      }),
      { numRuns: 250 },
    );
  });

  it('takes names of the machine below as ordinary names', () => {
    const names = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', 'prototype', 'arguments'];
    const text = names.map((name, i) => `${name} = ${i} V\ntwice_${name} = ${name} * 2`).join('\n');
    const { values, diagnostics } = evaluateSheet(`\`\`\`kft\n${text}\n\`\`\`\n`);
    assert.deepEqual(
      diagnostics.filter(({ severity }) => severity === 'error'),
      [],
    );
    names.forEach((name, i) => {
      const value = values.get(`twice_${name}`);
      assert.ok(value?.kind === 'quantity' && value.base === 2 * i, name);
    });
  });
});

describe('what could grow without bound', () => {
  const problemsOf = (text: string) => {
    const session = new SheetSession();
    session.update([{ id: 'cell', kind: 'calculation', text }]);
    return session.diagnostics('cell').map(({ code }) => code);
  };

  it('fields of fields of fields', () => {
    assert.deepEqual(problemsOf(`a = b${'.b'.repeat(50_000)}`), ['nested-too-deep']);
  });

  it('functions that call functions, deep or wide', () => {
    const deep = Array.from({ length: 3000 }, (_, i) => `f${i}(x) = ${i > 0 ? `f${i - 1}(x)` : 'x'} + 1`);
    const wide = Array.from({ length: 30 }, (_, i) => `f${i}(x) = ${i > 0 ? `f${i - 1}(x) + f${i - 1}(x)` : 'x'}`);
    assert.deepEqual(problemsOf(`${deep.join('\n')}\ny = f2999(1)`), ['nested-too-deep']);
    assert.deepEqual(problemsOf(`${wide.join('\n')}\ny = f29(1)`), ['nested-too-deep']);
  });

  it('one name defined ten thousand times', () => {
    const found = problemsOf('a = 1\n'.repeat(10_000));
    assert.equal(found.length, 10_000);
    assert.deepEqual([...new Set(found)], ['duplicate-name']);
  });
});
