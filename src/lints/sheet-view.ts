import { Node, type Program, type SyntaxTree } from '../language';
import { calledName } from './argument-places';

/** What only the whole sheet tells. Each answer holds for one state of the sheet. */
export interface SheetView {
  /** True when the sheet states the accuracy of a meter: it is no mere sketch. */
  statesMeters(): boolean;
  /** True when its words, in cells or prose, say that what was measured was isolated or proved dead. */
  recordsIsolation(): boolean;
  /** True when the name is used in a cell, in live prose, or by another statement. */
  uses(name: string): boolean;
}

const isolationWords =
  /\bisolat|\bde-?energi[sz]|\bdead\b|\block(ed)? ?(it )?out\b|\blifted\b|\blift one\b|\bunplugged\b|\bdisconnected\b|\bconnected to nothing\b|\bnothing is connected\b|\bout of (the )?circuit\b/i;

/** The view of a program's cells and of the prose between them. */
export function sheetView(program: Program, cells: readonly string[], prose: readonly string[]): SheetView {
  const trees = () => cells.flatMap((cell) => program.tree(cell) ?? []);
  return {
    statesMeters: once(() => trees().some(statesMeter)),
    recordsIsolation: once(
      () => prose.some((text) => isolationWords.test(text)) || trees().some((tree) => tree.comments.some(saysIsolated)),
    ),
    uses: (name) => (program.names().get(name)?.references.length ?? 0) > 0 || isInLiveProse(prose, name),
  };
}

const saysIsolated = ({ text }: { readonly text: string }): boolean => isolationWords.test(text);

const metersIn = new WeakMap<SyntaxTree, boolean>();

function statesMeter(tree: SyntaxTree): boolean {
  let found = metersIn.get(tree);
  if (found === undefined) {
    found = hasMeter(tree);
    metersIn.set(tree, found);
  }
  return found;
}

function hasMeter(tree: SyntaxTree): boolean {
  for (let node = 0; node < tree.count; node++) {
    const kind = tree.kinds[node];
    if ((kind === Node.Call || kind === Node.BlockCall) && calledName(tree, node) === 'meter') {
      return true;
    }
  }
  return false;
}

/** An inline code span that begins with an equals sign is evaluated where the sheet is shown. */
const liveSpan = /`=([^`]*)`/g;

const isInLiveProse = (prose: readonly string[], name: string): boolean =>
  prose.some((text) =>
    [...text.matchAll(liveSpan)].some(([, expression]) => expression.split(/[^\p{L}\p{N}_]+/u).includes(name)),
  );

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** One question that was put to the sheet, and its answer then. */
export interface Asked {
  readonly again: (sheet: SheetView) => boolean;
  readonly answer: boolean;
}

/** The same view, noting what is asked of it. */
export function askedOf(sheet: SheetView, asked: Asked[]): SheetView {
  const noting = (again: Asked['again']): boolean => {
    const answer = again(sheet);
    asked.push({ again, answer });
    return answer;
  };
  return {
    statesMeters: () => noting((view) => view.statesMeters()),
    recordsIsolation: () => noting((view) => view.recordsIsolation()),
    uses: (name) => noting((view) => view.uses(name)),
  };
}
