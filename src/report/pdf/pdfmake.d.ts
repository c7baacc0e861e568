/**
 * As much of the library as is used here; it ships no types. Its parts are taken one by one and put together in
 * `press.ts`, because the whole lays out and draws everything at once, silently, and tags nothing.
 */
declare module 'pdfmake/js/PDFDocument.js' {
  /** A document of the library below, pdfkit, that finds fonts and pictures by name. */
  export default class PDFDocument {
    constructor(
      fonts: object,
      images: object,
      patterns: object,
      attachments: object,
      options: object,
      files: { existsSync(name: string): boolean; readFileSync(name: string): Uint8Array },
      mayRead: (path: string) => boolean,
    );
    page: PdfPage;
    /** What is still to be unpacked stands in `imgData`. */
    provideImage(name: string): { readonly imgData?: unknown };
    registerFont(name: string, font: Uint8Array): void;
    addPage(options: object): void;
    addContent(operators: string): void;
    path(outline: string): void;
    ref(dictionary: object): PdfReference;
    struct(type: string, options: object): PdfElement;
    addStructure(element: PdfElement): void;
    markStructureContent(type: string): object;
    markContent(type: string, options?: object): void;
    endMarkedContent(): void;
    on(event: 'data', tell: (chunk: Uint8Array) => void): void;
    on(event: 'end', tell: () => void): void;
    on(event: 'error', tell: (error: Error) => void): void;
    end(): void;
  }
  export interface PdfPage {
    readonly xobjects: Record<string, PdfReference>;
    readonly height: number;
    write(operators: unknown): void;
  }
  export interface PdfReference {
    write(operators: unknown): void;
    end(): void;
  }
  export interface PdfElement {
    add(child: object): void;
    end(): void;
  }
}
declare module 'pdfmake/js/LayoutBuilder.js' {
  import type PDFDocument from 'pdfmake/js/PDFDocument.js';
  export default class LayoutBuilder {
    constructor(
      size: object,
      margins: object,
      pictures: { measureSVG(svg: unknown): Size; writeDimensions(svg: unknown, size: Size): unknown },
    );
    readonly writer: {
      context(): LayoutContext;
      addVector(vector: object, inPageX: boolean, inPageY: boolean, index: undefined, page: number): void;
    };
    readonly docMeasure: { measureBlock(node: LayoutNode): LayoutNode };
    readonly docPreprocessor: { preprocessBlock(node: object): LayoutNode };
    linearNodeList: unknown[];
    registerTableLayouts(layouts: object): void;
    layoutDocument(
      content: object,
      document: PDFDocument,
      styles: object,
      defaultStyle: object,
      background: unknown,
      header: unknown,
      footer: unknown,
    ): LayoutPage[];
    processNode(node: LayoutNode, aligned?: boolean): void;
    processVerticalContainer(node: LayoutNode): void;
    processSVG(node: LayoutNode): void;
    processImage(node: LayoutNode): void;
    buildNextLine(node: LayoutNode): LayoutLine | null;
  }
  export interface Size {
    readonly width: number;
    readonly height: number;
  }
  export interface LayoutNode {
    readonly [key: string]: unknown;
    readonly _margin?: readonly [left: number, top: number, right: number, bottom: number] | null;
  }
  export interface LayoutLine {
    readonly inlines: readonly object[];
    [key: string]: unknown;
  }
  export interface LayoutContext {
    readonly x: number;
    readonly y: number;
    page: number;
    readonly pages: LayoutPage[];
    readonly pageMargins: { readonly top: number; readonly bottom: number };
    moveDown(height: number): void;
    moveToNextPage(orientation?: string): { readonly newPageCreated: boolean; readonly prevPage: number };
  }
  export interface LayoutPage {
    items: PageItem[];
    readonly pageSize: Size;
  }
  export interface PageItem {
    readonly type: string;
    readonly item: {
      y: number;
      readonly x: number;
      y1?: number;
      y2?: number;
      readonly [key: string]: unknown;
      readonly _height?: number;
      getHeight?(): number;
    };
  }
}
declare module 'pdfmake/js/Renderer.js' {
  import type { PageItem } from 'pdfmake/js/LayoutBuilder.js';
  import type PDFDocument from 'pdfmake/js/PDFDocument.js';
  export default class Renderer {
    constructor(document: PDFDocument);
    renderVector(item: PageItem['item']): void;
    renderLine(item: PageItem['item'], x: number, y: number): void;
    renderImage(item: PageItem['item']): void;
    renderSVG(item: PageItem['item']): void;
  }
}
declare module 'pdfmake/js/SVGMeasure.js' {
  import type { Size } from 'pdfmake/js/LayoutBuilder.js';
  export default class SVGMeasure {
    measureSVG(svg: string): Size;
    writeDimensions(svg: string, size: Size): string;
  }
}
declare module 'pdfmake/js/tableLayouts.js' {
  export const tableLayouts: object;
}
declare module 'pdfmake/js/standardPageSizes.js' {
  const sizes: Readonly<Record<string, readonly [width: number, height: number]>>;
  export default sizes;
}
declare module 'mathjax/*';
declare module '@mathjax/mathjax-newcm-font/svg.js';
