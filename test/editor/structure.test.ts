import assert from 'node:assert/strict';
import fc from 'fast-check';
import {
  documentSymbols,
  fixAllEdits,
  foldsOf,
  formattingEdits,
  highlightsAt,
  inlayHints,
  linksOf,
  type SheetSymbol,
  selectionRangesAt,
} from '../../src/core';
import { applyEdits } from '../../src/text';
import { roughCell } from '../language/syntax/cell-arbitraries';
import { bracketed, cells } from './marked-cells';

describe('the outline of a cell', () => {
  it('has a line for each name and check, with its value, and the fields of a form below it', () => {
    const text =
      'input run = 85 ft from 5 ft to 400 ft "one-way length"\nflow = 3 A * 2\nf(a) = a * 2\n' +
      'k = circuit\n  load: flow\n  voltage: 120 V\ncheck flow <= 10 A "small enough"';
    const { session } = cells(text);
    const line = ({ kind, name, detail, fields }: SheetSymbol): unknown[] => [kind, name, detail, ...fields.map(line)];
    assert.deepEqual(documentSymbols(session, '0').map(line), [
      ['input', 'run', '85 ft'],
      ['value', 'flow', '6 A'],
      ['function', 'f', ''],
      ['record', 'k', '', ['field', 'load', 'flow'], ['field', 'voltage', '120 V']],
      ['check', 'small enough', 'yes'],
    ]);
  });

  it('keeps each name inside its statement, whatever is typed', () => {
    fc.assert(
      fc.property(roughCell, (text) => {
        const { session } = cells(text.replaceAll('¦', ''));
        for (const { span, nameSpan, name } of documentSymbols(session, '0')) {
          assert.ok(span.start <= nameSpan.start && nameSpan.end <= span.end, name);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('folding', () => {
  it('folds forms and runs of comments of more than one line', () => {
    const text = '// one\n// two\nx = 3 // alone\nk = circuit\n  load: 3 A\n  voltage: 120 V\n// last';
    const { session } = cells(text);
    assert.equal(
      bracketed(
        text,
        foldsOf(session, '0').map(({ span }) => span),
      ),
      '⟦// one\n// two⟧\nx = 3 // alone\n⟦k = circuit\n  load: 3 A\n  voltage: 120 V⟧\n// last',
    );
  });
});

describe('selection ranges', () => {
  it('grow from a word to what it is part of, its statement and its cell', () => {
    const { session, offset, texts } = cells('a = 1\nx = (b + ¦c) * 2');
    const text = texts[0].replace('¦', '');
    const parts = selectionRangesAt(session, '0', offset).map(({ start, end }) => text.slice(start, end));
    assert.deepEqual(parts, ['c', 'b + c', '(b + c)', '(b + c) * 2', 'x = (b + c) * 2', text]);
  });

  it('begin with the whole of a comment', () => {
    const { session, offset } = cells('x = 3 // the ¦load');
    assert.deepEqual(selectionRangesAt(session, '0', offset)[0], { start: 6, end: 17 });
  });
});

describe('formatting', () => {
  const text = 'x=3 V\nk = circuit\n    load:3 A\n    voltage:   120 V\ny=4';

  it('lays out a whole cell, and what is laid out stays', () => {
    const { session } = cells(text);
    const once = applyEdits(text, formattingEdits(session, '0'));
    assert.equal(once, 'x = 3 V\nk = circuit\n  load: 3 A\n  voltage: 120 V\ny = 4');
    assert.deepEqual(formattingEdits(cells(once).session, '0'), []);
  });

  it('lays out the whole of each statement that a selection touches, and no other', () => {
    const { session } = cells(text);
    const at = text.indexOf('load');
    const once = applyEdits(text, formattingEdits(session, '0', { start: at, end: at + 1 }));
    assert.equal(once, 'x=3 V\nk = circuit\n  load: 3 A\n  voltage: 120 V\ny=4');
  });
});

describe('highlights', () => {
  it('mark every place of a name in its cell, and which of them defines it', () => {
    const { session, cell, offset } = cells('run = 3 ft\nx = ru¦n * 2', 'y = run');
    assert.deepEqual(highlightsAt(session, cell, offset), [
      { span: { start: 0, end: 3 }, defines: true },
      { span: { start: 15, end: 18 }, defines: false },
    ]);
  });
});

describe('inlay hints', () => {
  it('tell what a line comes to, and keep still where it is only written down', () => {
    const text =
      'v = 240 V\ni = v / 20 Ω\ncheck i <= 10 A "load"\nc = 12 AWG Cu THHN\nk = circuit\n  load: i\n  voltage: v';
    const { session } = cells(text);
    const shown = inlayHints(session, '0').map(({ offset, text: hint }) => [
      text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset),
      hint,
    ]);
    assert.deepEqual(shown, [
      ['i = v / 20 Ω', '= 12 A'],
      ['check i <= 10 A "load"', '✗ no'],
    ]);
  });
});

describe('links', () => {
  it('lead from `use` and `schedule` to the files they name', () => {
    const text = 'use element from "site/kiln.kft.md"\nloads = schedule "loads.csv"\nx = "not a file"';
    const found = linksOf(cells(text).session, '0');
    assert.deepEqual(
      found.map(({ span, what }) => [text.slice(span.start, span.end), what]),
      [
        ['site/kiln.kft.md', 'sheet'],
        ['loads.csv', 'table'],
      ],
    );
  });
});

describe('fix all', () => {
  const fix = (start: number, end: number, newText: string, safe = true) => ({
    title: newText,
    safe,
    edits: [{ span: { start, end }, newText }],
  });
  const problem = (...fixes: ReturnType<typeof fix>[]) => ({
    code: 'curly-quotes' as const,
    severity: 'warning' as const,
    span: { start: 0, end: 1 },
    message: '',
    fixes,
  });

  it('takes what the language can mend on its own', () => {
    const text = 'check 3 A <= 4 A “fine”';
    const { session } = cells(text);
    assert.equal(
      applyEdits(text, fixAllEdits(session.program.tree('0')!, session.diagnostics('0'))),
      'check 3 A <= 4 A "fine"',
    );
  });

  it('leaves unsafe fixes, choices and every conductor alone', () => {
    const { session } = cells('c = 12 AWG Cu THHN\nx = 3');
    const tree = session.program.tree('0')!;
    const none = [
      problem(fix(19, 20, 'y', false)),
      problem(fix(19, 20, 'y'), fix(19, 20, 'z')),
      problem(fix(4, 10, '10 AWG')),
    ];
    assert.deepEqual(fixAllEdits(tree, none), []);
    assert.equal(fixAllEdits(tree, [problem(fix(19, 20, 'y')), problem(fix(19, 20, 'z'))]).length, 1);
  });
});
