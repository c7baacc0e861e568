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
  const result = reader.read(
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
  return { kind: 'object', object: reader.type };
}
