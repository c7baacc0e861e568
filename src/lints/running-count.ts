/**
 * How often something is found in the parts of a whole: counted when it is first asked for, and kept with each part that
 * comes or goes from then on, so that an answer costs no look at the parts that stay.
 */
export class RunningCount<Part> {
  private counts: Map<string, number> | undefined;

  constructor(
    private readonly parts: () => Iterable<Part>,
    /** What is found in a part, each thing with how often. */
    private readonly foundIn: (part: Part) => Iterable<readonly [string, number]>,
  ) {}

  of(thing: string): number {
    if (!this.counts) {
      this.counts = new Map();
      for (const part of this.parts()) {
        this.add(part);
      }
    }
    return this.counts.get(thing) ?? 0;
  }

  /** To be told of a part that came; returns what is found in it, nothing before something was asked for. */
  add(part: Part): Iterable<string> {
    return this.change(part, 1);
  }

  /** To be told of a part that went. */
  remove(part: Part): Iterable<string> {
    return this.change(part, -1);
  }

  private change(part: Part, sign: number): Iterable<string> {
    const things: string[] = [];
    if (this.counts) {
      for (const [thing, count] of this.foundIn(part)) {
        const now = (this.counts.get(thing) ?? 0) + sign * count;
        things.push(thing);
        if (now === 0) {
          this.counts.delete(thing);
        } else {
          this.counts.set(thing, now);
        }
      }
    }
    return things;
  }
}
