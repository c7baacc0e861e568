import assert from 'node:assert/strict';
import fc from 'fast-check';
import { createProgram } from '../../../src/language';
import { told } from '../run-cells';
import { smallLibrary } from '../small-library';
import { cellText } from './sheet-arbitrary';

const ids = ['p', 'q', 'r', 's'];
const cellsOf = (texts: readonly string[]) => texts.map((text, i) => ({ id: ids[i], text }));

describe('a sheet as one program', () => {
  it('after any edits says what a new program with the same cells says, and names every cell that changed', () => {
    const edit = fc.tuple(fc.nat({ max: ids.length - 1 }), cellText);
    fc.assert(
      fc.property(
        fc.array(cellText, { minLength: 4, maxLength: 4 }),
        fc.array(edit, { maxLength: 5 }),
        (start, edits) => {
          const texts = [...start];
          const program = createProgram(smallLibrary);
          program.update(cellsOf(texts));
          for (const [index, text] of edits) {
            const before = told(program, ids);
            texts[index] = text;
            const changed = program.update(cellsOf(texts));
            const after = told(program, ids);
            const fresh = createProgram(smallLibrary);
            fresh.update(cellsOf(texts));
            assert.deepEqual(after, told(fresh, ids));
            for (const [i, id] of ids.entries()) {
              assert.ok(changed.has(id) || before[i] === after[i], `${id} changed unannounced`);
            }
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('gives the same results in any order of cells', () => {
    fc.assert(
      fc.property(
        fc.array(cellText, { minLength: 4, maxLength: 4 }),
        fc.shuffledSubarray(ids, { minLength: 4 }),
        (texts, order) => {
          const cells = cellsOf(texts);
          const one = createProgram(smallLibrary);
          one.update(cells);
          const other = createProgram(smallLibrary);
          other.update(order.map((id) => cells.find((cell) => cell.id === id)!));
          const results = (program: typeof one) =>
            ids.map((id) => program.results(id).map(({ name, value, verdict }) => ({ name, value, verdict })));
          assert.deepEqual(results(other), results(one));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('never throws, whatever is asked of it', () => {
    fc.assert(
      fc.property(fc.array(cellText, { minLength: 1, maxLength: 4 }), (texts) => {
        const program = createProgram(smallLibrary);
        program.update(cellsOf(texts));
        for (const id of ids.slice(0, texts.length)) {
          for (const result of program.results(id)) {
            result.trace();
            result.calls();
          }
          const tree = program.tree(id)!;
          for (let node = 0; node < tree.count; node++) {
            program.typeAt(id, node);
            program.valueAt(id, node);
          }
          for (const { span } of program.diagnostics(id)) {
            assert.ok(span.start >= 0 && span.start <= span.end && span.end <= tree.text.length);
          }
        }
        program.names();
      }),
      { numRuns: 300 },
    );
  });

  it('takes damaged text as it comes', () => {
    const damage = fc.tuple(fc.nat(), fc.nat({ max: 4 }), fc.string({ maxLength: 3 }));
    fc.assert(
      fc.property(cellText, fc.array(damage, { maxLength: 4 }), (text, damages) => {
        let damaged = text;
        for (const [at, length, put] of damages) {
          const start = at % (damaged.length + 1);
          damaged = damaged.slice(0, start) + put + damaged.slice(start + length);
        }
        const program = createProgram(smallLibrary);
        program.update([{ id: 'p', text: damaged }]);
        for (const result of program.results('p')) {
          result.trace();
          // Whatever has no value says why: here, elsewhere, or in the reading of the cell.
          const explained =
            result.value !== undefined ||
            result.missing !== undefined ||
            program.diagnostics('p').length > 0 ||
            result.kind === 'other';
          assert.ok(explained, JSON.stringify(damaged));
        }
      }),
      { numRuns: 500 },
    );
  });
});
