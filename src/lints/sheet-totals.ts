import type { SyntaxTree } from '../language';
import { liveWords, recordsIsolation, saysIsolated, statesMeter, worksOut } from './cell-signs';
import { usesIn } from './name-uses';
import { RunningCount } from './running-count';
import type { SheetView } from './sheet-view';

/** What the cells of a sheet come to together, kept from edit to edit: an answer looks at no cell that stays as it is. */
export class SheetTotals implements SheetView {
  private readonly trees = new Map<string, SyntaxTree>();
  private readonly prose = new Map<string, string>();
  private readonly faulty = new Set<string>();
  private readonly cellsWith = (isSuch: (tree: SyntaxTree) => boolean) => new RunningCount(this.allTrees, once(isSuch));
  private readonly allTrees = () => this.trees.values();
  private readonly allProse = () => this.prose.values();

  private readonly meters = this.cellsWith(statesMeter);
  private readonly isolations = this.cellsWith(recordsIsolation);
  private readonly workings = this.cellsWith(worksOut);
  private readonly mentioned = new Map<RegExp, RunningCount<SyntaxTree>>();
  private readonly used = new RunningCount(this.allTrees, usesIn);
  private readonly isolationsInProse = new RunningCount(this.allProse, once(saysIsolated));
  private readonly usedInProse = new RunningCount(this.allProse, eachWord);
  private touched = new Set<string>();

  /** Takes a calculation cell as it is now, or none in its place; true when it is another one than before. */
  takeCell(id: string, tree: SyntaxTree | undefined, hasError: boolean): boolean {
    if (tree && hasError) {
      this.faulty.add(id);
    } else {
      this.faulty.delete(id);
    }
    const before = this.trees.get(id);
    if (before === tree) {
      return false;
    }
    const counts = [this.meters, this.isolations, this.workings, ...this.mentioned.values()];
    if (before) {
      this.trees.delete(id);
      counts.forEach((count) => void count.remove(before));
      this.touch(this.used.remove(before));
    }
    if (tree) {
      this.trees.set(id, tree);
      counts.forEach((count) => void count.add(tree));
      this.touch(this.used.add(tree));
    }
    return true;
  }

  /** Takes a prose cell's text as it is now, or none in its place. */
  takeProse(id: string, text: string | undefined): void {
    const before = this.prose.get(id);
    if (before !== undefined) {
      this.prose.delete(id);
      this.isolationsInProse.remove(before);
      this.touch(this.usedInProse.remove(before));
    }
    if (text !== undefined) {
      this.prose.set(id, text);
      this.isolationsInProse.add(text);
      this.touch(this.usedInProse.add(text));
    }
  }

  /** The names of which there are other uses than when this was last asked. */
  takeTouched(): ReadonlySet<string> {
    const { touched } = this;
    this.touched = new Set();
    return touched;
  }

  statesMeters(): boolean {
    return this.meters.of(such) > 0;
  }

  recordsIsolation(): boolean {
    return this.isolationsInProse.of(such) > 0 || this.isolations.of(such) > 0;
  }

  mentions(words: RegExp): boolean {
    let count = this.mentioned.get(words);
    if (!count) {
      count = this.cellsWith(({ text }) => words.test(text));
      this.mentioned.set(words, count);
    }
    return count.of(such) > 0;
  }

  worksOut(): boolean {
    return this.workings.of(such) > 0;
  }

  isSound(): boolean {
    return this.faulty.size === 0;
  }

  uses(name: string): boolean {
    return this.used.of(name) > 0 || this.usedInProse.of(name) > 0;
  }

  usesOnce(name: string): boolean {
    return this.used.of(name) === 1 && this.usedInProse.of(name) === 0;
  }

  private touch(names: Iterable<string>): void {
    for (const name of names) {
      this.touched.add(name);
    }
  }
}

/** Where only parts that are such are counted, this is what is counted. */
const such = '';

const foundOnce: readonly (readonly [string, number])[] = [[such, 1]];
const nothing: readonly (readonly [string, number])[] = [];

const once =
  <Part>(isSuch: (part: Part) => boolean) =>
  (part: Part) =>
    isSuch(part) ? foundOnce : nothing;

const eachWord = (text: string) => [...liveWords(text)].map((word) => [word, 1] as const);
