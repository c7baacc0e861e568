import type { LayoutContext } from 'pdfmake/js/LayoutBuilder.js';

/** Between a heading that was carried over and what stands below it, in points. */
const gap = 4;

/**
 * Keeps headings with what follows them: where a page ends behind a heading, the heading is moved over to the next page
 * together with the headings above it.
 */
export class CarriedHeadings {
  /** Where the headings stand that nothing stands below yet. */
  private last: { readonly page: number; readonly from: number; end?: number } | undefined;
  /** How much of the top of a page they take, by its index: each column that goes on there begins below. */
  private readonly taken = new Map<number, number>();

  constructor(private readonly context: LayoutContext) {
    const moveToNextPage = context.moveToNextPage.bind(context);
    context.moveToNextPage = (orientation) => {
      const moved = moveToNextPage(orientation);
      if (moved.newPageCreated) {
        this.carryFrom(moved.prevPage);
      }
      context.moveDown(this.heightOn(context.page));
      return moved;
    };
  }

  /** How much of the page's top is taken by what was carried there. */
  heightOn(page: number): number {
    return this.taken.get(page) ?? 0;
  }

  /** To be called before a node of the document's own level is laid out. */
  before(isHeading: boolean): void {
    if (isHeading) {
      const { page } = this.context;
      const from = this.last?.from ?? this.itemsOn(page).length;
      this.last = { page, from }; // Without an end: what the page gets now is of the heading, too.
    }
  }

  /** To be called after it is. */
  after(isHeading: boolean): void {
    const { page } = this.context;
    if (!isHeading) {
      this.last = undefined;
      return;
    }
    if (this.last?.page !== page) {
      this.last = { page, from: 0 };
    }
    this.last.end = this.itemsOn(page).length;
  }

  private carryFrom(page: number): void {
    const { last, context } = this;
    const items = this.itemsOn(page);
    this.last = undefined;
    if (
      last?.page !== page ||
      last.from === 0 ||
      items.length === last.from ||
      items.length !== (last.end ?? items.length)
    ) {
      return;
    }
    const carried = items.splice(last.from);
    const lines = carried.filter(({ type }) => type === 'line');
    const top = Math.min(...lines.map(({ item }) => item.y));
    const bottom = Math.max(...lines.map(({ item }) => item.y + (item.getHeight?.() ?? 0)));
    const down = context.y - top;
    for (const { item } of carried) {
      item.y += down;
      if (item.y1 !== undefined && item.y2 !== undefined) {
        item.y1 += down; // A bar along the heading.
        item.y2 += down;
      }
    }
    this.itemsOn(context.page).push(...carried);
    this.taken.set(context.page, bottom - top + gap);
  }

  private itemsOn(page: number) {
    return this.context.pages[page].items;
  }
}
