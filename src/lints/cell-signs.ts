import { children, Node, type SyntaxTree, textOf } from '../language';
import { calledName } from './argument-places';

const isolationWords =
  /\bisolat|\bde-?energi[sz]|\bdead\b|\block(ed)? ?(it )?out\b|\blifted\b|\blift one\b|\bunplugged\b|\bdisconnected\b|\bconnected to nothing\b|\bnothing is connected\b|\bout of (the )?circuit\b/i;

/** True for prose or a remark that says that what was measured was isolated or proved dead. */
export const saysIsolated = (text: string): boolean => isolationWords.test(text);

/** True for a cell that states the accuracy of a meter. */
export const statesMeter = (tree: SyntaxTree): boolean =>
  hasNode(tree, (node) => isCall(tree, node) && calledName(tree, node) === 'meter');

/** True for a cell that works something out. */
export const worksOut = (tree: SyntaxTree): boolean =>
  hasNode(
    tree,
    (node) =>
      tree.kinds[node] === Node.Binary ||
      tree.kinds[node] === Node.Schedule ||
      (isCall(tree, node) && calledName(tree, node) !== 'meter'),
  );

/** True for a cell with `isolated: yes` or a remark that says so. */
export const recordsIsolation = (tree: SyntaxTree): boolean =>
  tree.comments.some(({ text }) => saysIsolated(text)) || hasNode(tree, (node) => statesIsolated(tree, node));

function statesIsolated(tree: SyntaxTree, node: number): boolean {
  if (tree.kinds[node] !== Node.Field && tree.kinds[node] !== Node.Argument) {
    return false;
  }
  const [name, value] = children(tree, node);
  return value !== undefined && tree.kinds[value] === Node.Yes && textOf(tree, name) === 'isolated';
}

const isCall = (tree: SyntaxTree, node: number): boolean =>
  tree.kinds[node] === Node.Call || tree.kinds[node] === Node.BlockCall;

function hasNode(tree: SyntaxTree, isSuch: (node: number) => boolean): boolean {
  for (let node = 0; node < tree.count; node++) {
    if (isSuch(node)) {
      return true;
    }
  }
  return false;
}

/** An inline code span that begins with an equals sign is evaluated where the sheet is shown. */
const liveSpan = /`=([^`]*)`/g;

/** The words in a prose cell's live values: the names that it uses are among them. */
export function liveWords(text: string): ReadonlySet<string> {
  if (!text.includes('`=')) {
    return noWords;
  }
  return new Set([...text.matchAll(liveSpan)].flatMap(([, expression]) => expression.split(/[^\p{L}\p{N}_]+/u)));
}

const noWords: ReadonlySet<string> = new Set();
