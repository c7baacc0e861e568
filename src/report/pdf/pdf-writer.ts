import type { Part, ReportDocument } from '../document';
import { documentDate } from '../document-date';
import type { WriteOptions } from '../write-options';
import { type Content, ContentMaker, colours } from './content';
import { Typesetter } from './typesetter';

/** Widths in points. */
const papers = { letter: { size: 'LETTER', width: 612 }, A4: { size: 'A4', width: 595.28 } };
const margins = [48, 48, 48, 54];
const textSize = 9.5;
/** The height of an x in the maths font is 0.442 of its size; formulas are set a little larger than text. */
const pointsPerEx = textSize * 0.442 * 1.06;

const fonts = {
  Text: {
    normal: 'DejaVuSansCondensed.ttf',
    bold: 'DejaVuSansCondensed-Bold.ttf',
    italics: 'DejaVuSansCondensed-Oblique.ttf',
    bolditalics: 'DejaVuSansCondensed-Bold.ttf',
  },
  Mono: {
    normal: 'DejaVuSansMono.ttf',
    bold: 'DejaVuSansMono.ttf',
    italics: 'DejaVuSansMono.ttf',
    bolditalics: 'DejaVuSansMono.ttf',
  },
};

/** The files of the fonts, which the host reads: they hold every sign that a report uses. */
export const fontFiles: readonly string[] = [...new Set(Object.values(fonts).flatMap((faces) => Object.values(faces)))];

/** The report as a PDF: bookmarks, page x of y, maths as vectors, fonts embedded. */
export async function writePdf(document: ReportDocument, { font, progress }: WriteOptions): Promise<Uint8Array> {
  const { default: pdfmake } = await import('pdfmake');
  for (const name of fontFiles.filter((file) => !pdfmake.virtualfs.existsSync(file))) {
    pdfmake.virtualfs.writeFileSync(name, await font(name));
  }
  pdfmake.setFonts(fonts);
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy(() => false);
  progress?.('Setting formulas');
  const definition = definitionOf(document, await loadTypesetter());
  progress?.('Laying out pages');
  pdfmake.setProgressCallback(progress && inTenths((share) => progress(`Writing pages, ${share} %`)));
  return new Uint8Array(await pdfmake.createPdf(definition).getBuffer());
}

/** Tells a share in whole tens of percent, each once. */
function inTenths(tell: (percent: number) => void): (share: number) => void {
  let told = 0;
  return (share) => {
    const percent = Math.floor(share * 10) * 10;
    if (percent > told) {
      told = percent;
      tell(percent);
    }
  };
}

/** Formulas in the size that goes with the text. */
export const loadTypesetter = (): Promise<Typesetter> => Typesetter.load(pointsPerEx);

/** What the library is told to lay out. */
export function definitionOf(document: ReportDocument, typesetter: Typesetter): Content {
  const { kind, title, fields, banners, sections, revision, date, author } = document;
  const paper = papers[document.paper];
  const width = paper.width - margins[0] - margins[2];
  const maker = new ContentMaker(typesetter, width);
  const when = documentDate(date);
  const foot = [title, revision && `revision ${revision}`, date].filter(Boolean).join(' · ');
  return {
    pageSize: paper.size,
    pageMargins: margins,
    language: 'en',
    displayTitle: true,
    version: '1.7',
    info: {
      title: `${title} – ${kind}`,
      subject: kind,
      creator: 'Kilofoot',
      creationDate: when,
      modDate: when,
      ...(author && { author }),
    },
    defaultStyle: { font: 'Text', fontSize: textSize, lineHeight: 1.12 },
    styles: {
      h1: { fontSize: 17, bold: true, lineHeight: 1.05 },
      h2: { fontSize: 12.5, bold: true, margin: [0, 12, 0, 4] },
      h3: { fontSize: 10.8, bold: true, margin: [0, 8, 0, 3] },
      h4: { fontSize: textSize, bold: true, margin: [0, 6, 0, 2] },
      h5: { fontSize: textSize, italics: true, margin: [0, 5, 0, 2] },
    },
    ...(isShort(document) && { pageBreakBefore: isHeadingAtPageEnd }),
    footer: (current: number, count: number): Content => ({
      columns: [
        { text: foot, width: '*', noWrap: false },
        { text: `page ${current} of ${count}`, width: 90, alignment: 'right' },
      ],
      fontSize: 8,
      color: colours.faint,
      margin: [margins[0], 18, margins[2], 0],
    }),
    content: [
      { text: title, style: 'h1', outline: true, outlineText: title, outlineId: 'title', outlineExpanded: true },
      { text: kind, color: colours.faint, margin: [0, 0, 0, 8] },
      titleBlock(fields),
      ...banners.map((banner) => maker.banner(banner)),
      ...sections.flatMap(({ title: name, parts }) => maker.section(sectionHeading(name), parts)),
    ],
  };
}

const sectionHeading = (text: string): Content => ({
  text,
  style: 'h2',
  headlineLevel: 2,
  outline: true,
  outlineText: text,
  outlineId: 'section',
  outlineParentId: 'title',
});

const titleBlock = (fields: ReportDocument['fields']): Content => ({
  table: { widths: [90, 300], body: fields.map(([label, text]) => [{ text: label, bold: true }, text]) },
  layout: {
    hLineWidth: () => 0.5,
    vLineWidth: () => 0.5,
    hLineColor: () => colours.line,
    vLineColor: () => colours.line,
  },
  margin: [0, 0, 0, 8],
});

interface LaidOut {
  readonly headlineLevel?: number;
  readonly text?: unknown;
  readonly svg?: unknown;
  readonly pageNumbers: readonly number[];
}

/** A heading goes on with what follows it and never stands last on a page. */
const isHeadingAtPageEnd = (
  node: LaidOut,
  { getFollowingNodesOnPage }: { readonly getFollowingNodesOnPage: () => readonly LaidOut[] },
): boolean =>
  node.headlineLevel !== undefined &&
  !getFollowingNodesOnPage().some(
    (next) =>
      (next.text ?? next.svg) !== undefined &&
      next.headlineLevel === undefined &&
      next.pageNumbers[0] === node.pageNumbers[0],
  );

/** Each page break before a heading lays everything out anew, which a long report cannot wait for. */
const isShort = ({ sections }: ReportDocument): boolean =>
  sections.reduce((all, { parts }) => all + countOf(parts), 0) < mostParts;

const countOf = (parts: readonly Part[]): number =>
  parts.reduce((all, part) => all + 1 + ('parts' in part ? countOf(part.parts) : 0), 0);

const mostParts = 500;
