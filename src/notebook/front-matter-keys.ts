import type { ProblemCode } from '../text';
import { type FrontMatter, reportShapes } from './contract';
import { formatVersion } from './format-version';
import { severityWords } from './severities';

/** What a key of the front matter takes and does: read by the sheet's reader, told in `docs/language.md`. */
export interface FrontMatterKey {
  /** What stands behind the colon, in a few words of Markdown. */
  readonly takes: string;
  /** What it is good for, in one sentence. */
  readonly does: string;
  /** The only values that it has, what they mean in a message, and the problem where another stands. */
  readonly choice?: { readonly words: readonly string[]; readonly meaning: string; readonly code: ProblemCode };
  /** How a value is written that is no plain text, and what that is in a message. */
  readonly written?: { readonly as: RegExp; readonly meaning: string };
}

const oneOf = (words: readonly string[], meaning: string, code: ProblemCode, does: string): FrontMatterKey => ({
  takes: words.map((word) => `\`${word}\``).join(', '),
  does,
  choice: { words, meaning, code },
});

const text = (does: string): FrontMatterKey => ({ takes: 'text', does });

/** Keys whose values are parts of `FrontMatter`. */
export const sheetKeys: Readonly<Record<keyof FrontMatter, FrontMatterKey>> = {
  title: text('The title of the sheet, of its report and of the terminal’s listing.'),
  project: text('Stands in the report’s title block.'),
  prepared_by: text('Who made the sheet; stands in the title block.'),
  checked_by: text('Who went through it; stands in the title block.'),
  date: text(
    'The date as you write it; stands in the title block and at the foot of each page. None is put in by itself.',
  ),
  revision: text('Stands in the title block and at the foot of each page.'),
  code: {
    takes: 'an edition, such as `NEC 2023`',
    does: 'Which edition of the tables holds. The latest, and the report says that it is assumed, where none is named.',
  },
  units: oneOf(
    ['US', 'SI'],
    'US (feet, inches) or SI (metres, millimetres)',
    'unknown-unit-system',
    'In which units results are shown that have none of their own; `SI` also makes the paper A4. US where it is left out.',
  ),
  report: oneOf(
    reportShapes,
    `${reportShapes.slice(0, -1).join(', ')} or ${reportShapes.at(-1)}`,
    'unknown-report',
    'Which paper of the trade a report is: its sections and their order. Everything that the sheet holds where it is left out.',
  ),
  cautions: oneOf(
    ['acknowledged'],
    '`acknowledged`, by one who has read them,',
    'front-matter-value',
    'The cautions are read: editor and terminal leave them out, a report never does.',
  ),
};

/** Keys that are read elsewhere: about the file, its warnings, and its takeoff. */
export const otherKeys = {
  severities: {
    takes: `below it, a warning’s name and ${severityWords.map((word) => `\`${word}\``).join(', ')} on each line`,
    does: 'How much the findings of these warnings weigh in this sheet.',
  },
  format: {
    takes: 'a whole number',
    does: `The format of the file. This version reads and writes format ${formatVersion}, which need not be said. Any other text stands in the title block.`,
  },
  waste: {
    takes: 'a percentage, such as `7 %`',
    does: 'What a takeoff adds to each length. 5 %, told as assumed, where it is left out.',
    written: { as: /^\d+(\.\d+)? ?%?$/, meaning: 'a percentage such as `7 %`' },
  },
  takeoff: {
    takes: 'names of circuits, parted by commas',
    does: 'Which circuits a takeoff counts. All where it is left out.',
  },
} as const satisfies Readonly<Record<string, FrontMatterKey>>;
