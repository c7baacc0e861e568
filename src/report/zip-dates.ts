const localHeader = 0x04034b50;
const centralHeader = 0x02014b50;
const endOfDirectory = 0x06054b50;
const endLength = 22;

/**
 * Puts one moment in the place of the times at which an archive's entries were packed, which are in every header. The
 * archive is changed and given back. Source: APPNOTE.TXT of the ZIP format, sections 4.3 and 4.4.6.
 */
export function stampZip(archive: Uint8Array, when: Date): Uint8Array {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength);
  let end = archive.length - endLength;
  while (end >= 0 && view.getUint32(end, true) !== endOfDirectory) {
    end--;
  }
  if (end < 0) {
    return archive;
  }
  const date = ((when.getUTCFullYear() - 1980) << 9) | ((when.getUTCMonth() + 1) << 5) | when.getUTCDate();
  let entry = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0 && view.getUint32(entry, true) === centralHeader; left--) {
    stamp(view, entry + 12, date);
    const local = view.getUint32(entry + 42, true);
    if (view.getUint32(local, true) === localHeader) {
      stamp(view, local + 10, date);
    }
    entry +=
      46 + view.getUint16(entry + 28, true) + view.getUint16(entry + 30, true) + view.getUint16(entry + 32, true);
  }
  return archive;
}

/** Time, midnight, then date. */
function stamp(view: DataView, at: number, date: number): void {
  view.setUint16(at, 0, true);
  view.setUint16(at + 2, date, true);
}
