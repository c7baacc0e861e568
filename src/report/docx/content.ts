import type { FileChild, IParagraphOptions, ParagraphChild } from 'docx';
import { verdictWords } from '../../display';
import {
  type Cell,
  type Inline,
  type Maths,
  message,
  type Part,
  plain,
  type ReportDocument,
  type Table,
  type Verdict,
} from '../document';
import { sidesOf } from '../formula-sides';
import type { MathElement } from '../mathml';
import { fitted, leftOut } from '../picture';
import { EquationMaker } from './equation';

export type Library = typeof import('docx') & typeof import('docx/math');

const faint = '555555';
const shade = 'EEF1F4';
const linkColour = '1F4E8C';
const verdictColours: Readonly<Record<Verdict, string>> = { yes: '14632A', no: 'A4161A', 'cannot tell': '7A4B00' };

/** Twentieths of a point. */
const step = 240;
/** Half points. */
const small = 17;
const smallest = 15;
/** Tables with more columns are set smaller. */
const manyColumns = 7;

/** In characters; shorter ones fit on a line. */
const longFormula = 60;

/** Characters of a formula that fit into a cell beside others, and of one side of it that fit on a line. */
const longInCell = 30;
const longestSide = 80;

/** In pixels of 1/96 inch, which are 15 twentieths of a point. */
const highestPicture = 560;
const twentiethsPerPixel = 15;

/** The numbering that ordered lists use; each list is an instance of its own. */
export const orderedList = 'ordered';

/** Lays out the parts of a report as paragraphs and tables of a word processor. */
export class ContentMaker {
  private readonly equations: EquationMaker;
  private lists = 0;
  private pictures = 0;

  constructor(
    private readonly library: Library,
    private readonly readMaths: (latex: string) => MathElement,
    /** Of the text, in twentieths of a point. */
    private readonly width: number,
  ) {
    this.equations = new EquationMaker(library);
  }

  parts(parts: readonly Part[], indent = 0): FileChild[] {
    return parts.flatMap((part) => this.part(part, indent));
  }

  banner({ tone, title, items }: ReportDocument['banners'][number]): FileChild {
    const { BorderStyle, Paragraph, Table, TableCell, TableRow, TextRun, WidthType } = this.library;
    const color = verdictColours[tone === 'error' ? 'no' : 'cannot tell'];
    const border = { style: BorderStyle.SINGLE, size: 8, color };
    const children = [
      new Paragraph({ keepNext: true, children: [new TextRun({ text: `⚠ ${title}`, bold: true })] }),
      ...items.map((item) => new Paragraph({ children: this.runs(message(item)), bullet: { level: 0 } })),
    ];
    return new Table({
      width: { size: this.width, type: WidthType.DXA },
      columnWidths: [this.width],
      rows: [
        new TableRow({
          cantSplit: true,
          children: [
            new TableCell({
              children,
              width: { size: this.width, type: WidthType.DXA },
              borders: { top: border, right: border, bottom: border, left: { ...border, size: 36 } },
              margins: { left: 120, right: 120, top: 60, bottom: 60 },
            }),
          ],
        }),
      ],
    });
  }

  /** A table that its caller fills with plain texts: the title block. */
  fields(fields: ReportDocument['fields']): FileChild {
    return this.grid(
      [1700, 5200],
      fields.map(([label, text]) => ({
        cells: [[{ kind: 'text', text: label, style: 'strong' }], [{ kind: 'text', text }]],
      })),
      19,
    );
  }

  private part(part: Part, indent: number): FileChild[] {
    const { HeadingLevel, TextRun } = this.library;
    switch (part.kind) {
      case 'heading': {
        const heading = { 3: HeadingLevel.HEADING_2, 4: HeadingLevel.HEADING_3, 5: HeadingLevel.HEADING_4 }[part.depth];
        return [this.paragraph({ heading, children: this.runs(part.content) }, indent)];
      }
      case 'paragraph':
        return [this.paragraph({ children: this.runs(part.content) }, indent)];
      case 'list':
        return this.list(part, indent);
      case 'quote':
        return this.parts(part.parts, indent + step);
      case 'code':
        return part.text
          .split('\n')
          .map((text) =>
            this.paragraph({ children: [new TextRun({ text, font: 'DejaVu Sans Mono', size: small })] }, indent + step),
          );
      case 'table':
        return [this.table(part, indent), this.gap()];
      case 'step':
        return [
          this.paragraph({ children: [...this.formula(part), ...this.notes(part.note ? [part.note] : [])] }, indent),
        ];
      case 'verdict':
        return [
          this.paragraph(
            { keepNext: true, children: [this.verdict(part.verdict), new TextRun(part.label && `  ${part.label}`)] },
            indent,
          ),
          this.paragraph({ children: [...this.formula(part), ...this.notes(part.notes.map(message))] }, indent + step),
        ];
      case 'drawing':
        return [
          this.paragraph({ children: [new TextRun({ text: part.text, italics: true, size: small })] }, indent + step),
        ];
      case 'picture':
        return [this.picture(part, indent)];
      case 'group':
        return [
          this.paragraph({ keepNext: true, children: part.title.map((inline) => this.titled(inline)) }, indent + step),
          ...this.parts(part.parts, indent + step),
        ];
      case 'signatures':
        return [this.signatures(part)];
    }
  }

  private picture({ alt, source, file }: Part & { kind: 'picture' }, indent: number): FileChild {
    const { ImageRun } = this.library;
    if (file.type === 'svg') {
      const words = leftOut(alt, source, 'is SVG, which this format does not hold.');
      return this.part(words, indent)[0];
    }
    const room = { width: (this.width - indent) / twentiethsPerPixel, height: highestPicture };
    const { width, height } = fitted(file, room, 1);
    const image = new ImageRun({
      type: file.type === 'jpeg' ? 'jpg' : 'png',
      data: file.bytes,
      transformation: { width: Math.round(width), height: Math.round(height) },
      altText: { name: source, title: alt, description: alt || source, id: String(++this.pictures) },
    });
    return this.paragraph({ children: [image] }, indent);
  }

  private paragraph(options: IParagraphOptions, indent: number): FileChild {
    return new this.library.Paragraph({ ...options, ...(indent > 0 && { indent: { left: indent } }) });
  }

  private list({ ordered, items }: Part & { kind: 'list' }, indent: number): FileChild[] {
    const level = Math.min(8, Math.round(indent / step));
    const instance = this.lists++;
    return items.flatMap(([first, ...rest]) => {
      const mark = ordered ? { numbering: { reference: orderedList, level, instance } } : { bullet: { level } };
      const content = first?.kind === 'paragraph' ? first.content : [];
      const others = first?.kind === 'paragraph' ? rest : first ? [first, ...rest] : [];
      return [this.paragraph({ ...mark, children: this.runs(content) }, 0), ...this.parts(others, indent + step)];
    });
  }

  private runs(content: readonly Inline[], size?: number): ParagraphChild[] {
    return content.map((inline) => this.inline(inline, size));
  }

  private inline(inline: Inline, size?: number): ParagraphChild {
    const { TextRun } = this.library;
    switch (inline.kind) {
      case 'break':
        return new TextRun({ break: 1 });
      case 'maths':
        // An equation does not break, so in the narrow cell of a table a long one would be cut off.
        return inline.text.length > longInCell ? new TextRun({ text: inline.text, size }) : this.maths(inline.latex);
      case 'verdict':
        return this.verdict(inline.verdict, size);
      case 'link':
        return new TextRun({
          text: inline.text === inline.target ? inline.text : `${inline.text} (${inline.target})`,
          size,
        });
      case 'file':
        return this.fileLink(inline, size);
      case 'text':
        return new TextRun({
          text: inline.text,
          size,
          ...(inline.style === 'strong' && { bold: true }),
          ...(inline.style === 'emphasis' && { italics: true }),
          ...(inline.style === 'code' && { font: 'DejaVu Sans Mono' }),
        });
    }
  }

  private maths(latex: string): ParagraphChild {
    return new this.library.Math({ children: this.equations.of(this.readMaths(latex)) });
  }

  /** A long formula is parted before its equals signs, so that a line can break there. */
  private formula({ latex, text }: Maths): ParagraphChild[] {
    if (text.length < longFormula) {
      return [this.maths(latex)];
    }
    const [first, second, ...others] = sidesOf(latex);
    const texts = text.split(' = ');
    const asText = (words: string) => new this.library.TextRun({ text: words, font: 'Cambria Math' });
    // A side that fills more than a line, such as a long list, stands as text, which breaks; a fraction is half as wide.
    const side = (part: string, i: number) =>
      texts.length === others.length + 2 && texts[i].length > longestSide && !part.includes('\\frac')
        ? asText(texts[i])
        : this.maths(part);
    if (second === undefined || (texts[1]?.length ?? 0) > longestSide) {
      return [first, ...(second === undefined ? [] : [second]), ...others].flatMap((part, i) => [
        ...(i > 0 ? [asText(' = ')] : []),
        side(part, i),
      ]);
    }
    // The sign stands as text: a formula that begins with it is shown with a gap to be filled in.
    return [this.maths(`${first} = ${second}`), ...others.flatMap((part, i) => [asText(' = '), side(part, i + 2)])];
  }

  private verdict(verdict: Verdict, size?: number): ParagraphChild {
    return new this.library.TextRun({ text: verdictWords[verdict], bold: true, color: verdictColours[verdict], size });
  }

  private titled(inline: Inline): ParagraphChild {
    return inline.kind === 'file'
      ? this.fileLink(inline)
      : new this.library.TextRun({ text: plain([inline]), bold: true });
  }

  /** A field, since the library numbers its hyperlinks at random and the same sheet gives the same bytes. */
  private fileLink({ text, target }: Inline & { kind: 'file' }, size?: number): ParagraphChild {
    const field = new this.library.SimpleField(`HYPERLINK "${target}"`);
    field.addChildElement(new this.library.TextRun({ text, size, color: linkColour, underline: {} }));
    return field;
  }

  private notes(notes: readonly (readonly Inline[])[]): ParagraphChild[] {
    const { TextRun } = this.library;
    const faded = (inline: Inline) =>
      inline.kind === 'file'
        ? this.fileLink(inline)
        : new TextRun({ text: plain([inline]), color: faint, size: small });
    return notes.flatMap((note) => [new TextRun({ text: '\u2003', size: small }), ...note.map(faded)]);
  }

  private table({ columns, rows, totals = [] }: Table, indent: number): FileChild {
    const sum = columns.reduce((all, { width = 1 }) => all + width, 0);
    const room = this.width - indent;
    const head = {
      head: true,
      cells: columns.map(({ title }): Cell => [{ kind: 'text', text: title, style: 'strong' }]),
    };
    const total = totals.map((row) => ({ head: true, cells: row.map((cell) => cell.map(strong)) }));
    return this.grid(
      columns.map(({ width = 1 }) => Math.floor((room * width) / sum)),
      [head, ...total, ...rows.map((row) => ({ cells: columns.map((_, i) => row[i] ?? []) }))],
      columns.length > manyColumns ? smallest : small,
      { indent, right: new Set(columns.flatMap(({ align }, i) => (align ? [i] : []))) },
    );
  }

  /** Head rows stand on top of every page that the table runs over. */
  private grid(
    widths: readonly number[],
    rows: readonly { readonly head?: true | boolean; readonly cells: readonly Cell[] }[],
    size: number,
    { indent = 0, right = new Set<number>() }: { readonly indent?: number; readonly right?: ReadonlySet<number> } = {},
  ): FileChild {
    const { AlignmentType, BorderStyle, Paragraph, ShadingType, Table, TableCell, TableRow, WidthType } = this.library;
    const border = { style: BorderStyle.SINGLE, size: 4, color: 'B5B5B5' };
    const cell = (content: Cell, i: number, head: boolean) =>
      new TableCell({
        width: { size: widths[i], type: WidthType.DXA },
        margins: { left: 60, right: 60, top: 20, bottom: 20 },
        ...(head && { shading: { type: ShadingType.CLEAR, fill: shade } }),
        children: [
          new Paragraph({
            spacing: { before: 0, after: 0 },
            ...(right.has(i) && { alignment: AlignmentType.RIGHT }),
            children: this.runs(content, size),
          }),
        ],
      });
    return new Table({
      width: { size: widths.reduce((all, width) => all + width, 0), type: WidthType.DXA },
      columnWidths: [...widths],
      ...(indent > 0 && { indent: { size: indent, type: WidthType.DXA } }),
      borders: {
        top: border,
        bottom: border,
        left: border,
        right: border,
        insideHorizontal: border,
        insideVertical: border,
      },
      rows: rows.map(
        ({ head = false, cells }) =>
          new TableRow({
            tableHeader: head,
            cantSplit: true,
            children: cells.map((content, i) => cell(content, i, head)),
          }),
      ),
    });
  }

  /** Two tables that touch would become one. */
  private gap(): FileChild {
    return new this.library.Paragraph({ spacing: { before: 0, after: 60 }, children: [] });
  }

  private signatures({ lines }: Part & { kind: 'signatures' }): FileChild {
    const text = (words: string, style?: 'strong'): Cell => [{ kind: 'text', text: words, ...(style && { style }) }];
    const tall: Cell = [{ kind: 'break' }, { kind: 'break' }];
    const share = Math.floor(this.width / 10);
    return this.grid(
      [share * 2, share * 3, share * 3, share * 2],
      [
        { head: true, cells: ['', 'Name', 'Signature', 'Date'].map((title) => text(title, 'strong')) },
        ...lines.map(({ role, name }) => ({ cells: [text(role, 'strong'), text(name), tall, []] })),
      ],
      small,
    );
  }
}

const strong = (inline: Inline): Inline => (inline.kind === 'text' ? { ...inline, style: 'strong' } : inline);
