import { oneLine } from './value';

/** Characters that mean something in LaTeX or HTML, as commands of mathematics that KaTeX and MathJax share. */
const commands: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '\\': '\\backslash ',
    '{': '\\{',
    '}': '\\}',
    $: '\\$',
    '&': '\\&',
    '#': '\\#',
    _: '\\_',
    '%': '\\%',
    '^': '\\wedge ',
    '~': '\\sim ',
    '<': '\\lt ',
    '>': '\\gt ',
  }),
);

/** Any text as upright LaTeX that shows just that text, whatever is in it. */
export function textLatex(text: string): string {
  const parts = oneLine(text).match(/[\\{}$&#_%^~<>]|[^\\{}$&#_%^~<>]+/g) ?? [];
  return parts.map((part) => commands.get(part) ?? `\\text{${part}}`).join('');
}
