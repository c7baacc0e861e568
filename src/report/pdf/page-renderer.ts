import type { LayoutPage, PageItem } from 'pdfmake/js/LayoutBuilder.js';
import type PDFDocument from 'pdfmake/js/PDFDocument.js';
import type Renderer from 'pdfmake/js/Renderer.js';
import { FormulaPainter } from './formula-painter';
import { isFormulaDrawing } from './picture-sizes';
import { Tag } from './tag';

/**
 * Draws laid-out pages by the library’s means, formulas by its own, and tells what each piece is: content of a part of
 * the document, or mere furniture (rules, shades, page numbers, column heads said again).
 */
export class PageRenderer {
  private readonly formulas: FormulaPainter;
  private readonly drawn = new WeakSet<object>();
  private open: Tag | 'furniture' | undefined;

  constructor(
    private readonly document: PDFDocument,
    private readonly library: Renderer,
  ) {
    this.formulas = new FormulaPainter(document);
  }

  /** What was drawn of a page is let go. */
  draw(page: LayoutPage): void {
    this.document.addPage({ size: [page.pageSize.width, page.pageSize.height] });
    for (const item of page.items) {
      this.mark(this.ownerOf(item));
      this.drawItem(item);
    }
    this.mark(undefined);
    page.items = [];
  }

  /** To be called when all pages are drawn. */
  finish(root: Tag): void {
    this.formulas.finish();
    const element = this.elementOf(root);
    this.document.addStructure(element);
    element.end();
  }

  private drawItem({ type, item }: PageItem): void {
    if (type === 'line') {
      this.library.renderLine(item, item.x, item.y);
    } else if (type === 'vector') {
      this.library.renderVector(item);
    } else if (type === 'image') {
      this.library.renderImage(item);
    } else if (isFormulaDrawing(item.svg)) {
      this.formulas.paint(item.svg, item.x, item.y, item._height ?? 0);
    } else {
      this.library.renderSVG(item);
    }
  }

  /** The column heads of a table that runs over pages are the same lines each time: they are read out once. */
  private ownerOf({ item }: PageItem): Tag | 'furniture' {
    const { owner, inlines } = item;
    if (!(owner instanceof Tag) || (typeof inlines === 'object' && inlines !== null && this.drawn.has(inlines))) {
      return 'furniture';
    }
    if (typeof inlines === 'object' && inlines !== null) {
      this.drawn.add(inlines);
    }
    return owner;
  }

  /** Ends the piece before and begins another, unless they are of one part. */
  private mark(next: Tag | 'furniture' | undefined): void {
    if (next === this.open) {
      return;
    }
    if (this.open) {
      this.document.endMarkedContent();
    }
    this.open = next;
    if (next === 'furniture') {
      this.document.markContent('Artifact', { type: 'Layout' });
    } else if (next) {
      next.add(this.document.markStructureContent(next.type));
    }
  }

  private elementOf({ type, options: { alt, scope }, children }: Tag) {
    const element = this.document.struct(type, { ...(alt && { alt }), ...(scope && { scope }) });
    for (const child of children) {
      element.add(child instanceof Tag ? this.elementOf(child) : child);
    }
    return element;
  }
}
