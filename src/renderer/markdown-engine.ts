import type MarkdownIt from 'markdown-it';
import type { Drawing } from '../drawing';

export type MarkdownEngine = InstanceType<typeof MarkdownIt>;

/** What an open sheet tells of a prose cell beside its text: each live expression, with its value where it has one. */
export type LiveMetadata = readonly (readonly [expression: string, value?: string])[];

/** What a cell's output has beside its Markdown: drawings by number, and of each table how it may be sorted. */
export interface OutputExtras {
  readonly drawings: readonly Drawing[];
  readonly tables: readonly { readonly sortable: boolean; readonly totalled: boolean }[];
}

interface Metadata {
  readonly live?: LiveMetadata;
  readonly extras?: OutputExtras;
}

/** What a prose cell or an output has beside its text, from what the Markdown renderer hands its rules. */
export const metadataOf = (env: unknown): Metadata =>
  (env as { readonly outputItem?: { readonly metadata?: Metadata } } | undefined)?.outputItem?.metadata ?? {};

/** True for the metadata of a cell that was read from a sheet, or of a sheet's output. */
export const isOurs = (metadata: unknown): boolean => {
  const { origin, extras } = (metadata ?? {}) as { readonly origin?: unknown; readonly extras?: Partial<OutputExtras> };
  return typeof origin === 'string' || extras?.drawings !== undefined;
};
