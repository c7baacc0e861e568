import type PDFDocument from 'pdfmake/js/PDFDocument.js';
import type { PdfReference } from 'pdfmake/js/PDFDocument.js';
import { type FormulaDrawing, type Glyph, numbers } from './formula-drawing';

/** Draws formulas into a document that holds the outline of each glyph once and places it where it is needed. */
export class FormulaPainter {
  private readonly forms = new Map<Glyph, PdfReference>();

  constructor(private readonly document: PDFDocument) {}

  /** The left upper corner and the height are in points, from the top of the page. */
  paint({ operators, glyphs, box }: FormulaDrawing, x: number, y: number, height: number): void {
    const { document, forms } = this;
    for (const glyph of glyphs) {
      const form = forms.get(glyph) ?? this.formOf(glyph);
      forms.set(glyph, form);
      document.page.xobjects[glyph.name] = form;
    }
    const scale = height / box.height;
    const place = numbers([scale, 0, 0, scale, x - box.left * scale, y - box.top * scale]);
    document.addContent(`q 0 0 0 rg ${place} cm\n${operators}\nQ`);
  }

  finish(): void {
    for (const form of this.forms.values()) {
      form.end();
    }
  }

  /** A form (ISO 32000-1, 8.10): operators that are written once and drawn anywhere. The box holds any glyph. */
  private formOf({ outline }: Glyph): PdfReference {
    const { document } = this;
    const form = document.ref({ Type: 'XObject', Subtype: 'Form', FormType: 1, BBox: [-9000, -9000, 9000, 9000] });
    const { page } = document;
    document.page = Object.create(page, { write: { value: (operators: unknown) => form.write(operators) } });
    document.path(outline);
    document.addContent('f');
    document.page = page;
    return form;
  }
}
