import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as ts from 'typescript';
import { copyForms, originWords, reportFormats } from '../../src/core';

const root = join(__dirname, '..', '..');
const textOf = (file: string) => readFileSync(join(root, file), 'utf8');
const read = (file: string): Record<string, string> => JSON.parse(textOf(file));
const manifest = textOf('package.json');

/** Languages beside English, by their files of messages. */
const languages = readdirSync(join(root, 'l10n')).flatMap(
  (name) => /^bundle\.l10n\.(\w+)\.json$/.exec(name)?.[1] ?? [],
);

const sources = readdirSync(join(root, 'src/vscode')).map((name) =>
  ts.createSourceFile(name, textOf(join('src/vscode', name)), ts.ScriptTarget.Latest, true),
);

/** What `pick` makes of each node, from the top down; below a node that it answers for with null nothing is looked at. */
function gathered<Found>(source: ts.SourceFile, pick: (node: ts.Node) => Found | null | undefined): Found[] {
  const found: Found[] = [];
  const visit = (node: ts.Node): void => {
    const made = pick(node);
    if (made !== null && made !== undefined) {
      found.push(made);
    }
    if (made !== null) {
      ts.forEachChild(node, visit);
    }
  };
  visit(source);
  return found;
}

const isTranslation = (node: ts.Node): node is ts.CallExpression =>
  ts.isCallExpression(node) && node.expression.getText() === 'vscode.l10n.t';

/** What the editor host asks a translation for: a text, or words that core declares. */
const asked = sources.flatMap((source) =>
  gathered(source, (node) => (isTranslation(node) ? node.arguments[0] : undefined)),
);
const plain = asked.filter(ts.isStringLiteral).map(({ text }) => text);

/** Words of core that menus and views of the editor show. */
const fromCore: Readonly<Record<string, readonly string[]>> = {
  copyForms: Object.values(copyForms).flatMap(({ label, use }) => [label, use]),
  originWords: Object.values(originWords),
  reportFormats: Object.values(reportFormats).map(({ label }) => label),
};

/** Texts that no translation is asked for, though they read like words. What is not shown, or is no word, stands here. */
const untranslated = new Set([
  'Kilofoot', // The name.
  'is being read.', // Parts of a sheet's problems, which core tells in English.
  'is not there, or cannot be read. Check the name and the folder.',
]);

/** Two words in a row, or one with a capital letter: what a person would read. */
const isWords = (text: string): boolean => {
  const shown = text.replace(/<[^>]*(>|$)/g, ''); // Marks of a page are not.
  return /\p{L}{2,}[,.:]? \p{L}|^ (of|to|with) $/u.test(shown) || /^\p{Lu}\p{Ll}+$/u.test(shown);
};

/** The parts of texts outside calls for a translation. Keys, modules and what is imported are never shown. */
const loose = (source: ts.SourceFile): string[] =>
  gathered(source, (node) => {
    if (ts.isImportDeclaration(node) || isTranslation(node)) {
      return null;
    }
    const isKey = node.parent && ts.isPropertyAssignment(node.parent) && node.parent.name === node;
    const isText = ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
    return isText && !isKey && isWords(node.text) && !untranslated.has(node.text) ? node.text : undefined;
  });

const placeholders = (text: string): string[] => [...text.matchAll(/\{\d\}|\$\([\w-]+\)|`[^`]*`/g)].map(String).sort();

describe('translations', () => {
  it('have Spanish to prove them', () => assert.ok(languages.includes('es')));

  for (const source of sources) {
    it(`are asked for each text that ${source.fileName} shows`, () => assert.deepEqual(loose(source), []));
  }

  it('ask for each message with a plain text, which the bundle can be found by, or by a name for words of core', () => {
    const others = asked.filter((argument) => !ts.isStringLiteral(argument)).map((argument) => argument.getText());
    assert.deepEqual(
      others.filter((text) => !Object.hasOwn(fromCore, /^\w+/.exec(text)?.[0] ?? '')),
      [],
    );
    assert.ok(plain.length > 50 && others.length >= Object.keys(fromCore).length);
  });

  it('have in the English bundle the messages that are used, and no others', () => {
    const bundle = read('l10n/bundle.l10n.json');
    const used = new Set([...plain, ...Object.values(fromCore).flat()]);
    assert.deepEqual(Object.keys(bundle).sort(), [...used].sort());
    assert.deepEqual(Object.values(bundle), Object.keys(bundle));
  });

  it('have the texts that the manifest names, and no others', () => {
    const named = [...manifest.matchAll(/"%([\w.]+)%"/g)].map(([, key]) => key);
    assert.ok(named.length > 20);
    assert.deepEqual(Object.keys(read('package.nls.json')).sort(), [...new Set(named)].sort());
  });

  it('stand behind every text of the manifest that is shown', () => {
    const shown = /"(?:title|shortTitle|description|markdownDescription|name|altText|contents)": "(?!%)[^"]*"/g;
    const { contributes } = JSON.parse(manifest);
    assert.deepEqual(
      [...JSON.stringify(contributes, undefined, 1).matchAll(shown)]
        .map(String)
        .filter((one) => one !== '"title": "Kilofoot"'),
      [],
    );
  });

  for (const language of languages) {
    for (const [english, translated] of [
      ['l10n/bundle.l10n.json', `l10n/bundle.l10n.${language}.json`],
      ['package.nls.json', `package.nls.${language}.json`],
    ]) {
      it(`say all of ${english} in ${translated}, with the same gaps to fill`, () => {
        assert.ok(existsSync(join(root, translated)));
        const [from, to] = [read(english), read(translated)];
        assert.deepEqual(Object.keys(to).sort(), Object.keys(from).sort());
        for (const [key, text] of Object.entries(from)) {
          const gaps = (one: string) => placeholders(one.replace(/"(reason|motivo)"/, ''));
          assert.deepEqual(gaps(to[key]), gaps(text), key);
        }
      });
    }
  }

  it('are in the package', () => {
    const allowed = textOf('.vscodeignore').split('\n');
    for (const wanted of ['!l10n/**', '!package.nls.json', ...languages.map((one) => `!package.nls.${one}.json`)]) {
      assert.ok(allowed.includes(wanted), wanted);
    }
  });
});
