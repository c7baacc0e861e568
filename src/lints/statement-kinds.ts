import { Node, type SyntaxTree } from '../language';
import type { Lint } from './contract';

/** Where calls of library functions stand. */
export const callNodes: readonly Node[] = [Node.Call, Node.BlockCall, Node.Schedule];

/** A set of syntax kinds as bits: kinds 0 to 31, and from 32 on. */
export interface Kinds {
  low: number;
  high: number;
}

/** The kinds of syntax that a statement holds. Most statements of a long sheet hold little, and few lints look at them. */
export function kindsIn(tree: SyntaxTree, node: number): Kinds {
  const kinds = { low: 0, high: 0 };
  collect(tree, node, kinds);
  return kinds;
}

/** A set of kinds. */
export function kindsOf(nodes: readonly Node[]): Kinds {
  const kinds = { low: 0, high: 0 };
  for (const node of nodes) {
    add(kinds, node);
  }
  return kinds;
}

function collect(tree: SyntaxTree, node: number, kinds: Kinds): void {
  add(kinds, tree.kinds[node]);
  for (let child = tree.firstChildren[node]; child >= 0; child = tree.nextSiblings[child]) {
    collect(tree, child, kinds);
  }
}

function add(kinds: Kinds, kind: number): void {
  if (kind < 32) {
    kinds.low |= 1 << kind;
  } else {
    kinds.high |= 1 << (kind - 32);
  }
}

/** Tells whether a statement holds one of these kinds. */
export function holdsOneOf(nodes: readonly Node[]): (kinds: Kinds) => boolean {
  const wanted = kindsOf(nodes);
  return ({ low, high }) => (low & wanted.low) !== 0 || (high & wanted.high) !== 0;
}

/** A lint that looks at statements. */
type Looking = { readonly rule: Lint; readonly check: NonNullable<Lint['check']> };

/** The lints by what they look at. */
export class RulesByKinds {
  private readonly looking: readonly (Looking & { readonly wants: (kinds: Kinds) => boolean })[];
  /** Few sets of kinds occur in a sheet, so what is found for one is kept. */
  private readonly known = new Map<number, Map<number, readonly Looking[]>>();

  constructor(rules: readonly Lint[]) {
    this.looking = rules.flatMap((rule) =>
      rule.check ? [{ rule, check: rule.check, wants: holdsOneOf(rule.looksAt) }] : [],
    );
  }

  /** The lints, in their order, that have anything to look at in a statement that holds these kinds. */
  thatLookAt(kinds: Kinds): readonly Looking[] {
    let byHigh = this.known.get(kinds.low);
    if (!byHigh) {
      byHigh = new Map();
      this.known.set(kinds.low, byHigh);
    }
    let found = byHigh.get(kinds.high);
    if (!found) {
      found = this.looking.filter(({ wants }) => wants(kinds));
      byHigh.set(kinds.high, found);
    }
    return found;
  }
}
