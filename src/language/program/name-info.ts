import type { Span } from '../../text';
import type { Cell, Name, Statement } from '../checking/binding';
import type { Type } from '../checking/type';
import type { NameInfo, StatementResult } from '../program';
import { Node, spanOf } from '../syntax/tree';
import { inOrder } from './definition-problems';
import type { Sheet } from './sheet';

/** What a name of the sheet stands for and where it is used; undefined for one that has no definition. */
export function nameOf(sheet: Sheet, text: string): NameInfo | undefined {
  const name = sheet.names.find(text);
  return name && name.definitions.length > 0 ? new Info(name, sheet) : undefined;
}

/** The same of each defined name. */
export function namesOf(sheet: Sheet): ReadonlyMap<string, NameInfo> {
  const all = new Map<string, NameInfo>();
  for (const name of sheet.names.defined()) {
    all.set(name.text, new Info(name, sheet));
  }
  return all;
}

/** A name defined twice is told by its first definition. Who uses it is looked up when asked. */
class Info implements NameInfo {
  private readonly first: Statement;
  private found: NameInfo['references'] | undefined;

  constructor(
    private readonly of: Name,
    private readonly sheet: Sheet,
  ) {
    [this.first] = of.ordered(inOrder);
  }

  get name(): string {
    return this.of.text;
  }

  get cell(): string {
    return this.first.cell.id;
  }

  get definition(): Span {
    return spanOf(this.first.cell.tree, this.first.nameNode);
  }

  get type(): Type {
    return this.of.type;
  }

  get statement(): number {
    return this.first.index;
  }

  get result(): StatementResult | undefined {
    return this.first.result;
  }

  get references(): NameInfo['references'] {
    this.found ??= this.find();
    return this.found;
  }

  private find(): NameInfo['references'] {
    const spans = new Map<Cell, Span[]>();
    for (const user of this.of.users) {
      // What solving made of a statement is behind what was written, and says nothing that is not written there.
      if (!user.cell.isAside && user.node < user.cell.written.count) {
        const found = spans.get(user.cell);
        if (found) {
          found.push(...usesIn(user, this.of));
        } else {
          spans.set(user.cell, usesIn(user, this.of));
        }
      }
    }
    const cells = spans.size > 1 ? this.sheet.cells.filter((cell) => spans.has(cell)) : spans.keys();
    return [...cells].flatMap((cell) =>
      spans
        .get(cell)!
        .sort((a, b) => a.start - b.start)
        .map((span) => ({ cell: cell.id, span })),
    );
  }
}

/** Where a statement uses a name. */
function usesIn(user: Statement, name: Name): Span[] {
  const { tree, meaning } = user.cell;
  const { kinds, firstChildren, nextSiblings } = tree;
  const defining = new Set(user.nameNodes);
  const spans: Span[] = [];
  const waiting = [user.node];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (kinds[node] === Node.Name && meaning.nameAt(node) === name && !defining.has(node)) {
      spans.push(spanOf(tree, node));
    }
    for (let child = firstChildren[node]; child >= 0; child = nextSiblings[child]) {
      waiting.push(child);
    }
  }
  return spans;
}
