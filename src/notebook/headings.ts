import { markdownBlocks } from './markdown-blocks';

export interface Heading {
  /** 1 for the largest. */
  readonly depth: number;
  readonly text: string;
}

/** The headings of a prose cell in order, their Markdown left as it is. */
export function headingsOf(text: string): Heading[] {
  return markdownBlocks(text)
    .filter((block) => block.type === 'heading')
    .map((block) => {
      const source = text.slice(block.start, block.end);
      const hashes = /^ {0,3}(#{1,6})(?:[ \t]+([\s\S]*?))?(?:[ \t]+#+)?[ \t]*$/.exec(source);
      return hashes
        ? { depth: hashes[1].length, text: (hashes[2] ?? '').trim() }
        : { depth: /=[ \t]*$/.test(source) ? 1 : 2, text: source.replace(/\n[^\n]*$/, '').trim() };
    });
}
