import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { functionSignature, toText } from '../display';
import { mathematics, measurement } from '../language';
import { evaluateSheet } from '../session';
import { namedUnits } from '../units';
import { frontMatterTables } from './front-matter-document';
import { markdownTable } from './markdown-table';

const place = join(__dirname, '..', '..', 'docs', 'language.md');

const tables: Readonly<Record<string, () => string>> = {
  ...frontMatterTables,
  mathematics: () =>
    markdownTable(
      ['function', 'gives'],
      [...measurement, ...mathematics].map((definition) => [
        `\`${functionSignature(definition)}\``,
        definition.summary,
      ]),
    ),
  units: () =>
    markdownTable(
      ['unit', 'is', 'also written', 'prefixes'],
      namedUnits.map(({ symbol, name, also = [], prefixes = '' }) => [
        `\`${symbol}\``,
        name,
        also.map((spelling) => `\`${spelling}\``).join(', '),
        [...prefixes].join(' '),
      ]),
    ),
};

const cell = /(```kft\n[\s\S]*?```\n)(?:\n```text\n[\s\S]*?```\n)?/g;

/** The page about the language with the results below its cells, and its tables, made anew. */
export function languageDocument(): string {
  const text = readFileSync(place, 'utf8');
  return text
    .split(/^(?=## )/m)
    .map(withResults)
    .join('')
    .replace(
      /(<!-- generated: (\w+) -->\n)[\s\S]*?(<!-- end -->)/g,
      (_, open: string, name: string, close: string) => `${open}${tables[name]()}\n${close}`,
    );
}

/** A chapter, which is a sheet of its own, with what each cell shows and what is said about it below. */
function withResults(chapter: string): string {
  const bare = chapter.replace(cell, '$1');
  const { cells, diagnostics } = evaluateSheet(bare);
  const calculations = cells.flatMap(({ cell: { kind }, blocks }) => (kind === 'calculation' ? [toText(blocks)] : []));
  let at = 0;
  return bare.replace(cell, (whole, _, offset: number) => {
    const first = bare.slice(0, offset).split('\n').length;
    const last = first + whole.split('\n').length - 1;
    const said = diagnostics
      .filter(({ line }) => line >= first && line < last)
      .map(({ line, severity, code, message }) => `${severity} in line ${line - first}, ${code}: ${message}`);
    const shown = [calculations[at++], ...said].filter(Boolean).join('\n');
    return `${whole}\n\`\`\`text\n${shown}\n\`\`\`\n`;
  });
}
