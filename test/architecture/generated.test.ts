import assert from 'node:assert/strict';
import { generatedDocuments, generatedReadme } from '../../src/dev/generate';
import { textOf } from './source-files';

describe('generated documents', () => {
  it('the README tells what the definitions say (npm run generate)', () => {
    const text = textOf('README.md');
    assert.equal(generatedReadme(text), text);
  });

  for (const [place, made] of Object.entries(generatedDocuments)) {
    it(`${place} is what the definitions say (npm run generate)`, () => assert.equal(textOf(place), made()));
  }

  it('the page about the language shows errors in the chapters about them only', () => {
    const chapters = textOf('docs/language.md').split(/^(?=## )/m);
    assert.deepEqual(
      chapters.filter((chapter) => /^error in line/m.test(chapter)).map((chapter) => chapter.split('\n')[0]),
      ['## When a warning is wrong here', '## When something is wrong'],
    );
  });
});
