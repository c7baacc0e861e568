import { children, Node, spanOf, textContent, textOf } from '../../language';
import type { EditedSheet, Place } from '../contract';

/** A name that a sheet takes from another one. */
export interface UsedName {
  readonly name: string;
  /** The other sheet's file, told from the same root as the sheet's own. */
  readonly file: string;
  readonly place: Place;
}

/** The names that the cells of a sheet take from other sheets. */
export function usedNames({ program }: EditedSheet, file: string, cells: readonly string[]): UsedName[] {
  return cells.flatMap((cell) => {
    const tree = program.tree(cell);
    return (tree?.statements ?? []).flatMap((node) => {
      const parts = tree!.kinds[node] === Node.Use ? [...children(tree!, node)] : [];
      const from = parts.find((part) => tree!.kinds[part] === Node.Text);
      const target = from === undefined ? undefined : besideFile(file, textContent(tree!, from));
      return target === undefined
        ? []
        : parts
            .filter((part) => tree!.kinds[part] === Node.Name)
            .map((part) => ({ name: textOf(tree!, part), file: target, place: { cell, span: spanOf(tree!, part) } }));
    });
  });
}

/** The file that a relative path names, seen from another file; undefined when it leaves the common root. */
export function besideFile(file: string, relative: string): string | undefined {
  if (relative === '' || /^[/\\]|^[a-z]+:/i.test(relative)) {
    return undefined;
  }
  const parts = file.split('/').slice(0, -1);
  for (const part of relative.split(/[/\\]/)) {
    if (part === '..') {
      if (parts.pop() === undefined) {
        return undefined;
      }
    } else if (part !== '.' && part !== '') {
      parts.push(part);
    }
  }
  return parts.join('/');
}
