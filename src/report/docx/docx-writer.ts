import { escapeHtml } from '../../display';
import type { ReportDocument } from '../document';
import { documentDate } from '../document-date';
import { mathReader } from '../mathml';
import type { WriteOptions } from '../write-options';
import { stampZip } from '../zip-dates';
import { ContentMaker, type Library, orderedList } from './content';

/** Sizes in twentieths of a point. */
const papers = { letter: { width: 12240, height: 15840 }, A4: { width: 11906, height: 16838 } };
const margin = 1000;

/** What building the paragraphs takes of the whole time; the rest goes into packing. */
const builtShare = 0.5;

/** The report as a document for a word processor: styles, native tables and equations, page x of y. */
export async function writeDocx(document: ReportDocument, { progress }: WriteOptions): Promise<Uint8Array> {
  const library: Library = { ...(await import('docx')), ...(await import('docx/math')) };
  const readMaths = await mathReader();
  const paper = papers[document.paper];
  const maker = new ContentMaker(library, readMaths, paper.width - 2 * margin);
  const { HeadingLevel, Packer, Paragraph, TextRun } = library;
  const { kind, title, fields, banners, sections, date, author } = document;
  const file = new library.Document({
    title: `${title} – ${kind}`,
    subject: kind,
    creator: author ?? 'Kilofoot',
    lastModifiedBy: author ?? 'Kilofoot',
    ...styles,
    ...numbering(library),
    sections: [
      {
        properties: {
          page: { size: paper, margin: { top: margin, right: margin, bottom: margin, left: margin } },
        },
        footers: { default: footer(document, library, paper.width - 2 * margin) },
        children: [
          new Paragraph({ heading: HeadingLevel.TITLE, children: [new TextRun(title)] }),
          new Paragraph({ children: [new TextRun({ text: kind, color: '555555' })] }),
          maker.fields(fields),
          ...banners.flatMap((banner) => [new Paragraph({ children: [] }), maker.banner(banner)]),
          ...sections.flatMap((section, i) => {
            progress?.({ doing: section.title, share: (builtShare * i) / sections.length });
            return [
              new Paragraph({ heading: HeadingLevel.HEADING_1, children: [new TextRun(section.title)] }),
              ...maker.parts(section.parts),
            ];
          }),
        ],
      },
    ],
  });
  progress?.({ doing: 'Packing', share: builtShare });
  const when = documentDate(date);
  const core = { path: 'docProps/core.xml', data: coreProperties(document, when) };
  return stampZip(new Uint8Array(await Packer.toArrayBuffer(file, undefined, [core])), when);
}

const heading = (size: number, before: number) => ({
  run: { size, bold: true, color: '1B1B1B', font: 'Arial' },
  paragraph: { spacing: { before, after: 80 }, keepNext: true },
});

/** Sizes in half points. */
const styles = {
  styles: {
    default: {
      document: {
        run: { font: 'Arial', size: 19, language: { value: 'en-US' } },
        paragraph: { spacing: { before: 40, after: 60 } },
      },
      title: heading(34, 0),
      heading1: heading(26, 280),
      heading2: heading(22, 200),
      heading3: heading(20, 160),
      heading4: heading(19, 120),
    },
  },
};

const numbering = ({ AlignmentType, LevelFormat }: Library) => ({
  numbering: {
    config: [
      {
        reference: orderedList,
        levels: Array.from({ length: 9 }, (_, level) => ({
          level,
          format: LevelFormat.DECIMAL,
          text: `%${level + 1}.`,
          alignment: AlignmentType.START,
          style: { paragraph: { indent: { left: 360 * (level + 1), hanging: 260 } } },
        })),
      },
    ],
  },
});

function footer({ title, revision, date }: ReportDocument, library: Library, width: number) {
  const { Footer, PageNumber, Paragraph, TabStopType, TextRun } = library;
  const left = [title, revision && `revision ${revision}`, date].filter(Boolean).join(' · ');
  const children = [`${left}\tpage `, PageNumber.CURRENT, ' of ', PageNumber.TOTAL_PAGES];
  return new Footer({
    children: [
      new Paragraph({
        tabStops: [{ type: TabStopType.RIGHT, position: width }],
        children: [new TextRun({ children, size: 16, color: '555555' })],
      }),
    ],
  });
}

/** The library stamps the present moment here; the sheet's own takes its place. */
function coreProperties({ title, kind, author }: ReportDocument, when: Date): string {
  const moment = when.toISOString().replace(/\.\d+Z$/, 'Z');
  const who = escapeHtml(author ?? 'Kilofoot');
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><dc:title>${escapeHtml(`${title} – ${kind}`)}</dc:title><dc:subject>${escapeHtml(kind)}</dc:subject><dc:creator>${who}</dc:creator><dc:language>en</dc:language><cp:lastModifiedBy>${who}</cp:lastModifiedBy><dcterms:created xsi:type="dcterms:W3CDTF">${moment}</dcterms:created><dcterms:modified xsi:type="dcterms:W3CDTF">${moment}</dcterms:modified></cp:coreProperties>`;
}
