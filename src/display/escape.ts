import { oneLine } from './value';

/**
 * Text on one line of Markdown that shows just that text: every sign that could begin markup is escaped, and so is what
 * would make a list, a heading or a rule of the line.
 */
export const escapeMarkdown = (text: string): string =>
  oneLine(text)
    .trim()
    .replace(/[\\`*_[\]{}<>&~$|#!^]/g, '\\$&')
    .replace(/^[-+=]/, '\\$&')
    .replace(/^(\d+)([.)])(?=\s|$)/, '$1\\$2');

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text on one line of HTML. */
export const escapeHtml = (text: string): string => oneLine(text).replace(/[&<>"']/g, (c) => entities[c]);
