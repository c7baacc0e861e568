import { children, Node, type Program, type SyntaxTree, textOf } from '../language';
import { calledName } from './argument-places';
import { usesIn } from './name-uses';

/** What only the whole sheet tells. Each answer holds for one state of the sheet. */
export interface SheetView {
  /** True when the sheet states the accuracy of a meter: it is no mere sketch. */
  statesMeters(): boolean;
  /** True when a field, a remark or the prose says that what was measured was isolated or proved dead. */
  recordsIsolation(): boolean;
  /** True when these words stand anywhere in its cells: where they do not, there is nothing to look for. */
  mentions(words: RegExp): boolean;
  /** True when it works something out, and does not only state values for other sheets to take. */
  worksOut(): boolean;
  /** True when the language finds no error in it: what is unused or missing is then meant so. */
  isSound(): boolean;
  /** True when the name is used in a cell, in live prose, or by another statement. */
  uses(name: string): boolean;
  /** True when one place alone uses the name. */
  usesOnce(name: string): boolean;
}

const isolationWords =
  /\bisolat|\bde-?energi[sz]|\bdead\b|\block(ed)? ?(it )?out\b|\blifted\b|\blift one\b|\bunplugged\b|\bdisconnected\b|\bconnected to nothing\b|\bnothing is connected\b|\bout of (the )?circuit\b/i;

/** The view of a program's cells and of the prose between them. */
export function sheetView(program: Program, cells: readonly string[], prose: readonly string[]): SheetView {
  const counted = once(() => usesIn(trees()));
  const uses = (name: string) => counted().get(name) ?? 0;
  const mentioned = new Map<RegExp, boolean>();
  const trees = () => cells.flatMap((cell) => program.tree(cell) ?? []);
  return {
    statesMeters: once(() => trees().some(statesMeter)),
    recordsIsolation: once(
      () =>
        prose.some((text) => isolationWords.test(text)) ||
        trees().some((tree) => tree.comments.some(saysIsolated) || statesIsolated(tree)),
    ),
    mentions(words) {
      let answer = mentioned.get(words);
      if (answer === undefined) {
        answer = trees().some((tree) => mentions(tree, words));
        mentioned.set(words, answer);
      }
      return answer;
    },
    worksOut: once(() => trees().some(worksOut)),
    isSound: once(() => cells.every((cell) => program.diagnostics(cell).every(({ severity }) => severity !== 'error'))),
    uses: (name) => uses(name) > 0 || isInLiveProse(prose, name),
    usesOnce: (name) => uses(name) === 1 && !isInLiveProse(prose, name),
  };
}

const saysIsolated = ({ text }: { readonly text: string }): boolean => isolationWords.test(text);

const statesMeter = ofTree((tree, node) => isCall(tree, node) && calledName(tree, node) === 'meter');

const worksOut = ofTree(
  (tree, node) =>
    (isCall(tree, node) && calledName(tree, node) !== 'meter') ||
    tree.kinds[node] === Node.Binary ||
    tree.kinds[node] === Node.Schedule,
);

/** `isolated: yes` somewhere in the sheet. */
const statesIsolated = ofTree((tree, node) => {
  if (tree.kinds[node] !== Node.Field && tree.kinds[node] !== Node.Argument) {
    return false;
  }
  const [name, value] = children(tree, node);
  return value !== undefined && tree.kinds[value] === Node.Yes && textOf(tree, name) === 'isolated';
});

const mentionsOf = new WeakMap<SyntaxTree, Map<RegExp, boolean>>();

function mentions(tree: SyntaxTree, words: RegExp): boolean {
  let answers = mentionsOf.get(tree);
  if (!answers) {
    answers = new Map();
    mentionsOf.set(tree, answers);
  }
  let answer = answers.get(words);
  if (answer === undefined) {
    answer = words.test(tree.text);
    answers.set(words, answer);
  }
  return answer;
}

const isCall = (tree: SyntaxTree, node: number): boolean =>
  tree.kinds[node] === Node.Call || tree.kinds[node] === Node.BlockCall;

/** Whether some node of a tree is such a one; found out once a tree. */
function ofTree(isSuch: (tree: SyntaxTree, node: number) => boolean): (tree: SyntaxTree) => boolean {
  const answers = new WeakMap<SyntaxTree, boolean>();
  return (tree) => {
    let answer = answers.get(tree);
    if (answer === undefined) {
      answer = false;
      for (let node = 0; node < tree.count && !answer; node++) {
        answer = isSuch(tree, node);
      }
      answers.set(tree, answer);
    }
    return answer;
  };
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
    mentions: (words) => noting((view) => view.mentions(words)),
    worksOut: () => noting((view) => view.worksOut()),
    isSound: () => noting((view) => view.isSound()),
    uses: (name) => noting((view) => view.uses(name)),
    usesOnce: (name) => noting((view) => view.usesOnce(name)),
  };
}
