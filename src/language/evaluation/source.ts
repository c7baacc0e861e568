let made = 0;

/** One reading or one stated limit: what does not repeat from one of them to the next. */
export class Source {
  /** A number of its own; gradients hold their sources in this order. What a result shows never hangs on it. */
  readonly order = made++;
  readonly alone = new SourceList([this]);

  constructor(
    /** As its author wrote it. */
    readonly name: string,
    /** Limits are rectangular: nothing is known inside them, and nothing lies outside. A standard uncertainty is normal. */
    readonly stated: 'meter' | 'limits' | 'standard',
  ) {}
}

/** Sources by their order. Gradients that hang on the same ones share a list, so that most sums need make none. */
export class SourceList {
  /** Of each source, as loops want it. */
  readonly orders: readonly number[];
  /** True for sources that were made one right after the other, as the readings of one cell are. */
  private readonly isRow: boolean;

  constructor(readonly sources: readonly Source[]) {
    this.orders = sources.map(({ order }) => order);
    this.isRow = sources.length > 0 && sources[sources.length - 1].order - sources[0].order === sources.length - 1;
  }

  /** Where the source of this order stands; -1 where it is not in the list. */
  indexOf(order: number): number {
    const { orders } = this;
    if (this.isRow) {
      const at = order - orders[0];
      return at < orders.length ? Math.max(at, -1) : -1;
    }
    let low = 0;
    let high = orders.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (orders[middle] < order) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return orders[low] === order ? low : -1;
  }

  /** All sources of these lists. */
  static union(lists: readonly SourceList[]): SourceList {
    const sources = new Set(lists.flatMap((list) => list.sources));
    return new SourceList([...sources].sort((a, b) => a.order - b.order));
  }
}
