import { commandLine } from '../../src/cli/command-line';

export interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line in this process, without colours; `input` is standard input. */
export async function run(args: readonly string[], input: string | Uint8Array = ''): Promise<Outcome> {
  let out = '';
  let err = '';
  const code = await commandLine(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    write: async (text) => {
      out += text;
      return true;
    },
    readStandardInput: async () => (typeof input === 'string' ? new TextEncoder().encode(input) : input),
    colour: false,
    errIsTerminal: false,
    width: 100,
  });
  return { code, out, err };
}

/** A sheet of one calculation cell, whose first line is line 2 of the file. */
export const sheet = (cell: string): string => `\`\`\`kft\n${cell}\n\`\`\`\n`;
