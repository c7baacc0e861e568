import type { Block } from '../display';

/** What the results rest on. */
export interface Evidence {
  /** Tables that values were read from, each once, in order of use. */
  readonly sources: readonly { readonly source: string; readonly fromMemory: boolean }[];
  /** What was taken as true though the sheet does not say it, each once, with the function that took it. */
  readonly assumptions: readonly string[];
}

/** The tables and assumptions behind what is shown. */
export function evidenceOf(blocks: readonly Block[]): Evidence {
  const sources = new Map<string, boolean>();
  const assumptions = new Set<string>();
  const visit = (block: Block, call?: string): void => {
    if (block.kind === 'group') {
      const called = /^(\w+)\(/.exec(block.title)?.[1];
      for (const inner of block.blocks) {
        visit(inner, called);
      }
    } else if (block.kind === 'lookup') {
      sources.set(block.source, block.fromMemory || (sources.get(block.source) ?? false));
    } else if (block.kind === 'assumption') {
      assumptions.add(call === undefined ? block.text : `${call}: ${block.text}`);
    }
  };
  for (const block of blocks) {
    visit(block);
  }
  return {
    sources: [...sources].map(([source, fromMemory]) => ({ source, fromMemory })),
    assumptions: [...assumptions],
  };
}
