import type { ReportDocument, Section } from '../document';
import { documentDate } from '../document-date';
import type { WriteOptions } from '../write-options';
import { ContentMaker } from './content';
import { type Content, colours } from './inline-content';
import { PictureShelf } from './picture-files';
import { type Definition, print } from './press';
import { fieldsContent } from './table-content';
import { Tag } from './tag';
import { Typesetter } from './typesetter';

/** Widths in points. */
const papers = { letter: { size: 'LETTER', width: 612 }, A4: { size: 'A4', width: 595.28 } };
const margins = [48, 48, 48, 54] as const;
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

/** The report as a PDF: tagged, with bookmarks, page x of y, maths as vectors, fonts embedded. */
export async function writePdf(document: ReportDocument, { font, progress }: WriteOptions): Promise<Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const name of fontFiles) {
    files.set(name, await font(name));
  }
  const counted = new Counted(document.sections);
  const definition = definitionOf(document, await loadTypesetter(), await PictureShelf.of(document), (part) =>
    counted.begin(part),
  );
  return print(definition, files, () => counted.share, progress);
}

/** How many of a report's parts are laid out. */
class Counted {
  private begun = 0;
  private readonly all: number;

  constructor(sections: readonly Section[]) {
    this.all = sections.reduce((sum, { parts }) => sum + parts.length, 0);
  }

  begin(parts: number): void {
    this.begun += parts;
  }

  get share(): number {
    return this.all === 0 ? 1 : this.begun / this.all;
  }
}

/** Formulas in the size that goes with the text. */
export const loadTypesetter = (): Promise<Typesetter> => Typesetter.load(pointsPerEx);

/** What is printed; `begun` is told each time that so many parts of a section go to be laid out. */
export function definitionOf(
  document: ReportDocument,
  typesetter: Typesetter,
  pictures: PictureShelf,
  begun: (parts: number) => void = () => undefined,
): Definition {
  const { kind, title, revision, date, author } = document;
  const when = documentDate(date);
  const foot = [title, revision && `revision ${revision}`, date].filter(Boolean).join(' · ');
  return {
    paper: papers[document.paper].size,
    margins,
    information: {
      Title: `${title} – ${kind}`,
      Subject: kind,
      Creator: 'Kilofoot',
      Producer: 'pdfmake',
      CreationDate: when,
      ModDate: when,
      ...(author && { Author: author }),
    },
    fonts,
    pictures: pictures.addresses,
    defaultStyle: { font: 'Text', fontSize: textSize, lineHeight: 1.12 },
    styles: {
      h1: { fontSize: 17, bold: true, lineHeight: 1.05 },
      h2: { fontSize: 12.5, bold: true, margin: [0, 12, 0, 4] },
      h3: { fontSize: 10.8, bold: true, margin: [0, 8, 0, 3] },
      h4: { fontSize: textSize, bold: true, margin: [0, 6, 0, 2] },
      h5: { fontSize: textSize, italics: true, margin: [0, 5, 0, 2] },
    },
    footer: (current, count): Content => ({
      columns: [
        { text: foot, width: '*', noWrap: false },
        { text: `page ${current} of ${count}`, width: 90, alignment: 'right' },
      ],
      fontSize: 8,
      color: colours.faint,
      margin: [margins[0], 18, margins[2], 0],
    }),
    content: { stack: [], pieces: pieces(document, typesetter, pictures, begun), tag: new Tag('Document') },
  };
}

/** The document from its title on, piece by piece: nothing of a piece is made before it is laid out. */
function* pieces(
  { kind, title, fields, banners, sections, paper }: ReportDocument,
  typesetter: Typesetter,
  pictures: PictureShelf,
  begun: (parts: number) => void,
): Generator<Content> {
  const maker = new ContentMaker(typesetter, papers[paper].width - margins[0] - margins[2], pictures);
  yield {
    text: title,
    style: 'h1',
    outline: true,
    outlineText: title,
    id: 'title',
    outlineExpanded: true,
    tag: new Tag('H1'),
  };
  yield { text: kind, color: colours.faint, margin: [0, 0, 0, 8], tag: new Tag('P') };
  yield fieldsContent(fields);
  for (const banner of banners) {
    yield maker.banner(banner);
  }
  for (const [i, section] of sections.entries()) {
    const id = `section-${i + 1}`;
    yield sectionHeading(section.title, id);
    maker.bookmark = id;
    for (const part of maker.parts(section.parts)) {
      begun(1);
      yield part;
    }
  }
}

const sectionHeading = (text: string, id: string): Content => ({
  text,
  style: 'h2',
  headlineLevel: 2,
  outline: true,
  outlineText: text,
  id,
  outlineParentId: 'title',
  tag: new Tag('H2'),
});
