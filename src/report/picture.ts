import { toBase64 } from '../notebook';
import type { Part } from './document';

/** The files of pictures by the names that the prose calls them, or why one is not to be had. */
export type PictureFiles = ReadonlyMap<string, Uint8Array | { readonly problem: string }>;

/** A picture that a report can hold. */
export interface PictureFile {
  readonly type: 'png' | 'jpeg' | 'svg';
  readonly bytes: Uint8Array;
  /** In pixels of 1/96 inch. */
  readonly width: number;
  readonly height: number;
}

/** A picture of the prose: itself, or a line that says why it is left out, and what would have been on it. */
export function picturePart(alt: string, source: string, files: PictureFiles): Part {
  const file = files.get(source) ?? { problem: 'is not there.' };
  const read = 'problem' in file ? file : readPicture(file);
  return 'problem' in read ? leftOut(alt, source, read.problem) : { kind: 'picture', alt, source, file: read };
}

/** What stands in a picture's place. */
export const leftOut = (alt: string, source: string, why: string): Part => {
  const text = `Picture left out${alt === '' ? '' : ` (${alt})`}: ${source} ${why}`;
  return { kind: 'paragraph', content: [{ kind: 'text', text, style: 'emphasis' }] };
};

/** Tells by its content, whatever its name says, what a file is and how large. */
export function readPicture(bytes: Uint8Array): PictureFile | { readonly problem: string } {
  const read = pngSize(bytes) ?? jpegSize(bytes) ?? svgSize(bytes);
  if (!read) {
    return { problem: 'is no PNG, JPEG or SVG picture.' };
  }
  if (read.type === 'svg' && reachesOut.test(new TextDecoder().decode(bytes))) {
    return { problem: 'holds a script or a picture of its own, which a report does not take over.' };
  }
  return read.width > 0 && read.height > 0 ? { ...read, bytes } : { problem: 'has no size.' };
}

type Read = Omit<PictureFile, 'bytes'> | undefined;

const reachesOut = /<(script|image|foreignObject|use|style)\b|\b(href|on\w+)\s*=|url\s*\(|<!ENTITY/i;

/** Source: PNG specification (ISO/IEC 15948), 5.2 and 11.2.2. */
function pngSize(bytes: Uint8Array): Read {
  const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
  if (bytes.length < 24 || signature.some((byte, i) => bytes[i] !== byte)) {
    return undefined;
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  return { type: 'png', width: view.getUint32(16), height: view.getUint32(20) };
}

/** Source: ITU-T T.81, B.1.1.3 and B.2.2: the size stands in the frame header. */
function jpegSize(bytes: Uint8Array): Read {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) {
    return undefined;
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 2; at + 9 < bytes.length && bytes[at] === 0xff; at += 2 + view.getUint16(at + 2)) {
    const marker = bytes[at + 1];
    const isFrame = marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
    if (isFrame) {
      return { type: 'jpeg', height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    }
  }
  return undefined;
}

function svgSize(bytes: Uint8Array): Read {
  const text = new TextDecoder().decode(bytes);
  const tag = /^\uFEFF?\s*(?:<\?xml[^>]*>\s*)?(?:<!--[\s\S]*?-->\s*)*(<svg\b[^>]*>)/.exec(text)?.[1];
  if (tag === undefined) {
    return undefined;
  }
  const [, , boxWidth, boxHeight] = (/\bviewBox\s*=\s*["']([^"']*)/.exec(tag)?.[1] ?? '').split(/[\s,]+/).map(Number);
  const size = (name: string) => Number(new RegExp(`\\s${name}\\s*=\\s*["']([\\d.]+)(?:px)?["']`).exec(tag)?.[1]);
  return { type: 'svg', width: size('width') || boxWidth || 0, height: size('height') || boxHeight || 0 };
}

/** The whole picture as an address, for a page that needs nothing else. */
export const dataAddress = ({ type, bytes }: PictureFile): string =>
  `data:image/${type === 'svg' ? 'svg+xml' : type};base64,${toBase64(bytes)}`;

/** As large as it is, or as fits; in the unit of the room, of which a pixel is `perPixel`. */
export function fitted(
  { width, height }: PictureFile,
  room: { readonly width: number; readonly height: number },
  perPixel: number,
): { readonly width: number; readonly height: number } {
  const scale = Math.min(perPixel, room.width / width, room.height / height);
  return { width: width * scale, height: height * scale };
}
