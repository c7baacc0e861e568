import assert from 'node:assert/strict';
import fc from 'fast-check';
import { SheetSession } from '../../src/core';
import { toMarkdown, toText } from '../../src/display';
import '../fuzz-seed';
import { anyEdit, anySheet, edited } from './sheet-edits';

/** All that a session tells of a cell, as a host shows it. */
function told(session: SheetSession, id: string) {
  const blocks = session.outputs(id);
  return {
    markdown: toMarkdown(blocks),
    text: toText(blocks),
    diagnostics: session.diagnostics(id),
    live: session.liveValues(id),
    prose: session.shownProse(id),
    results: session.results(id).map(({ name, kind, value, verdict, missing, origin }) => {
      return { name, kind, value, verdict, missing, origin };
    }),
  };
}

describe('a session after edits', () => {
  it('tells of every cell what a new session tells, and names each cell of which it tells something else', () => {
    const script = fc.array(anyEdit, { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(anySheet, script, (sheet, edits) => {
        const session = new SheetSession();
        let cells = sheet;
        session.update(cells);
        for (const [i, edit] of edits.entries()) {
          const before = new Map(cells.map(({ id }) => [id, told(session, id)]));
          cells = edited(cells, edit, `new ${i}`);
          const changed = session.update(cells);
          const fresh = new SheetSession();
          fresh.update(cells);
          for (const { id, kind } of cells) {
            const now = told(session, id);
            assert.deepEqual(now, told(fresh, id));
            // A host reads a prose cell's own text by itself; of it only what the sheet makes of it is news.
            const { prose: _, ...then } = before.get(id) ?? { prose: '' };
            const { prose: __, ...rest } = now;
            if (!changed.has(id) && (before.has(id) || kind === 'calculation')) {
              assert.deepEqual(rest, then, `${id} changed unannounced`);
            }
          }
          assert.deepEqual(session.allowed(), fresh.allowed());
          assert.deepEqual(session.cautions(), fresh.cautions());
          assert.deepEqual(session.calculations(), fresh.calculations());
          const names = (of: SheetSession) =>
            [...of.program.names()]
              .sort(([a], [b]) => (a < b ? -1 : 1))
              .map(([name, { cell, definition, statement, references }]) => {
                return { name, cell, definition, statement, references };
              });
          assert.deepEqual(names(session), names(fresh));
        }
      }),
      { numRuns: 80 },
    );
  });
});
