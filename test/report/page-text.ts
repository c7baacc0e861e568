import { definitionOf, loadTypesetter } from '../../src/report/pdf/pdf-writer';
import { PictureShelf } from '../../src/report/pdf/picture-files';
import { reportOf } from './report-of';

/** What a PDF shows, top to bottom: a line a text, cells apart by bars, and each formula by its size in points. */
export async function pageText(sheet: string): Promise<string> {
  const { content, footer } = definitionOf(reportOf(sheet), await loadTypesetter(), new PictureShelf());
  const shown = [...content.pieces] as Node[];
  return [...shown.flatMap(lines), '---', ...lines(footer(1, 2) as Node)].join('\n').concat('\n');
}

type Node = { readonly [key: string]: Node } & { readonly length?: number };

function lines(node: Node | string | undefined): string[] {
  if (node === undefined || typeof node === 'string') {
    return node ? [node] : [];
  }
  if (Array.isArray(node)) {
    return node.flatMap(lines);
  }
  if (node.svg) {
    return [`[formula ${Number(node.width).toFixed(1)} by ${Number(node.height).toFixed(1)}]`];
  }
  if (node.text !== undefined) {
    return [inline(node.text)];
  }
  if (node.table) {
    const body = node.table.body as unknown as Node[][];
    return body.length === 1 && body[0].length === 1
      ? lines(body[0][0])
      : body.map((row) => row.map((cell) => lines(cell).join(' ')).join(' | '));
  }
  const marked = ((node.ul ?? node.ol) as unknown as Node[] | undefined)?.flatMap((item) =>
    lines(item).map((line) => `- ${line}`),
  );
  return marked ?? lines(node.stack ?? node.columns);
}

const inline = (text: Node | string): string =>
  typeof text === 'string' ? text : Array.isArray(text) ? text.map(inline).join('') : inline(text.text ?? '');
