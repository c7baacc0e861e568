import { oneLine } from './value';

/**
 * Text on one line of Markdown that shows just that text: every sign that could begin markup is escaped, and so is what
 * would make a list, a heading or a rule of the line.
 */
export const escapeMarkdown = (text: string): string => beginningLine(escapeMarks(oneLine(text).trim()));

const escapeMarks = (text: string): string => text.replace(/[\\`*_[\]{}<>&~$|#!^]/g, '\\$&');

const beginningLine = (markdown: string): string =>
  markdown.replace(/^[-+=]/, '\\$&').replace(/^(\d+)([.)])(?=\s|$)/, '$1\\$2');

/** The parts of a message: what stands between backticks is code, and every other part plain text. */
export const codeParts = (message: string): { readonly text: string; readonly isCode: boolean }[] =>
  message
    .split(/`([^`]+)`/)
    .map((text, i) => ({ text, isCode: i % 2 === 1 }))
    .filter(({ text }) => text !== '');

/** A message as one line of Markdown: its code stays code, and nothing else in it is a mark. */
export const messageMarkdown = (message: string): string =>
  beginningLine(
    codeParts(oneLine(message).trim())
      .map(({ text, isCode }) => (isCode ? `\`${text}\`` : escapeMarks(text)))
      .join(''),
  );

/** A message where no code can be set apart: quotation marks take the place of the backticks. */
export const messageText = (message: string): string =>
  codeParts(message)
    .map(({ text, isCode }) => (isCode ? `“${text}”` : text))
    .join('');

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text on one line of HTML. */
export const escapeHtml = (text: string): string => oneLine(text).replace(/[&<>"']/g, (c) => entities[c]);
