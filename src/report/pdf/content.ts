import { type Inline, type Maths, message, type Part, plain, type ReportDocument } from '../document';
import { drawingContent } from './drawing';
import { formulaLines } from './formula-lines';
import { type Content, colours, texts, verdictText } from './inline-content';
import { pictureOnPage } from './picture-content';
import type { PictureShelf } from './picture-files';
import { isShortTable, signatures, tableContent } from './table-content';
import { Tag } from './tag';
import type { Picture, Typesetter } from './typesetter';

/** A note stands beside a formula that leaves it this share of the line, else below. */
const roomForNote = 0.45;
const indent = 12;
const noteHeight = 11;
/** From the line along a group to what stands in it, with the line. */
const inset = indent - 2;
/** Below all headings. */
const innermost = 9;

/** In characters. What is longer may fill a page, and has to be let break. */
const longestWhole = 2000;

/** Lays out the parts of a report for a page of some width, in points. */
export class ContentMaker {
  /** The bookmark below which those of the parts’ headings stand. */
  bookmark = '';

  constructor(
    private readonly typesetter: Typesetter,
    private readonly width: number,
    private readonly pictures: PictureShelf,
  ) {}

  /** The parts one by one: each is made when it is asked for. */
  *parts(parts: readonly Part[], width = this.width): Generator<Content> {
    for (const part of parts) {
      if (part.kind === 'group' && width === this.width) {
        yield* this.group(part);
      } else {
        yield this.part(part, width);
      }
    }
  }

  banner({ tone, title, items }: ReportDocument['banners'][number]): Content {
    const colour = tone === 'error' ? colours.no : colours.doubt;
    const inside = {
      stack: [
        { text: `⚠ ${title}`, bold: true, tag: new Tag('P') },
        {
          ul: items.map((item) => ({ text: texts(message(item)), tag: new Tag('LI') })),
          tag: new Tag('L'),
        },
      ],
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
      tag: new Tag('Note'),
    };
  }

  private part(part: Part, width: number): Content {
    switch (part.kind) {
      case 'heading':
        return {
          text: texts(part.content),
          style: `h${part.depth}`,
          headlineLevel: part.depth,
          tag: new Tag(`H${part.depth}`),
          ...this.outlined(part),
        };
      case 'paragraph':
        return { text: texts(part.content), margin: [0, 2, 0, 4], tag: new Tag('P'), ...leadIn(part) };
      case 'list': {
        const items = part.items.map((item) => ({
          stack: [...this.parts(item, width - indent)],
          tag: new Tag('LI'),
        }));
        return { [part.ordered ? 'ol' : 'ul']: items, margin: [0, 0, 0, 4], tag: new Tag('L') };
      }
      case 'quote':
        return this.barred([...this.parts(part.parts, width - indent)], new Tag('BlockQuote'));
      case 'code':
        return {
          text: part.text,
          font: 'Mono',
          fontSize: 8.5,
          preserveLeadingSpaces: true,
          margin: [indent, 4, 0, 6],
          tag: new Tag('Code'),
        };
      case 'table':
        return tableContent(part, width);
      case 'step':
        return this.step(part, width);
      case 'verdict':
        return this.verdict(part, width);
      case 'drawing':
        return { ...drawingContent(part, width), tag: new Tag('Figure', { alt: part.text }) };
      case 'picture':
        return pictureOnPage(part, width, this.pictures);
      case 'group':
        return this.groupInside(part, width);
      case 'signatures':
        return signatures(part);
    }
  }

  /** The title is kept with what follows as a heading is. */
  private *group({ title, parts }: Part & { kind: 'group' }): Generator<Content> {
    const whole = new Tag('Sect');
    const tag = new Tag('P', { within: whole });
    yield { ...titleContent(title), headlineLevel: innermost, bar: true, margin: [inset, 3, 0, 0], tag };
    const inside = [...this.parts(parts, this.width - indent)];
    if (inside.length > 0) {
      yield { stack: inside, bar: true, margin: [inset, 0, 0, 5], tag: whole };
    }
  }

  /** In another group the title stands on one page with what comes first below it, where that is short. */
  private groupInside({ title, parts }: Part & { kind: 'group' }, width: number): Content {
    const head = { ...titleContent(title), margin: [0, 1, 0, 3], tag: new Tag('P') };
    const [first, ...others] = this.parts(parts, width - indent);
    const together = first ? [{ stack: [head, first], unbreakable: isShort(parts[0]) }] : [head];
    return this.barred([...together, ...others], new Tag('Sect'));
  }

  private formula({ latex, text }: Maths, width: number): Content[] {
    const lines = formulaLines(this.typesetter, latex, width);
    const tag = new Tag('Formula', { alt: text });
    return lines.map((line) => pictureContent(line, tag));
  }

  private step(part: Part & { kind: 'step' }, width: number): Content {
    const { note } = part;
    const lines = this.formula(part, width);
    const remark = { text: texts(note ?? []), color: colours.faint, fontSize: 8.5, tag: new Tag('P') };
    const [first] = lines as (Content & { width: number; height: number })[];
    if (note !== undefined && lines.length === 1 && first.width < width * (1 - roomForNote)) {
      const drop = Math.max(0, (first.height - noteHeight) / 2);
      const columns = [first, { ...remark, width: '*', margin: [0, drop, 0, 0] }];
      return { columns, columnGap: 10, margin: [0, 2, 0, 2], unbreakable: isShort(part) };
    }
    const below = note === undefined ? [] : [{ ...remark, margin: [indent, 0, 0, 1] }];
    return { stack: [...lines, ...below], margin: [0, 2, 0, 2], unbreakable: isShort(part) };
  }

  private verdict(part: Part & { kind: 'verdict' }, width: number): Content {
    const { verdict, label, notes } = part;
    const line = { text: [verdictText(verdict), { text: label && `  ${label}` }], tag: new Tag('P') };
    const remarks = notes.map((note) => ({
      text: texts(message(note)),
      color: colours.faint,
      fontSize: 8.5,
      margin: [indent, 0, 0, 0],
      tag: new Tag('P'),
    }));
    const shown = this.formula(part, width - indent).map((content) => ({ ...content, margin: [indent, 1, 0, 2] }));
    return { stack: [line, ...shown, ...remarks], unbreakable: isShort(part), margin: [0, 3, 0, 5] };
  }

  /** The larger headings stand in the bookmarks below their section. */
  private outlined({ depth, content }: Part & { kind: 'heading' }): Content {
    return depth === 3 ? { outline: true, outlineText: plain(content), outlineParentId: this.bookmark } : {};
  }

  /** Content behind a line that runs along its left. */
  private barred(stack: readonly Content[], tag: Tag): Content {
    return { stack, bar: true, margin: [inset, 3, 0, 5], tag };
  }
}

/** Whether it surely stands on one page; what does not is let break, because a block that does not fit is cut off. */
const isShort = (part: Part): boolean =>
  part.kind === 'table'
    ? isShortTable(part)
    : part.kind === 'step' || part.kind === 'verdict'
      ? part.text.length < longestWhole
      : part.kind === 'paragraph' && plain(part.content).length < longestWhole;

/** In characters: about two lines. */
const longestLeadIn = 200;

/** Words that lead in to what follows stay with it, as a heading does. */
const leadIn = (part: Part & { kind: 'paragraph' }): Content =>
  plain(part.content).length < longestLeadIn && plain(part.content).trimEnd().endsWith(':')
    ? { headlineLevel: innermost }
    : {};

const titleContent = (title: readonly Inline[]): Content => ({ text: texts(title), bold: true });

const pictureContent = ({ svg, width, height }: Picture, tag: Tag): Content => ({
  svg,
  width,
  height,
  font: 'Text',
  margin: [0, 1.5, 0, 1.5],
  tag,
});
