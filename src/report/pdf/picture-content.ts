import type { Part } from '../document';
import { fitted, leftOut } from '../picture';
import { type Content, texts } from './inline-content';
import type { PictureShelf } from './picture-files';
import { Tag } from './tag';

/** In points. A higher one leaves no room for the words that go with it. */
const highest = 420;
const pointsPerPixel = 0.75;

/** A picture of the prose, with what stands in its place where the library cannot read it. */
export function pictureOnPage(
  { alt, source, file }: Part & { kind: 'picture' },
  width: number,
  shelf: PictureShelf,
): Content {
  const size = fitted(file, { width, height: highest }, pointsPerPixel);
  const shared = { ...size, margin: [0, 3, 0, 6], tag: new Tag('Figure', { alt: alt || source }) };
  const instead = leftOut(alt, source, 'cannot be read as a picture.');
  const note = instead.kind === 'paragraph' ? { text: texts(instead.content), tag: new Tag('P') } : {};
  if (file.type === 'svg') {
    return { ...shared, svg: new TextDecoder().decode(file.bytes), font: 'Text', instead: note };
  }
  const name = shelf.nameOf(file);
  return name === undefined ? note : { ...shared, image: name };
}
