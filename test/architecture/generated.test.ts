import assert from 'node:assert/strict';
import { generatedReadme } from '../../src/dev/generate';
import { textOf } from './source-files';

describe('generated documents', () => {
  it('the README tells what the definitions say (npm run generate)', () => {
    const text = textOf('README.md');
    assert.equal(generatedReadme(text), text);
  });
});
