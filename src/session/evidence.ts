import type { Block } from '../display';

/** What the results rest on. */
export interface Evidence {
  /** Tables that values were read from, each once, in order of use. */
  readonly sources: readonly { readonly source: string; readonly fromMemory: boolean }[];
  /** What was taken as true though the sheet does not say it, each once. */
  readonly assumptions: readonly string[];
}

/** The tables and assumptions behind what is shown. */
export function evidenceOf(blocks: readonly Block[]): Evidence {
  const sources = new Map<string, boolean>();
  const assumptions = new Set<string>();
  const visit = (block: Block): void => {
    if (block.kind === 'group') {
      block.blocks.forEach(visit);
    } else if (block.kind === 'lookup') {
      sources.set(block.source, block.fromMemory || (sources.get(block.source) ?? false));
    } else if (block.kind === 'assumption') {
      assumptions.add(block.text);
    }
  };
  blocks.forEach(visit);
  return {
    sources: [...sources].map(([source, fromMemory]) => ({ source, fromMemory })),
    assumptions: [...assumptions],
  };
}
