import type { ProblemCode } from '../../text';
import { type SyntaxTree, textOf } from '../syntax/tree';
import type { Equation, Unknown } from './plan';

/** What keeps equations from being solved, at a node of the sheet. */
export interface Report {
  readonly code: ProblemCode;
  readonly at: number;
  readonly message: string;
}

const count = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`;

const named = (unknowns: readonly Unknown[]): string => {
  const names = unknowns.map(({ name }) => `\`${name}\``);
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
};

const quoted = (tree: SyntaxTree, node: number): string => `\`${textOf(tree, node).replace(/\s+/g, ' ')}\``;

/** What can be said before anything is known of the quantities. */
export const reports = {
  inNoEquation: ({ node, name }: Unknown): Report => ({
    code: 'unknown-in-no-equation',
    at: node,
    message: `\`${name}\` stands in none of the equations below, so nothing says what it is. Add an equation that holds it, or take it out.`,
  }),

  tooFew: (unknowns: readonly Unknown[], equations: number): Report => ({
    code: 'too-few-equations',
    at: unknowns[equations].node,
    message: `${count(unknowns.length, 'unknown')} and ${count(equations, 'equation')}: each unknown needs an equation of its own. Add an equation, or give one of the unknowns a value in a line of its own.`,
  }),

  tooMany: (unknowns: readonly Unknown[], equations: readonly Equation[]): Report => ({
    code: 'too-many-equations',
    at: equations[unknowns.length].node,
    message: `${count(unknowns.length, 'unknown')} and ${count(equations.length, 'equation')}: they settle more than is asked. Name another unknown behind \`solve\`, or write this one as a \`check\` below.`,
  }),

  tooManyUnknowns: (unknowns: readonly Unknown[], most: number): Report => ({
    code: 'too-many-unknowns',
    at: unknowns[most].node,
    message: `${unknowns.length} unknowns are more than one \`solve\` takes (${most}). Part them into several, each with its own equations.`,
  }),

  repeats: (tree: SyntaxTree, { node }: Equation): Report => ({
    code: 'too-few-equations',
    at: node,
    message: `${quoted(tree, node)} says nothing about the unknowns that the other equations do not say: put together, they cancel out. Put an independent equation in its place.`,
  }),

  contradicts: (tree: SyntaxTree, { node }: Equation): Report => ({
    code: 'no-solution',
    at: node,
    message: `No values satisfy ${quoted(tree, node)} along with the other equations: put together, the unknowns cancel out, and what is left is not equal. Check the signs and terms.`,
  }),

  notAlone: (tree: SyntaxTree, { node }: Equation, { node: at, name }: Unknown): Report => ({
    code: 'needs-bounds',
    at,
    message: `\`${name}\` cannot be brought to stand alone in ${quoted(tree, node)}. Say between which values to search for it, such as \`${name} in low .. high\`.`,
  }),

  noneLeft: ({ node, name }: Unknown): Report => ({
    code: 'too-few-equations',
    at: node,
    message: `No equation is left to find \`${name}\` from: those that hold it are needed for the other unknowns. Add an independent equation that holds it.`,
  }),

  tangled: (tree: SyntaxTree, unknowns: readonly Unknown[], { node }: Equation): Report => ({
    code: 'tangled-unknowns',
    at: node,
    message: `${named(unknowns)} hang on each other, and no equation can be turned round for one of them, as in ${quoted(tree, node)}. Give one of them a value, or rewrite an equation so that one stands alone on one side.`,
  }),
};
