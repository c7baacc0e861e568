import type { Statement } from './binding';
import { type Checker, replacing } from './checker';
import { nearest } from './nearest';
import type { Type } from './type';
import { unknownType } from './types';

/** A name taken from another sheet by `use`: it has the type that it has there. */
export function checkTaken(c: Checker, { part, node, taken }: Statement): Type {
  const { nextSiblings, firstChildren } = c.tree;
  if (!taken || taken.problem) {
    // One report for all names of the line.
    if (taken?.problem && part === firstChildren[node]) {
      let file = part;
      while (nextSiblings[file] >= 0) {
        file = nextSiblings[file];
      }
      c.report(taken.problem.code, file, taken.problem.message);
    }
    return unknownType;
  }
  const { name, names, file } = taken;
  if (!name || !names || !name.isDefined) {
    c.namesMissing = true;
    const text = c.text(part);
    const defined = [...(names?.defined() ?? [])].map((one) => one.text).sort();
    const meant = nearest(text, defined);
    const has = defined.length > 0 ? `It has ${listed(defined)}.` : 'It defines no names.';
    c.report(
      'unknown-name',
      part,
      `\`${text}\` is not defined in "${file}". ${meant ? `Did you mean \`${meant}\`?` : has}`,
      { fixes: meant ? [replacing(`Replace ${text} by ${meant}`, c.span(part), meant)] : undefined },
    );
    return unknownType;
  }
  c.meaning.types[part] = name.type;
  return name.type;
}

/** More names than this say less than fewer. */
const mostListed = 8;

const listed = (names: readonly string[]): string => {
  const more = names.length - mostListed;
  const shown = names.slice(0, mostListed).map((name) => `\`${name}\``);
  return shown.join(', ') + (more > 0 ? ` and ${more} more` : '');
};
