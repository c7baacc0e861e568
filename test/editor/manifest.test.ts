import assert from 'node:assert/strict';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { tokenModifiers, tokenTypes } from '../../src/core';
import { commands, languageId, notebookType, schemes, settings, views } from '../../src/vscode/names';
import { manifest } from './english-manifest';

const root = join(__dirname, '..', '..');
const { contributes } = manifest;

describe('the manifest', () => {
  it('declares the ids that the code uses', () => {
    assert.equal(contributes.notebooks[0].type, notebookType);
    assert.equal(contributes.languages[0].id, languageId);
    assert.deepEqual(
      contributes.commands.map(({ command }: { command: string }) => command).sort(),
      Object.values(commands).sort(),
    );
    assert.deepEqual(
      Object.keys(contributes.configuration.properties).sort(),
      [settings.refresh, settings.lineEnds, settings.severities].map((name) => `${settings.section}.${name}`).sort(),
    );
  });

  it('declares its view, and each menu asks for a command that is there', () => {
    assert.deepEqual(
      contributes.views.explorer.map(({ id }: { id: string }) => id),
      [views.values],
    );
    const known = new Set<string>(Object.values(commands));
    const asked = Object.values<{ command: string }[]>(contributes.menus).flat();
    assert.deepEqual(
      asked.map(({ command }) => command).filter((command) => !known.has(command)),
      [],
    );
  });

  it('lists the short file ending first, which an untitled sheet is saved under', () => {
    const patterns = contributes.notebooks[0].selector.map((s: { filenamePattern: string }) => s.filenamePattern);
    assert.deepEqual(patterns, ['*.kft', '*.kft.md']);
  });

  it('has the pages that tell why wrap their lines, in a language known by their folder', () => {
    const language = contributes.languages.find(({ id }: { id: string }) => id === schemes.why);
    assert.deepEqual(language.filenamePatterns, [`**/${schemes.why}/*`]);
    assert.equal(contributes.configurationDefaults[`[${schemes.why}]`]['editor.wordWrap'], 'on');
  });

  it('describes every setting', () => {
    for (const [name, setting] of Object.entries<{ markdownDescription?: string }>(
      contributes.configuration.properties,
    )) {
      assert.ok((setting.markdownDescription ?? '').length > 40, name);
    }
  });

  it('points at files that are there', () => {
    const paths = [
      manifest.icon,
      contributes.languages[0].configuration,
      ...contributes.grammars.map(({ path }: { path: string }) => path),
    ];
    assert.deepEqual(
      paths.filter((path) => !existsSync(join(root, path))),
      [],
    );
  });

  it('declares the tokens that are not among the editor\u2019s own', () => {
    const own = ['variable', 'function', 'property', 'declaration'];
    const declared = (list: readonly { id: string }[]) => list.map(({ id }) => id);
    assert.deepEqual(
      declared(contributes.semanticTokenTypes),
      tokenTypes.filter((type) => !own.includes(type)),
    );
    assert.deepEqual(
      declared(contributes.semanticTokenModifiers),
      tokenModifiers.filter((modifier) => !own.includes(modifier)),
    );
  });

  it('colours the same scope that the Markdown injection embeds', () => {
    const [cells, prose] = contributes.grammars;
    const read = (path: string) => JSON.parse(readFileSync(join(root, path), 'utf8'));
    assert.equal(read(cells.path).scopeName, cells.scopeName);
    const injection = readFileSync(join(root, prose.path), 'utf8');
    assert.equal(read(prose.path).scopeName, prose.scopeName);
    for (const scope of Object.keys(prose.embeddedLanguages)) {
      assert.ok(injection.includes(`"${scope}"`), `${scope} is not in the injection`);
    }
  });
});
