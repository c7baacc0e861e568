import { createLibrary } from '../library';
import { editionOf, lintPage, rules } from '../lints';

/** The pages of all lints as one document. */
export function lintDocument(): string {
  const library = createLibrary();
  const edition = 'problem' in library ? '' : editionOf(library.settings);
  const head = [
    '# What Kilofoot warns about',
    'Generated from the definitions by `npm run generate`. Sections are numbered as in the default code edition.',
    rules.map(({ id, severity, summary }) => `- [\`${id}\`](#${id}) (${severity}): ${summary}`).join('\n'),
  ];
  // One heading level deeper: each page is a chapter here.
  const pages = rules.map((rule) => lintPage(rule, edition).replace(/^#/gm, '##').trimEnd());
  return `${[...head, ...pages].join('\n\n')}\n`;
}
