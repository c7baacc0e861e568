import type { LayoutPage } from 'pdfmake/js/LayoutBuilder.js';
import type PDFDocument from 'pdfmake/js/PDFDocument.js';
import type { ReportProgress } from '../write-options';
import { loadLibrary } from './library';
import { type DocumentNode, pageLayout } from './page-layout';
import { PageRenderer } from './page-renderer';
import { embed } from './picture-files';
import { pictureSizes } from './picture-sizes';

/** What is printed, in the library’s terms. */
export interface Definition {
  readonly paper: string;
  /** Left, top, right, bottom, in points. */
  readonly margins: readonly [number, number, number, number];
  readonly information: Readonly<Record<string, unknown>>;
  readonly fonts: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly pictures: Readonly<Record<string, string>>;
  readonly styles: object;
  readonly defaultStyle: object;
  readonly footer: (page: number, pages: number) => object;
  readonly content: DocumentNode;
}

/** What the layout takes of the whole time; the rest goes into drawing. */
const layoutShare = 0.75;

/** A document that is laid out and not drawn yet. */
interface LaidOut {
  readonly document: PDFDocument;
  readonly pages: readonly LayoutPage[];
  /** All bytes, once the document is ended. */
  readonly whole: Promise<Uint8Array>;
}

/**
 * Lays out a document. `done` tells how much of the content is laid out, from 0 to 1. No file and no address is ever
 * opened: fonts and pictures are handed in.
 */
export async function layOut(
  definition: Definition,
  files: ReadonlyMap<string, Uint8Array>,
  done: () => number = () => 0,
  progress: ReportProgress = () => undefined,
): Promise<LaidOut> {
  const { PDFDocument, LayoutBuilder, SVGMeasure, tableLayouts, papers } = await loadLibrary();
  const [width, height] = papers[definition.paper];
  const document = new PDFDocument(
    definition.fonts,
    definition.pictures,
    {},
    {},
    {
      size: [width, height],
      pdfVersion: '1.7',
      tagged: true,
      displayTitle: true,
      lang: 'en',
      compress: true,
      fontLayoutCache: true,
      autoFirstPage: false,
      info: definition.information,
      font: null,
    },
    { existsSync: (name) => files.has(name), readFileSync: (name) => files.get(name)! },
    () => false,
  );
  for (const [name, bytes] of files) {
    document.registerFont(name, bytes); // By which a picture finds the font of its letters.
  }
  const whole = collected(document);
  await embed(document, Object.keys(definition.pictures));
  const Layout = pageLayout(LayoutBuilder);
  const { margins, content, styles, defaultStyle, footer } = definition;
  const [left, top, right, bottom] = margins;
  const layout = new Layout(
    { width, height, orientation: 'portrait' },
    { left, top, right, bottom },
    pictureSizes(new SVGMeasure()),
  );
  layout.registerTableLayouts(tableLayouts);
  const tell = (page: number) => {
    progress({ doing: `Laying out page ${page}`, share: layoutShare * done() });
  };
  const pages = layout.layoutDocument(content, document, styles, defaultStyle, tell, undefined, footer);
  return { document, pages, whole };
}

/** Lays out and draws a document. */
export async function print(
  definition: Definition,
  files: ReadonlyMap<string, Uint8Array>,
  done: () => number,
  progress: ReportProgress = () => undefined,
): Promise<Uint8Array> {
  const { document, pages, whole } = await layOut(definition, files, done, progress);
  const { Renderer } = await loadLibrary();
  const renderer = new PageRenderer(document, new Renderer(document));
  for (const [i, page] of pages.entries()) {
    renderer.draw(page);
    const share = layoutShare + ((1 - layoutShare) * (i + 1)) / pages.length;
    progress({ doing: `Drawing page ${i + 1} of ${pages.length}`, share });
  }
  renderer.finish(definition.content.tag);
  document.end();
  return whole;
}

/** All that the document writes, when it has ended. */
function collected(document: PDFDocument): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    document.on('data', (chunk) => chunks.push(chunk));
    document.on('error', reject);
    document.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((all, { length }) => all + length, 0));
      let at = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, at);
        at += chunk.length;
      }
      resolve(bytes);
    });
  });
}
