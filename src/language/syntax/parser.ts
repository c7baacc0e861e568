import { codesOf } from '../../text';
import { Reader } from './parsing/reader';
import { readStatement } from './parsing/statements';
import { TreeBuilder } from './parsing/tree-builder';
import { placeComments } from './scanning/comments';
import { Token } from './scanning/token';
import type { SyntaxTree } from './tree';
import type { UnitReader } from './unit-reader';
import type { Vocabulary } from './vocabulary';

const builder = new TreeBuilder();
let kept = codesOf('');

/**
 * Reads a cell. Never throws and always ends: what cannot be read becomes an Error node and a diagnostic, and
 * reading goes on at the next line. `units` finds where a unit ends, `vocabulary` holds the words of sizes.
 */
export function parse(text: string, vocabulary: Vocabulary, units: UnitReader): SyntaxTree {
  kept = codesOf(text, kept);
  builder.begin(text, kept);
  const reader = new Reader(text, kept, vocabulary, units, builder);
  const statements: number[] = [];
  let outer = -1;
  while (reader.beginLine()) {
    const indent = reader.lineIndent;
    if (outer < 0 || indent < outer) {
      outer = indent;
    } else if (indent > outer) {
      reader.reportIndent();
    }
    reader.indent = indent;
    reader.depth = 0;
    statements.push(readStatement(reader));
    if (reader.token !== Token.LineEnd) {
      break;
    }
  }
  const comments = placeComments(text, reader.comments, statements, builder.ends);
  return builder.finish(text, statements, comments, reader.diagnostics);
}
