import { oneLine } from './value';

/** Text on one line of Markdown that shows just that text: every sign that could begin markup is escaped. */
export const escapeMarkdown = (text: string): string => oneLine(text).replace(/[\\`*_[\]{}<>&~$|#!^=]/g, '\\$&');

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text on one line of HTML. */
export const escapeHtml = (text: string): string => oneLine(text).replace(/[&<>"']/g, (c) => entities[c]);
