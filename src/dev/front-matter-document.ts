import { type FrontMatterKey, otherKeys, reportShapes, sheetKeys } from '../notebook';
import { keyOf, shapeOf } from '../report';
import { markdownTable } from './markdown-table';

const rows = (keys: Readonly<Record<string, FrontMatterKey>>) =>
  Object.entries(keys).map(([key, { takes, does }]) => [`\`${key}\``, takes, does]);

/** What the front matter takes, from what reads it. */
export const frontMatterTables: Readonly<Record<string, () => string>> = {
  keys: () =>
    markdownTable(
      ['key', 'takes', 'is for'],
      [
        ...rows(sheetKeys),
        ...rows(otherKeys),
        ['any other', 'text', 'Stands in the report, in the section of its name (below) or in the title block.'],
      ],
    ),
  sections: () =>
    markdownTable(
      ['`report`', 'keys that are sections of it'],
      [undefined, ...reportShapes].map((report) => [
        report ? `\`${report}\`` : 'left out',
        shapeOf(report)
          .sections.filter(({ heading }) => heading)
          .map(({ title }) => `\`${keyOf(title)}\``)
          .join(', '),
      ]),
    ),
};
