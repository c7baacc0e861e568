import { inflateRawSync } from 'node:zlib';

/** The entries of a ZIP archive by name, opened, with the date that each is stamped with (year, month, day). */
export function entriesOf(archive: Uint8Array): Map<string, { readonly text: string; readonly date: string }> {
  const bytes = Buffer.from(archive);
  const entries = new Map<string, { text: string; date: string }>();
  let at = bytes.readUInt32LE(bytes.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1')) + 16);
  while (bytes.readUInt32LE(at) === 0x02014b50) {
    const nameLength = bytes.readUInt16LE(at + 28);
    const name = bytes.toString('utf8', at + 46, at + 46 + nameLength);
    const local = bytes.readUInt32LE(at + 42);
    const from = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const packed = bytes.subarray(from, from + bytes.readUInt32LE(at + 20));
    const stamp = bytes.readUInt16LE(at + 14);
    entries.set(name, {
      text: (bytes.readUInt16LE(at + 10) === 8 ? inflateRawSync(packed) : packed).toString('utf8'),
      date: [1980 + (stamp >> 9), (stamp >> 5) & 15, stamp & 31].join('-'),
    });
    at += 46 + nameLength + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
  }
  return entries;
}

/** A word processor document's text: a line a paragraph, cells apart by bars, a formula's parts in their order. */
export const documentText = (xml: string): string =>
  xml
    .replace(/<w:tab\/>|<w:tab [^>]*\/>(?=<w:t)/g, '\t')
    .replace(/<\/w:tc>/g, ' | ')
    .replace(/<\/w:p>(?! \| )|<\/w:tr>/g, '\n')
    .replace(/<[^>]+>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&')
    .replace(/[ \t]+$/gm, '');

/** A workbook's sheets: each with its name, then a line a row; numbers as they are stored. */
export function workbookText(entries: ReturnType<typeof entriesOf>): string {
  const strings = [...entries.get('xl/sharedStrings.xml')!.text.matchAll(/<si>([\s\S]*?)<\/si>/g)].map(([, one]) =>
    documentText(one),
  );
  const names = [...entries.get('xl/workbook.xml')!.text.matchAll(/<sheet [^>]*name="([^"]*)"/g)].map(
    ([, name]) => name,
  );
  const sheets = names.map((name, i) => {
    const rows = [...entries.get(`xl/worksheets/sheet${i + 1}.xml`)!.text.matchAll(/<row[^>]*>([\s\S]*?)<\/row>/g)];
    const lines = rows.map(([, row]) =>
      [...row.matchAll(/<c ([^>]*?)(?:\/>|>(?:<v>([^<]*)<\/v>)?[\s\S]*?<\/c>)/g)]
        .map(([, attributes, value = '']) => (/t="s"/.test(attributes) ? strings[Number(value)] : value))
        .join(' | '),
    );
    return [`# ${name}`, ...lines].join('\n');
  });
  return `${sheets.join('\n\n')}\n`;
}
