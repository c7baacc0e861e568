import fc from 'fast-check';
import type { SheetCell } from '../../src/notebook';

/** Lines that matter to Markdown or to the sheet format, and some that matter to neither. */
const line = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    '```kft',
    '```',
    '~~~ kft  title="x"',
    '~~~',
    '````kft',
    '````',
    '  ```kft',
    '   ```',
    '    ```kft',
    '```python',
    '```\tkft',
    '<!-- cell -->',
    ' <!-- cell --> ',
    '<!-- cell --> more',
    '<!--',
    '-->',
    '<div>',
    '</div>',
    '<script>',
    '---',
    'title: Kiln',
    '- item',
    '> quote',
    '1. one',
    '| a | b |',
    '| --- | --- |',
    '[^1]: note',
    '[a]: <b',
    '<?php',
    '<![CDATA[',
    '<!DOCTYPE',
    '\ttabbed',
    '  \tmixed',
    'I = 5 A',
    '\uFEFF',
    '# Heading  ',
    '===',
    '\u00A0',
    '\u2028',
    'Ω 240 V',
  ),
  fc.string({ maxLength: 12 }).map((text) => text.replace(/[\r\n\0]/g, '')),
);

export const markdownish = fc
  .array(fc.tuple(line, fc.constantFrom('\n', '\n', '\n', '\r\n', '\r')), { maxLength: 14 })
  .chain((lines) =>
    fc.boolean().map((ended) => {
      const text = lines.map(([content, end]) => content + end).join('');
      return ended ? text : text.replace(/(\r\n|\n|\r)$/, '');
    }),
  );

export const cellText = fc.array(line, { maxLength: 6 }).map((lines) => lines.join('\n'));

export const newCell: fc.Arbitrary<SheetCell> = fc.record({
  kind: fc.constantFrom('prose' as const, 'calculation' as const),
  text: cellText,
});

export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
export const textOfBytes = (bytes: Uint8Array): string => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
