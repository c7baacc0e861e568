import type PDFDocument from 'pdfmake/js/PDFDocument.js';
import type { Part, ReportDocument } from '../document';
import { dataAddress, type PictureFile } from '../picture';

/** The pictures that a document places, each once, by the names that its pages know them by. */
export class PictureShelf {
  readonly addresses: Record<string, string> = {};
  private readonly names = new Map<Uint8Array, string>();

  /** Pictures that break off are left where they are, because the library gives up on them in the middle of the work. */
  static async of({ sections }: ReportDocument): Promise<PictureShelf> {
    const shelf = new PictureShelf();
    for (const { file } of sections.flatMap(({ parts }) => parts.filter(isPicture))) {
      if (file.type !== 'svg' && !shelf.names.has(file.bytes) && (await isWhole(file))) {
        const name = `picture-${shelf.names.size + 1}`;
        shelf.names.set(file.bytes, name);
        shelf.addresses[name] = dataAddress(file);
      }
    }
    return shelf;
  }

  /** Undefined for one that the library cannot read. */
  nameOf({ bytes }: PictureFile): string | undefined {
    return this.names.get(bytes);
  }
}

const isPicture = (part: Part): part is Part & { kind: 'picture' } => part.kind === 'picture';

/** Puts pictures into a document one after the other: the library unpacks them apart, and the first to be ready would come first. */
export async function embed(document: PDFDocument, names: readonly string[]): Promise<void> {
  for (const name of names) {
    const image = document.provideImage(name);
    while (image.imgData) {
      await new Promise((resolve) => setTimeout(resolve));
    }
  }
}

async function isWhole({ type, bytes }: PictureFile): Promise<boolean> {
  if (type === 'jpeg') {
    return bytes[bytes.length - 2] === 0xff && bytes[bytes.length - 1] === 0xd9; // The marker of the end.
  }
  const packed = packedPixels(bytes);
  try {
    return packed !== undefined && (await unpackedLength(packed)) > 0;
  } catch {
    return false;
  }
}

/** The parts of a PNG's picture one behind the other; undefined where the file ends before its last chunk. */
function packedPixels(bytes: Uint8Array): Uint8Array[] | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const found: Uint8Array[] = [];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const kind = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (kind === 'IEND') {
      return found;
    }
    if (kind === 'IDAT') {
      found.push(bytes.subarray(at + 8, at + 8 + length));
    }
    at += length + 12;
  }
  return undefined;
}

async function unpackedLength(packed: readonly Uint8Array[]): Promise<number> {
  const stream = new Blob(packed.map((part) => part.slice())).stream().pipeThrough(new DecompressionStream('deflate'));
  return (await new Response(stream).arrayBuffer()).byteLength;
}
