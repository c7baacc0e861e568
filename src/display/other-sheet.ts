import type { Block } from './output';

/** A sheet that a value is taken from. */
export interface OtherSheet {
  /** As it is called in the block's text: by the sheet that takes from it. */
  readonly name: string;
  /** The way to it from the folder of the sheet that is shown, with `/` between its parts; empty where there is none. */
  readonly path: string;
}

/** Blocks of a sheet as they are shown elsewhere; `folder` is the way from there to the sheet's folder, null where none leads. */
export const seenFrom = (folder: string | null, blocks: readonly Block[]): Block[] =>
  blocks.map((block) => {
    if (block.kind !== 'maths' && block.kind !== 'group') {
      return block;
    }
    const from = block.from && {
      from: { ...block.from, path: folder === null ? '' : wayOver(folder, block.from.path) },
    };
    return block.kind === 'group'
      ? { ...block, ...from, blocks: seenFrom(folder, block.blocks) }
      : { ...block, ...from };
  });

/** The folder part of a way; empty for a file beside. */
export const folderPart = (way: string): string => way.slice(0, Math.max(0, way.lastIndexOf('/')));

/** One way behind the other, without detours. */
function wayOver(folder: string, way: string): string {
  const parts: string[] = [];
  for (const part of `${folder}/${way}`.split('/')) {
    if (part === '..' && parts.length > 0 && parts.at(-1) !== '..') {
      parts.pop();
    } else if (part !== '' && part !== '.') {
      parts.push(part);
    }
  }
  return parts.join('/');
}
