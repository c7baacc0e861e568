import { derivationParts } from './derivation';
import { type Inline, type Part, plain, words } from './document';
import type { ReportCell } from './input';
import type { PictureFiles } from './picture';
import { readProse } from './prose';

/** A stretch of the sheet under one of its main headings; the opening stands under none. */
export interface SheetSection {
  readonly heading: readonly Inline[];
  readonly title: string;
  readonly parts: Part[];
}

/**
 * The sheet's prose and calculations in order, parted at its main headings: the second level, and the first where it is
 * not the title.
 */
export function sheetSections(
  cells: readonly ReportCell[],
  title: string | undefined,
  pictures: PictureFiles,
): SheetSection[] {
  const sections: SheetSection[] = [{ heading: [], title: '', parts: [] }];
  for (const cell of cells) {
    const parts = cell.kind === 'prose' ? readProse(cell.text, pictures) : derivationParts(cell.blocks);
    for (const part of parts) {
      if (part.kind !== 'heading') {
        sections.at(-1)!.parts.push(part);
      } else if (part.depth > 2) {
        const depth = part.depth === 3 ? 4 : 5;
        sections.at(-1)!.parts.push({ kind: 'heading', depth, content: part.content });
      } else if (!(part.depth === 1 && isTitle(plain(part.content), title, sections))) {
        sections.push({ heading: part.content, title: plain(part.content).trim(), parts: [] });
      }
    }
  }
  return sections;
}

/** The first heading is the title where it says the same, or where nothing else gives one. */
const isTitle = (heading: string, title: string | undefined, sections: readonly SheetSection[]): boolean =>
  heading.trim() === title || (title === undefined && sections.length === 1 && sections[0].parts.length === 0);

/** The parts with their heading above, as they stand among others. */
export const headed = ({ heading, parts }: SheetSection): Part[] =>
  heading.length === 0 ? parts : [{ kind: 'heading', depth: 3, content: heading }, ...parts];

/** Most prose holds none, and need not be read twice. */
const mayHoldTitle = /^ {0,3}(#[^#]|#$|=+[ \t]*$)/m;

/** The sheet's first heading of the first level, for a report without a title of its own. */
export function firstHeading(cells: readonly ReportCell[]): string | undefined {
  for (const cell of cells) {
    for (const part of cell.kind === 'prose' && mayHoldTitle.test(cell.text) ? readProse(cell.text) : []) {
      if (part.kind === 'heading' && part.depth === 1) {
        return plain(part.content).trim();
      }
    }
  }
  return undefined;
}

/** `complaint: "…"` in the front matter as a part of the section of that name. */
export const detailPart = (text: string): Part => ({ kind: 'paragraph', content: words(text) });
