import assert from 'node:assert/strict';
import { createColors } from 'picocolors';
import { pageText } from '../../src/cli/page-text';

describe('a reference page on a terminal', () => {
  it('lines tables up and drops marks and escapes', () => {
    const page = [
      '# Title',
      '',
      '**Bold** and `code` \\(NFPA 70\\)',
      '',
      '| size | A |',
      '| --- | --- |',
      '| **12 AWG** | 20 |',
      '| a \\| b | |',
      '',
      '```kft',
      'x = a * b * c',
      '```',
    ];
    assert.deepEqual(pageText(page.join('\n'), createColors(false)).split('\n'), [
      'Title',
      '',
      'Bold and code (NFPA 70)',
      '',
      '  size    A',
      '  12 AWG  20',
      '  a | b',
      '',
      '    x = a * b * c',
    ]);
  });

  it('keeps the fences of a sheet that stands within a longer fence', () => {
    const page = ['````markdown', '```kft', 'x = 3 V', '```', '', '| a |', '````', '**end**'];
    assert.deepEqual(pageText(page.join('\n'), createColors(false)).split('\n'), [
      '    ```kft',
      '    x = 3 V',
      '    ```',
      '    ',
      '    | a |',
      'end',
    ]);
  });
});
