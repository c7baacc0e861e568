import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(__dirname, '..', '..');
const textOf = (file: string) => readFileSync(join(root, file), 'utf8');
const read = (file: string): Record<string, string> => JSON.parse(textOf(file));
const manifest = textOf('package.json');

/** Languages beside English, by their files of messages. */
const languages = readdirSync(join(root, 'l10n')).flatMap(
  (name) => /^bundle\.l10n\.(\w+)\.json$/.exec(name)?.[1] ?? [],
);

/** Every message that the editor host asks a translation for. */
const asked = readdirSync(join(root, 'src/vscode')).flatMap((name) =>
  [...textOf(join('src/vscode', name)).matchAll(/l10n\.t\(\s*'((?:[^'\\]|\\.)*)'/g)].map(([, message]) => message),
);

const placeholders = (text: string): string[] => [...text.matchAll(/\{\d\}|\$\([\w-]+\)|`[^`]*`/g)].map(String).sort();

describe('translations', () => {
  it('have Spanish to prove them', () => assert.ok(languages.includes('es')));

  it('ask for each message with a plain text, which the bundle can be found by', () => {
    const calls = readdirSync(join(root, 'src/vscode')).flatMap((name) => [
      ...textOf(join('src/vscode', name)).matchAll(/l10n\.t\(/g),
    ]);
    assert.equal(asked.length, calls.length);
  });

  it('have in the English bundle the messages that are used, and no others', () => {
    const bundle = read('l10n/bundle.l10n.json');
    assert.deepEqual(Object.keys(bundle).sort(), [...new Set(asked)].sort());
    assert.deepEqual(Object.values(bundle), Object.keys(bundle));
  });

  it('have the texts that the manifest names, and no others', () => {
    const named = [...manifest.matchAll(/"%([\w.]+)%"/g)].map(([, key]) => key);
    assert.ok(named.length > 20);
    assert.deepEqual(Object.keys(read('package.nls.json')).sort(), [...new Set(named)].sort());
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
