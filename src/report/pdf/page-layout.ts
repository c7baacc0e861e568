import type LayoutBuilder from 'pdfmake/js/LayoutBuilder.js';
import type { LayoutLine, LayoutNode, LayoutPage } from 'pdfmake/js/LayoutBuilder.js';
import { CarriedHeadings } from './carried-headings';
import { Tag } from './tag';

const barWidth = 2;
const barColour = '#b5b5b5';

/** What the layout needs besides the nodes that its base knows. */
export interface DocumentNode {
  /** An empty stack is what the base sees; the pieces take its place. */
  readonly stack: readonly [];
  /** Laid out one after the other, and let go of before the next is made. */
  readonly pieces: Iterable<object>;
  readonly tag: Tag;
}

/**
 * The library's layout of pages, taught to take a long document piece by piece, to keep headings with what follows them,
 * to draw a bar along a node (`bar: true`), and to remember which part of the document each line belongs to (`tag`).
 */
export const pageLayout = (Base: typeof LayoutBuilder) =>
  class PageLayout extends Base {
    #owner: Tag | undefined;
    #headings: CarriedHeadings | undefined;

    override processVerticalContainer(node: LayoutNode): void {
      const { pieces } = node as unknown as Partial<DocumentNode>;
      if (!pieces) {
        super.processVerticalContainer(node);
        return;
      }
      const headings = new CarriedHeadings(this.writer.context());
      this.#headings = headings;
      for (const piece of pieces) {
        const measured = this.#measured(piece);
        const isHeading = measured.headlineLevel !== undefined;
        headings.before(isHeading);
        this.processNode(measured);
        headings.after(isHeading);
        this.linearNodeList = [];
      }
      this.#headings = undefined;
      this.#dropEmptyEnd();
    }

    /** A picture that turns out to be no picture gives way to what is said instead. */
    #measured(piece: object): LayoutNode {
      const measure = (node: object) => this.docMeasure.measureBlock(this.docPreprocessor.preprocessBlock(node));
      const { instead } = piece as { readonly instead?: object };
      if (!instead) {
        return measure(piece);
      }
      try {
        return measure(piece);
      } catch {
        return measure(instead);
      }
    }

    /** Where the space below what comes last does not fit, the base begins another page for it. */
    #dropEmptyEnd(): void {
      const context = this.writer.context();
      while (context.pages.length > 1 && context.pages[context.pages.length - 1].items.length === 0) {
        context.pages.pop();
        context.page = context.pages.length - 1;
      }
    }

    override processNode(node: LayoutNode, aligned?: boolean): void {
      const outer = this.#owner;
      this.#owner = node.tag instanceof Tag ? node.tag.below(outer) : outer;
      if (node.bar) {
        this.#barred(node, () => super.processNode(node, aligned));
      } else {
        super.processNode(node, aligned);
      }
      this.#owner = outer;
    }

    override buildNextLine(node: LayoutNode): LayoutLine | null {
      const line = super.buildNextLine(node);
      if (line) {
        line.owner = this.#owner;
      }
      return line;
    }

    override processSVG(node: LayoutNode): void {
      super.processSVG(Object.assign(node, { owner: this.#owner }));
    }

    override processImage(node: LayoutNode): void {
      super.processImage(Object.assign(node, { owner: this.#owner }));
    }

    /** Lays a node out and draws a bar along its left, on each page that it runs over. */
    #barred(node: LayoutNode, layOut: () => void): void {
      const context = this.writer.context();
      const { page: first, y } = context;
      const x = context.x + barWidth / 2;
      const [, above = 0, , below = 0] = node._margin ?? [];
      const before = context.pages[first].items.length;
      layOut();
      const stayed = context.pages[first].items.length > before;
      for (let page = stayed ? first : first + 1; page <= context.page; page++) {
        const top = page === first ? y + above : context.pageMargins.top + (this.#headings?.heightOn(page) ?? 0);
        const bottom = page === context.page ? context.y - below : lowest(context.pages[page]);
        if (bottom > top) {
          const line = { type: 'line', x1: x, x2: x, y1: top, y2: bottom, lineWidth: barWidth, lineColor: barColour };
          this.writer.addVector(line, true, true, undefined, page);
        }
      }
    }
  };

/** Where the lowest line or picture of a page ends. */
const lowest = ({ items }: LayoutPage): number =>
  items.reduce((y, { item }) => Math.max(y, (item.y ?? 0) + (item.getHeight?.() ?? item._height ?? 0)), 0);
