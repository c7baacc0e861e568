import type { Diagnostic, Span } from '../text';
import type { ReadFrontMatter } from './front-matter';

/** The sheet format that is read and written here. A sheet need not say it; one in a later format says `format: 2`. */
export const formatVersion = 1;

/** True for what names a format. Other texts behind `format:` are about something else, such as the paper. */
export const isFormat = (written: string): boolean => /^\d{1,9}$/.test(written);

const code = 'newer-format';

/** What is to be told of `format:` in the front matter; nothing where it names this format or none at all. */
export function newerFormat(written: string, span: Span): Diagnostic | undefined {
  if (!isFormat(written) || Number(written) <= formatVersion) {
    return undefined;
  }
  const message =
    `This sheet is in format ${written}; this version of Kilofoot reads format ${formatVersion}. What is new may be missing ` +
    'here or mean something else, so do not rely on these results. Update Kilofoot. Until then nothing in the file is ' +
    'laid out anew, and saving changes only what you type.';
  return { code, severity: 'error', span, message };
}

/** The problem of a sheet that says it is in a later format: nothing but what a person types may change in it. */
export const newerFormatIn = ({ diagnostics }: ReadFrontMatter): Diagnostic | undefined =>
  diagnostics.find((problem) => problem.code === code);
