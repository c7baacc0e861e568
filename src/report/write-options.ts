/** Told what is being written: in words, and how much of the whole is done, from 0 to 1. */
export type ReportProgress = (step: { readonly doing: string; readonly share: number }) => void;

/** What a host lends the writers. */
export interface WriteOptions {
  /** Reads a font file by its name. */
  readonly font: (name: string) => Promise<Uint8Array>;
  /** Called often, also where nothing else can run in between: a host shows what it has time for. */
  readonly progress?: ReportProgress;
}
