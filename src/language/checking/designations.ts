import type { DesignationReader, DesignationResult } from '../library';
import { Node } from '../syntax/tree';
import { type Checker, replacing } from './checker';
import type { Type } from './type';
import { unknownType } from './types';

/** A size with its words; the library reads it, and its problems are reported at the word at fault. */
export function checkDesignation(c: Checker, node: number): Type {
  const { kinds, firstChildren, nextSiblings } = c.tree;
  const size = firstChildren[node];
  const words: number[] = [];
  for (let child = nextSiblings[size]; child >= 0; child = nextSiblings[child]) {
    if (kinds[child] === Node.Word) {
      words.push(child);
    }
  }
  const reader = c.context.library.designation;
  const result = read(
    reader,
    c.text(size),
    words.map((word) => c.text(word)),
  );
  if ('problem' in result) {
    const at = result.word === undefined ? node : (words[result.word] ?? node);
    const span = c.span(at);
    c.report(result.code, at, result.problem, {
      fixes: result.replacements?.map((text) => replacing(`Write ${text}`, span, text)),
    });
    return unknownType;
  }
  c.meaning.designations.set(node, result);
  return typeOf(reader);
}

/** So many different sizes are kept; a sheet has few. */
const mostKept = 1000;
const kept = new WeakMap<DesignationReader, Map<string, DesignationResult>>();

/** A size reads the same wherever it stands, and a long schedule says the same few over and over. */
function read(reader: DesignationReader, size: string, words: readonly string[]): DesignationResult {
  let known = kept.get(reader);
  if (!known || known.size > mostKept) {
    known = new Map();
    kept.set(reader, known);
  }
  const key = [size, ...words].join('\n');
  let result = known.get(key);
  if (!result) {
    result = reader.read(size, words);
    known.set(key, result);
  }
  return result;
}

const types = new WeakMap<DesignationReader, Type>();

/** One object for each reader, so that tables can be keyed by it. */
function typeOf(reader: DesignationReader): Type {
  let type = types.get(reader);
  if (!type) {
    type = { kind: 'object', object: reader.type };
    types.set(reader, type);
  }
  return type;
}
