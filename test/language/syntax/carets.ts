const caretLine = /^ *\^+ [a-z-]+: /;

/** The cell in a fixture: its lines without those that mark problems. */
export const withoutCarets = (fixture: string): string =>
  fixture
    .split('\n')
    .filter((line) => !caretLine.test(line))
    .join('\n');

export { withCarets } from '../../../src/text';
