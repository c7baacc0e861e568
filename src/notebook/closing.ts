import { readFence } from './fence';
import { type MarkdownBlock, markdownBlocks } from './markdown-blocks';

/** A cell that must be read as one when it follows a prose cell. */
const probe = '```kft\n```';

/** True when a prose cell at the head of a file is front matter and nothing else. */
export function isFrontMatter(text: string): boolean {
  const [first] = text.startsWith('---') ? markdownBlocks(text) : [];
  return first?.type === 'yaml' && text.slice(first.end).trim() === '';
}

/**
 * The line that must be put behind a prose cell so that the cell after it is not read as part of it; empty when the
 * text closes all it opens. `head` says that the cell stands first in the file, where front matter may.
 */
export function closingOf(text: string, head: boolean): string {
  if (text === '') {
    return '';
  }
  const prose = head ? text : `\n${text}`;
  const last = markdownBlocks(prose).at(-1);
  const closing = last === undefined || last.end < prose.trimEnd().length ? '' : closingOfBlock(prose, last);
  return closing !== '' && swallowsFence(prose, 0) ? closing : '';
}

/** True when a fence behind the prose and a blank line, `indent` spaces in, is read as part of the prose. */
export function swallowsFence(prose: string, indent: number): boolean {
  const lead = `${prose}\n\n`;
  const blocks = markdownBlocks(lead + ' '.repeat(indent) + probe);
  return !blocks.some((block) => block.type === 'code' && block.start === lead.length);
}

function closingOfBlock(text: string, block: MarkdownBlock): string {
  const source = text.slice(block.start, block.end);
  if (block.type === 'code') {
    return readFence(source)?.run ?? '';
  }
  if (block.type !== 'html') {
    return '';
  }
  const html = source.trimStart();
  const ends = [
    ['<!--', '-->'],
    ['<?', '?>'],
    ['<![CDATA[', ']]>'],
    ['<!', '>'],
  ].find(([opening]) => html.startsWith(opening));
  return ends?.[1] ?? `</${/^<([a-z]+)/i.exec(html)?.[1] ?? 'script'}>`;
}
