import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** Reads a font file: beside the built command line, or, when it runs from its sources, where it is installed. */
export const readFont = (name: string): Promise<Uint8Array> =>
  readFile(join(__dirname, 'fonts', name)).catch(() => readFile(require.resolve(`dejavu-fonts-ttf/ttf/${name}`)));
