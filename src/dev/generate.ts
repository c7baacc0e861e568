/**
 * Rewrites the generated documents, and the generated parts of the README, from the definitions: `npm run generate`. The test in
 * `test/architecture/generated.test.ts` fails when they are out of date.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { tradeFunctions } from '../functions';
import { rules } from '../lints';
import { listTables } from '../tables';
import { functionDocument } from './function-document';
import { languageDocument } from './language-document';
import { lintDocument } from './lint-document';
import { markdownTable } from './markdown-table';
import { problemDocument } from './problem-document';
import { proofsDocument } from './proofs-document';

const root = join(__dirname, '..', '..');
const readme = join(root, 'README.md');

const sections: Readonly<Record<string, () => string>> = {
  functions: () =>
    markdownTable(
      ['function', 'gives'],
      tradeFunctions.map((f) => [`\`${f.name}\``, f.summary]),
    ),
  lints: () =>
    markdownTable(
      ['lint', 'severity', 'says'],
      rules.map((lint) => [`\`${lint.id}\``, lint.severity, lint.summary]),
    ),
  tables: () =>
    markdownTable(
      ['table', 'standard', 'editions', 'rows'],
      listTables().map((t) => [t.title, t.standard, t.editions.join(', '), String(t.rows)]),
    ),
};

/** The README with its generated parts made anew. */
export function generatedReadme(text: string): string {
  return text.replace(
    /(<!-- generated: (\w+) -->\n)[\s\S]*?(<!-- end -->)/g,
    (_, open: string, name: string, close: string) => `${open}${sections[name]()}\n${close}`,
  );
}

/** Documents that are generated whole, by their place in the tree. */
export const generatedDocuments: Readonly<Record<string, () => string>> = {
  'docs/functions.md': functionDocument,
  'docs/language.md': languageDocument,
  'docs/lints.md': lintDocument,
  'docs/problems.md': problemDocument,
  'docs/proofs.md': proofsDocument,
};

if (require.main === module) {
  for (const [place, made] of Object.entries(generatedDocuments)) {
    writeFileSync(join(root, place), made());
  }
  writeFileSync(readme, generatedReadme(readFileSync(readme, 'utf8')));
}
