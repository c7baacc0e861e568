/** Where the command line reads and writes besides files; a test hands in its own. */
export interface Console {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Writes to standard output and waits until it takes more; false once nobody reads it any longer. */
  readonly write: (text: string) => Promise<boolean>;
  readonly readStandardInput: () => Promise<Uint8Array>;
  /** True when standard output understands colours. */
  readonly colour: boolean;
  /** True when a person sees standard error as it is written. */
  readonly errIsTerminal: boolean;
  /** Columns to lay text out in. */
  readonly width: number;
}

const widest = 100;

/** Writes to a stream at the pace that it can take. */
export function writerTo(stream: NodeJS.WritableStream): (text: string) => Promise<boolean> {
  let isOpen = true;
  stream.on('error', () => {
    isOpen = false; // The reader has gone, as `head` does: there is nobody to tell.
  });
  return (text) =>
    new Promise((resolve) => {
      if (!isOpen || stream.write(text)) {
        resolve(isOpen);
        return;
      }
      const done = () => {
        stream.off('drain', done);
        stream.off('error', done);
        resolve(isOpen);
      };
      stream.on('drain', done);
      stream.on('error', done);
    });
}

/** The process's own streams. */
export function processConsole(): Console {
  return {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    write: writerTo(process.stdout),
    colour: process.stdout.isTTY === true && !process.env.NO_COLOR,
    errIsTerminal: process.stderr.isTTY === true,
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
