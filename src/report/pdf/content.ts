import { verdictWords } from '../../display';
import {
  type Cell,
  type Inline,
  message,
  type Part,
  plain,
  type ReportDocument,
  type Table,
  type Verdict,
} from '../document';
import { drawingContent } from './drawing';
import { formulaLines } from './formula-lines';
import type { Picture, Typesetter } from './typesetter';

/** A node of the library's document definition. */
export type Content = Readonly<Record<string, unknown>>;

export const colours = {
  faint: '#555555',
  line: '#b5b5b5',
  head: '#eef1f4',
  yes: '#14632a',
  no: '#a4161a',
  doubt: '#7a4b00',
};

const verdictColours: Readonly<Record<Verdict, string>> = {
  yes: colours.yes,
  no: colours.no,
  'cannot tell': colours.doubt,
};

/** A note stands beside a formula that leaves it this share of the line, else below. */
const roomForNote = 0.45;
const indent = 12;

/** Lays out the parts of a report for a page of some width, in points. */
export class ContentMaker {
  constructor(
    private readonly typesetter: Typesetter,
    private readonly width: number,
  ) {}

  parts(parts: readonly Part[], width = this.width): Content[] {
    return parts.flatMap((part, i): Content[] => {
      if (part.kind === 'heading') {
        return [this.headed(this.part(part, width), parts[i + 1], width)];
      }
      return parts[i - 1]?.kind === 'heading' && staysWhole(part) ? [] : [this.part(part, width)];
    });
  }

  /** A section's heading and parts. */
  section(heading: Content, parts: readonly Part[]): Content[] {
    const [first] = parts;
    return [this.headed(heading, first), ...this.parts(first && staysWhole(first) ? parts.slice(1) : parts)];
  }

  /** A heading, together with what follows where that is short enough to stand on one page with it. */
  private headed(heading: Content, next: Part | undefined, width = this.width): Content {
    return next && staysWhole(next) ? { stack: [heading, this.part(next, width)], unbreakable: true } : heading;
  }

  banner({ tone, title, items }: ReportDocument['banners'][number]): Content {
    const colour = tone === 'error' ? colours.no : colours.doubt;
    const inside = {
      stack: [{ text: `⚠ ${title}`, bold: true }, { ul: items.map((item) => ({ text: texts(message(item)) })) }],
    };
    return {
      table: { widths: ['*'], body: [[inside]] },
      layout: {
        hLineColor: () => colour,
        vLineColor: () => colour,
        hLineWidth: () => 1,
        vLineWidth: (i: number) => (i === 0 ? 5 : 1),
        paddingLeft: () => 8,
        paddingTop: () => 4,
        paddingBottom: () => 4,
      },
      margin: [0, 6, 0, 6],
    };
  }

  private part(part: Part, width: number): Content {
    switch (part.kind) {
      case 'heading':
        return { text: texts(part.content), style: `h${part.depth}`, headlineLevel: part.depth, ...outlined(part) };
      case 'paragraph':
        return { text: texts(part.content), margin: [0, 2, 0, 4] };
      case 'list': {
        const items = part.items.map((item) => ({ stack: this.parts(item, width - indent) }));
        return { [part.ordered ? 'ol' : 'ul']: items, margin: [0, 0, 0, 4] };
      }
      case 'quote':
        return this.barred(this.parts(part.parts, width - indent));
      case 'code':
        return { text: part.text, font: 'Mono', fontSize: 8.5, preserveLeadingSpaces: true, margin: [indent, 4, 0, 6] };
      case 'table':
        return tableContent(part);
      case 'step':
        return this.step(part, width);
      case 'verdict':
        return this.verdict(part, width);
      case 'drawing':
        return drawingContent(part, width);
      case 'group':
        return this.barred([
          { text: part.title, bold: true, margin: [0, 1, 0, 3] },
          ...this.parts(part.parts, width - indent),
        ]);
      case 'signatures':
        return signatures(part);
    }
  }

  private formula(latex: string, width: number): Content[] {
    return formulaLines(this.typesetter, latex, width).map((line) => pictureContent(line));
  }

  private step({ latex, note }: Part & { kind: 'step' }, width: number): Content {
    const lines = formulaLines(this.typesetter, latex, width);
    const remark = { text: texts(message(note ?? '')), color: colours.faint, fontSize: 8.5 };
    const [first] = lines;
    if (note !== undefined && lines.length === 1 && first.width < width * (1 - roomForNote)) {
      const drop = Math.max(0, (first.height - noteHeight) / 2);
      const columns = [
        { ...pictureContent(first), width: first.width },
        { ...remark, width: '*', margin: [0, drop, 0, 0] },
      ];
      return { columns, columnGap: 10, margin: [0, 2, 0, 2] };
    }
    const below = note === undefined ? [] : [{ ...remark, margin: [indent, 0, 0, 1] }];
    return { stack: [...lines.map(pictureContent), ...below], margin: [0, 2, 0, 2] };
  }

  private verdict({ verdict, label, latex, notes }: Part & { kind: 'verdict' }, width: number): Content {
    const line = { text: [verdictText(verdict), { text: label && `  ${label}` }] };
    const remarks = notes.map((note) => ({
      text: texts(message(note)),
      color: colours.faint,
      fontSize: 8.5,
      margin: [indent, 0, 0, 0],
    }));
    const shown = this.formula(latex, width - indent).map((content) => ({ ...content, margin: [indent, 1, 0, 2] }));
    return { stack: [line, ...shown, ...remarks], unbreakable: true, margin: [0, 3, 0, 5] };
  }

  /** Content behind a line that runs along its left. */
  private barred(inside: readonly Content[]): Content {
    return {
      table: { widths: ['*'], body: [[{ stack: inside }]] },
      layout: {
        hLineWidth: () => 0,
        vLineWidth: (i: number) => (i === 0 ? 2 : 0),
        vLineColor: () => colours.line,
        paddingLeft: () => indent - 4,
        paddingRight: () => 0,
        paddingTop: () => 0,
        paddingBottom: () => 0,
      },
      margin: [0, 3, 0, 5],
    };
  }
}

/** A short table is not parted from the heading above it. */
const staysWhole = (part: Part): boolean =>
  part.kind === 'signatures' || (part.kind === 'table' && part.rows.length <= mostRowsTogether);

const mostRowsTogether = 10;

const noteHeight = 11;

const pictureContent = ({ svg, width, height }: Picture): Content => ({
  svg,
  width,
  height,
  font: 'Text',
  margin: [0, 1.5, 0, 1.5],
});

/** Headings of the sheet stand in the bookmarks below their section. */
const outlined = ({ depth, content }: Part & { kind: 'heading' }): Content =>
  depth === 3 ? { outline: true, outlineText: plain(content), outlineParentId: 'section' } : {};

const verdictText = (verdict: Verdict): Content => ({
  text: verdictWords[verdict],
  bold: true,
  color: verdictColours[verdict],
});

const texts = (content: readonly Inline[]): (string | Content)[] => content.map(inlineText);

function inlineText(inline: Inline): string | Content {
  switch (inline.kind) {
    case 'break':
      return '\n';
    case 'maths':
      return inline.text;
    case 'verdict':
      return verdictText(inline.verdict);
    case 'link':
      return /^(https?:|mailto:)/i.test(inline.target) ? { text: inline.text, link: inline.target } : inline.text;
    case 'text':
      return inline.style === 'strong'
        ? { text: inline.text, bold: true }
        : inline.style === 'emphasis'
          ? { text: inline.text, italics: true }
          : inline.style === 'code'
            ? { text: inline.text, font: 'Mono', fontSize: 8.5 }
            : inline.text;
  }
}

const grid = {
  hLineWidth: () => 0.5,
  vLineWidth: () => 0.5,
  hLineColor: () => colours.line,
  vLineColor: () => colours.line,
  paddingLeft: () => 3,
  paddingRight: () => 3,
  paddingTop: () => 2,
  paddingBottom: () => 2,
};

/** Tables with more columns are set smaller. */
const manyColumns = 7;

/** Column heads, and totals below them, stand on top of every page that the table runs over. */
function tableContent({ caption, columns, rows, totals = [] }: Table): Content {
  const cell = (content: Cell, column: number) => ({
    text: texts(content),
    ...(columns[column]?.align && { alignment: 'right' }),
  });
  const head = columns.map(({ title, align }) => ({
    text: title,
    bold: true,
    fillColor: colours.head,
    ...(align && { alignment: 'right' }),
  }));
  const total = totals.map((row) =>
    row.map((content, i) => ({ ...cell(content, i), bold: true, fillColor: colours.head })),
  );
  const sum = columns.reduce((all, { width = 1 }) => all + width, 0);
  const table = {
    table: {
      headerRows: 1 + totals.length,
      keepWithHeaderRows: 1,
      dontBreakRows: true,
      widths: columns.map(({ width = 1 }) => `${(100 * width) / sum}%`),
      body: [head, ...total, ...rows.map((row) => columns.map((_, i) => cell(row[i] ?? [], i)))],
    },
    layout: grid,
    fontSize: columns.length > manyColumns ? 7.5 : 8.5,
    margin: [0, 3, 0, 7],
  };
  return caption === undefined ? table : { stack: [{ text: caption, bold: true }, table] };
}

function signatures({ lines }: Part & { kind: 'signatures' }): Content {
  const head = ['', 'Name', 'Signature', 'Date'].map((text) => ({ text, bold: true, fillColor: colours.head }));
  const rows = lines.map(({ role, name }) => [
    { text: role, bold: true, margin: [0, 10, 0, 10] },
    { text: name, margin: [0, 10, 0, 10] },
    '',
    '',
  ]);
  return {
    table: { headerRows: 1, dontBreakRows: true, widths: [80, '*', '*', 70], body: [head, ...rows] },
    layout: grid,
    unbreakable: true,
    margin: [0, 3, 0, 7],
  };
}
