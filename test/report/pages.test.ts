import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { LayoutPage, PageItem } from 'pdfmake/js/LayoutBuilder.js';
import { readFont } from '../../src/cli/fonts';
import { buildReport, evaluateSheet, type FolderFiles, reportInput } from '../../src/core';
import { definitionOf, fontFiles, loadTypesetter } from '../../src/report/pdf/pdf-writer';
import { PictureShelf } from '../../src/report/pdf/picture-files';
import { layOut } from '../../src/report/pdf/press';
import { Tag } from '../../src/report/pdf/tag';
import { sheetOf } from './report-of';

const root = join(__dirname, '..', '..');
const folders = ['examples', 'examples/market-hall', 'seeds'];
const sheets = folders.flatMap((folder) =>
  readdirSync(join(root, folder)).flatMap((name) => (name.endsWith('.kft.md') ? [join(folder, name)] : [])),
);

/** A half point more than the layout reckons with is nothing that shows. */
const slack = 0.5;

async function pagesOf(text: string, files?: FolderFiles) {
  const fonts = new Map<string, Uint8Array>();
  for (const name of fontFiles) {
    fonts.set(name, await readFont(name));
  }
  const document = buildReport(reportInput(evaluateSheet(text, files && { files })));
  const definition = definitionOf(document, await loadTypesetter(), new PictureShelf());
  const { pages } = await layOut(definition, fonts);
  return { pages, margins: definition.margins };
}

/** What stands on a page above its foot, with where it begins and ends. */
function contentOf({ items, pageSize }: LayoutPage, [, , , bottom]: readonly number[]) {
  const foot = pageSize.height - bottom;
  return items
    .filter(({ type, item }) => type !== 'vector' && item.y < foot + 10)
    .map(({ item }) => ({
      item,
      from: item.y,
      to: item.y + (item.getHeight?.() ?? item._height ?? 0),
      width: widthOf(item),
    }));
}

const widthOf = (item: PageItem['item']): number => {
  const { getWidth, _width = 0 } = item as { getWidth?: () => number; _width?: number };
  return getWidth ? getWidth.call(item) : _width;
};

const isHeading = ({ owner }: PageItem['item']): boolean =>
  owner instanceof Tag && (/^H\d$/.test(owner.type) || owner.options.within?.type === 'Sect');

describe('pages of a report', () => {
  for (const name of sheets) {
    it(`${name}: no heading stands last on a page, and nothing stands over a margin`, async () => {
      const folder: FolderFiles = {
        path: name,
        read: (path) => readFileSync(join(root, path)),
        tableFiles: () => [],
      };
      const { pages, margins } = await pagesOf(readFileSync(join(root, name), 'utf8'), folder);
      assert.ok(pages.length > 1);
      for (const [i, page] of pages.entries()) {
        const content = contentOf(page, margins);
        const last = content.reduce((lowest, one) => (one.to > lowest.to ? one : lowest));
        assert.ok(!isHeading(last.item), `page ${i + 1} ends with a heading`);
        assert.ok(last.to <= page.pageSize.height - margins[3] + slack, `page ${i + 1} is longer than it may be`);
        const over = content.find(({ item, width }) => item.x + width > page.pageSize.width - margins[2] + slack);
        assert.equal(over && over.item.x + over.width, undefined, `page ${i + 1} is wider than it may be`);
      }
    });
  }

  it('keep a heading with what follows wherever the page ends', async () => {
    // Twenty headings of two levels, with more above them each time, so that each comes to every place on a page.
    for (const filling of [0, 1, 2, 3, 4, 5]) {
      const text = Array.from({ length: 20 }, (_, i) => `## Part ${i}\n\n### Below ${i}\n\n${'Words. '.repeat(90)}`);
      const prose = [...Array.from({ length: filling }, () => 'Line.'), ...text].join('\n\n');
      const { pages, margins } = await pagesOf(sheetOf('title: Long', 'a = 1 V', prose));
      assert.ok(pages.length > 2);
      for (const page of pages) {
        const content = contentOf(page, margins);
        assert.ok(!isHeading(content.reduce((lowest, one) => (one.to > lowest.to ? one : lowest)).item));
        assert.ok(content.every(({ from }) => from >= margins[1] - slack));
      }
      const headings = pages.flatMap((page) => contentOf(page, margins).filter(({ item }) => isHeading(item)));
      assert.ok(headings.length >= 40, 'none is lost on the way');
    }
  });
});
