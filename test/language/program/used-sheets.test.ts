import assert from 'node:assert/strict';
import fc from 'fast-check';
import { createProgram, type Program } from '../../../src/language';
import { shown, told } from '../run-cells';
import { smallLibrary } from '../small-library';
import { withCarets } from '../syntax/carets';
import { GivenSheets } from './given-sheets';
import { cellText } from './sheet-arbitrary';

const taking = (text: string, others: Readonly<Record<string, string>>) => {
  const given = new GivenSheets(others);
  const program = createProgram(smallLibrary, given);
  program.update([{ id: 'cell', text }]);
  return { given, program };
};
const valueIn = (program: Program, name: string) =>
  program.results('cell').find((result) => result.name === name)?.value;
const said = (program: Program) => program.diagnostics('cell').map(({ code, message }) => `${code}: ${message}`);

describe('a sheet that takes names from another', () => {
  it('has their values, and those of records, objects, texts and lists', () => {
    const { program } = taking('use a, r, s, t, l from "k"\nb = a * 2\nv = r.volts\nm = max(l)', {
      k: 'a = 3 V\nr = drop(4 A)\ns = 10 AWG red\nt = "north"\nl = [1 A, 5 A]',
    });
    assert.deepEqual(said(program), []);
    assert.deepEqual(
      ['a', 'b', 'v', 's', 't', 'm'].map((name) => shown(valueIn(program, name))),
      ['3 V', '6 V', '4 V', '10 AWG red', 'north', '5 A'],
    );
  });

  it('calls functions of the other sheet with the names that hold there', () => {
    const { program } = taking('factor = 100\nuse twice from "k"\nb = twice(4 V)', {
      k: 'twice(x) = x * factor\nfactor = 2',
    });
    assert.deepEqual(said(program), []);
    assert.equal(shown(valueIn(program, 'b')), '8 V');
  });

  it('keeps one source of doubt for one reading, whichever way it comes', () => {
    const { program } = taking('use u, i from "k"\nuse u2 from "m"\nzero = u2 - 2 * u\np = u * i', {
      k: 'u = 207.6 V ± 2 V\ni = u / (10 Ω)',
      m: 'use u from "k"\nu2 = u + u',
    });
    assert.deepEqual(said(program), []);
    const zero = valueIn(program, 'zero');
    assert.ok(zero?.kind === 'quantity');
    assert.equal(zero.base, 0);
    assert.equal(zero.uncertainty, undefined);
    const power = valueIn(program, 'p');
    assert.ok(power?.kind === 'quantity' && power.uncertainty);
    // P = U²/R has twice the relative doubt of U; two independent readings would have √2 times it.
    const relative = power.uncertainty.standard / power.base / (2 / Math.sqrt(3) / 207.6);
    assert.ok(Math.abs(relative - 2) < 1e-12, String(relative));
  });

  it('meters taken from another sheet read here', () => {
    const { program } = taking('use bench from "k"\nr = 13.21 Ω by bench', { k: 'bench = meter(range: 0.05 Ω)' });
    const value = valueIn(program, 'r');
    assert.ok(value?.kind === 'quantity' && value.uncertainty);
    assert.ok(Math.abs(value.uncertainty.limits! - 0.05) < 1e-12);
  });

  it('says where a value comes from and how it came about there', () => {
    const { program } = taking('use b from "k"', { k: 'a = 3 V\nb = a * 2' });
    const [result] = program.results('cell');
    assert.equal(result.kind, 'definition');
    assert.equal(result.taken?.file, 'k');
    assert.equal(result.taken?.result?.name, 'b');
    const [step] = result.trace().steps;
    assert.ok(step.kind === 'taken');
    assert.equal(step.steps[0].kind, 'formula');
  });

  for (const [what, text, others] of [
    [
      'a name that is not there, with the one that was meant',
      'use elment from "k"\n    ^^^^^^ unknown-name: `elment` is not defined in "k". Did you mean `element`?',
      { k: 'element = 3 Ω' },
    ],
    [
      'what there is instead',
      'use x from "k"\n    ^ unknown-name: `x` is not defined in "k". It has `element`, `supply`.',
      { k: 'element = 3 Ω\nsupply = 2 V' },
    ],
    [
      'a name that failed there, and where',
      'use b from "k"\n    ^ taken-name-failed: `b` has no value in "k". The fault is in line 2 of k: `1 V` is a voltage (V), `1 A` is a current (A): only like quantities add.',
      { k: 'b = a * 2\na = 1 V + 1 A' },
    ],
    [
      'a division by zero there',
      'use b from "k"\n    ^ taken-name-failed: `b` has no value in "k". The fault is in line 1 of k: `1 V / z` divides by zero: `z` is 0.',
      { k: 'b = 1 V / z\nz = 0 A' },
    ],
    [
      'a line there that cannot be read',
      'use b from "k"\n    ^ taken-name-failed: `b` has no value in "k". The fault is in line 1 of k: ',
      { k: 'b = 2 *' },
    ],
    [
      'a name defined twice there',
      'use b from "k"\n    ^ taken-name-failed: `b` is defined more than once in "k", so it is not clear which one counts. Mend that sheet.',
      { k: 'b = 1 V\nb = 2 V' },
    ],
    [
      'a missing file once for all its names',
      'use a, b from "gone"\n              ^^^^^^ missing-file: "gone" is not there.',
      {},
    ],
    [
      'a sheet that takes from itself',
      'use a from "main"\n           ^^^^^^ sheet-cycle: A sheet cannot take names from itself: they are there already. Remove this line.',
      {},
    ],
    [
      'a circle of sheets, with the way round',
      'use a from "k"\n           ^^^ sheet-cycle: These sheets take names from one another in a circle: main → k → m → main. Move what they share to a sheet of its own.',
      { k: 'use b from "m"\na = b', m: 'use c from "main"\nb = c' },
    ],
    [
      'a circle further on, at the name that fails for it',
      'use a from "k"\n    ^ taken-name-failed: `a` has no value in "k". The fault is in line 1 of k: These sheets take names from one another in a circle: k → m → k. Move what they share to a sheet of its own.',
      { k: 'use b from "m"\na = b', m: 'use c from "k"\nb = c' },
    ],
    [
      'a name defined here, too',
      'use a from "k"\n    ^ duplicate-name: `a` is defined more than once, so it is not clear which one counts. Rename or remove all but one.\na = 2 V\n^ duplicate-name: `a` is defined more than once, so it is not clear which one counts. Rename or remove all but one.',
      { k: 'a = 3 V' },
    ],
  ] as const) {
    it(`reports ${what}`, () => {
      const source = text
        .split('\n')
        .filter((line) => !/^ *\^/.test(line))
        .join('\n');
      const { program } = taking(source, others);
      const marked = withCarets(source, program.diagnostics('cell'));
      assert.ok(marked.startsWith(text), marked);
    });
  }

  it('names the other sheet and its line beside the report', () => {
    const { program } = taking('use b from "k"', { k: '\nb = 1 V + 1 A' });
    assert.deepEqual(
      program.diagnostics('cell')[0].related?.map(({ file }) => file),
      [{ path: 'k', line: 2 }],
    );
  });

  it('follows changes of the other sheet, and does again only what hangs on them', () => {
    const { program, given } = taking('use a from "k"\nb = a * 2', { k: 'a = 3 V' });
    const cells = [
      { id: 'cell', text: 'use a from "k"\nb = a * 2' },
      { id: 'aside', text: 'c = 1 V' },
    ];
    program.update(cells);
    given.set('k', 'a = 4 V');
    assert.deepEqual([...program.update(cells)], ['cell']);
    assert.equal(shown(valueIn(program, 'b')), '8 V');
    assert.deepEqual([...program.update(cells)], []);
    given.set('k', 'b = 4 V');
    program.update(cells);
    assert.match(said(program)[0], /^unknown-name/);
    given.set('k', 'a = 5 V');
    program.update(cells);
    assert.equal(shown(valueIn(program, 'b')), '10 V');
  });

  it('after any edits of any sheet says what a new program with the same sheets says', () => {
    const from = fc.constantFrom('k', 'm', 'main', 'gone');
    const names = fc.constantFrom('a', 'b', 'c', 'f', '__proto__');
    const use = fc.tuple(names, from).map(([name, file]) => `use ${name} from "${file}"`);
    const text = fc.tuple(fc.array(use, { maxLength: 2 }), cellText).map(([uses, rest]) => [...uses, rest].join('\n'));
    const sheets = fc.record({ main: text, k: text, m: text });
    fc.assert(
      fc.property(
        sheets,
        fc.array(fc.tuple(fc.constantFrom('main', 'k', 'm'), text), { maxLength: 4 }),
        (all, edits) => {
          const { main, ...others } = all;
          const given = new GivenSheets(others);
          const program = createProgram(smallLibrary, given);
          const texts = { ...all };
          program.update([{ id: 'cell', text: main }]);
          for (const [name, edited] of edits) {
            texts[name as 'main'] = edited;
            given.set(name, edited);
            const before = told(program, ['cell']);
            const changed = program.update([{ id: 'cell', text: texts.main }]);
            const fresh = createProgram(smallLibrary, new GivenSheets({ k: texts.k, m: texts.m }));
            fresh.update([{ id: 'cell', text: texts.main }]);
            const after = told(program, ['cell']);
            assert.deepEqual(after, told(fresh, ['cell']));
            assert.ok(changed.has('cell') || after[0] === before[0]);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
