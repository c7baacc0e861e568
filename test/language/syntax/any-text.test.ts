import assert from 'node:assert/strict';
import fc from 'fast-check';
import { children, Node, type SyntaxTree, unitSpanOf } from '../../../src/language/syntax/tree';
import { mutatedCell, roughCell } from './cell-arbitraries';
import { fixturesIn, readFixture } from './fixtures';
import { readCell } from './read-cell';

const good = fixturesIn('trees').map((name) => readFixture('trees', name).split('\n--------\n')[0]);
const anyCell = fc.oneof(roughCell, mutatedCell(good));

/** Nodes that can be reached from the statements; each must have one parent only. */
function reachable(tree: SyntaxTree): Set<number> {
  const seen = new Set<number>();
  const visit = (node: number) => {
    assert.ok(node >= 0 && node < tree.count, 'a child is a node');
    assert.ok(!seen.has(node), 'a node has one parent');
    seen.add(node);
    for (const child of children(tree, node)) {
      visit(child);
    }
  };
  tree.statements.forEach(visit);
  return seen;
}

/** True for white space, and for the signs and words that are no nodes. */
const isBetween = (text: string): boolean =>
  text
    .replace(/\/\/[^\r\n]*/g, '')
    .split(/[\s\u00a0\ufeff\u2000-\u200b\u202f\u205f()[\],:.|=!<>+*/^±×·⋅÷≤≥≠−-]+/u)
    .every(
      (word) =>
        word === '' ||
        /^(if|then|else|and|or|not|in|by|where|check|solve|input|use|allow|schedule|from|to|over|range|OL)$/.test(word),
    );

/** Brackets are signs; with nothing between them they may still hold a comment. */
const isBrackets = (kind: Node): boolean => kind === Node.List || kind === Node.Parameters;

describe('any text at all', () => {
  it('gives a tree whose nodes lie in order inside their parents', () => {
    fc.assert(
      fc.property(anyCell, (text) => {
        const tree = readCell(text);
        let last = 0;
        for (const statement of tree.statements) {
          assert.ok(tree.starts[statement] >= last, 'statements lie in order');
          last = tree.ends[statement];
        }
        assert.ok(last <= text.length);
        for (const node of reachable(tree)) {
          let at = tree.starts[node];
          assert.ok(at <= tree.ends[node]);
          for (const child of children(tree, node)) {
            assert.ok(tree.starts[child] >= at, `child ${Node[tree.kinds[child]]} begins after what is before it`);
            at = tree.ends[child];
          }
          assert.ok(at <= tree.ends[node], `children end inside ${Node[tree.kinds[node]]}`);
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('loses nothing: each character is in one leaf, a unit, a comment, or a sign or word of the language', () => {
    fc.assert(
      fc.property(anyCell, (text) => {
        const tree = readCell(text);
        const spans = [...reachable(tree)]
          .filter((node) => tree.firstChildren[node] < 0 && !isBrackets(tree.kinds[node]))
          .map((node) => ({ start: tree.starts[node], end: tree.ends[node] }))
          .concat(
            [...reachable(tree)]
              .filter((node) => tree.kinds[node] === Node.Convert)
              .map((node) => unitSpanOf(tree, node)),
            tree.comments.map(({ span }) => span),
          )
          .sort((a, b) => a.start - b.start || a.end - b.end);
        let at = 0;
        for (const { start, end } of spans) {
          if (start >= at) {
            assert.ok(isBetween(text.slice(at, start)), `between leaves: ${JSON.stringify(text.slice(at, start))}`);
          } else {
            assert.ok(isInsideError(tree, start), 'leaves do not overlap');
          }
          at = Math.max(at, end);
        }
        assert.ok(isBetween(text.slice(at)), `after the last leaf: ${JSON.stringify(text.slice(at))}`);
      }),
      { numRuns: 3000 },
    );
  });

  it('gives problems that lie in the text, and one wherever something could not be read', () => {
    fc.assert(
      fc.property(anyCell, (text) => {
        const tree = readCell(text);
        for (const { span, message, code, fixes } of tree.diagnostics) {
          assert.ok(span.start >= 0 && span.start <= span.end && span.end <= text.length);
          assert.match(code, /^[a-z]+(-[a-z]+)*$/);
          assert.match(message, /[.?]$/);
          for (const edit of fixes?.flatMap((fix) => fix.edits) ?? []) {
            assert.ok(edit.span.start <= edit.span.end && edit.span.end <= text.length);
          }
        }
        const hasError = [...reachable(tree)].some((node) => tree.kinds[node] === Node.Error);
        assert.ok(!hasError || tree.diagnostics.length > 0);
      }),
      { numRuns: 2000 },
    );
  });
});

/** A comment may stand in text that was skipped over several lines. */
function isInsideError(tree: SyntaxTree, at: number): boolean {
  for (let node = 0; node < tree.count; node++) {
    if (tree.kinds[node] === Node.Error && tree.starts[node] <= at && at < tree.ends[node]) {
      return true;
    }
  }
  return false;
}
