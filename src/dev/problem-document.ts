import { problemPage } from '../session';
import { type Problem, problemGroups } from '../text';

/** The pages of all problems that the language, the functions and the files can have, as one document. */
export function problemDocument(): string {
  const groups = problemGroups.map(({ title, problems }) => ({ title, problems: Object.entries<Problem>(problems) }));
  return [
    '# What can be wrong with a sheet',
    'Generated from the definitions by `npm run generate`; every example is evaluated. Each problem is told with its place ' +
      'and this code, in the editor and on the command line; `kilofoot explain` and the link on the code show its page. ' +
      'What the trade’s rules have to say of a sheet is another matter: [the warnings](lints.md).',
    ...groups.map(({ title, problems }) =>
      [`**${title}**`, problems.map(([code, { means }]) => `- [\`${code}\`](#${code}): ${means}`).join('\n')].join(
        '\n\n',
      ),
    ),
    // Two heading levels deeper: each page is a section of its group's chapter.
    ...groups.map(({ title, problems }) =>
      [`## ${title}`, ...problems.map(([code]) => problemPage(code)!.replace(/^# /, '### ').trimEnd())].join('\n\n'),
    ),
  ]
    .join('\n\n')
    .concat('\n');
}
