/** What a host lends the writers. */
export interface WriteOptions {
  /** Reads a font file by its name. */
  readonly font: (name: string) => Promise<Uint8Array>;
  /** Told what is going on, for long reports. */
  readonly progress?: (doing: string) => void;
}
