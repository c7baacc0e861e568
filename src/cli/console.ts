/** Where the command line reads and writes besides files; a test hands in its own. */
export interface Console {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly readStandardInput: () => Promise<Uint8Array>;
  /** True when standard output understands colours. */
  readonly colour: boolean;
  /** Columns to lay text out in. */
  readonly width: number;
}

const widest = 100;

/** The process's own streams. */
export function processConsole(): Console {
  return {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    colour: process.stdout.isTTY === true && !process.env.NO_COLOR,
    width: Math.min(process.stdout.columns || widest, widest),
    async readStandardInput() {
      const chunks: Buffer[] = [];
      for await (const chunk of process.stdin) {
        chunks.push(chunk as Buffer);
      }
      return new Uint8Array(Buffer.concat(chunks));
    },
  };
}
