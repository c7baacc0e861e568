import assert from 'node:assert/strict';
import { readdirSync, statSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join, posix } from 'node:path';
import ts from 'typescript';
import { filesBelow, root, textOf } from './source-files';

interface Row {
  readonly part: string;
  readonly allowed: readonly string[] | 'anything';
}

/** The map in DEVELOPERS.md: the one declaration of what may import what. */
function readMap(): Row[] {
  const text = textOf('DEVELOPERS.md');
  const table = text.slice(text.indexOf('| folder in src |')).split('\n\n')[0].split('\n').slice(2);
  return table.map((line) => {
    const [, part, , allowed] = line.split('|').map((cell) => cell.trim());
    return {
      part: part.replaceAll('`', '').replace(/\/$/, '').replace(/\.ts$/, ''),
      allowed: allowed === 'anything' ? 'anything' : allowed.split(',').flatMap((name) => name.trim() || []),
    };
  });
}

const map = new Map(readMap().map((row) => [row.part, row.allowed]));
const sources = filesBelow('src', '.ts');
const hosts = new Set(['cli', 'vscode', 'dev']);

/** `src/units/unit.ts` belongs to `units`, `src/core.ts` to `core`. */
const partOf = (file: string): string => file.split('/')[1].replace(/\.ts$/, '');

function importsOf(file: string): string[] {
  return ts.preProcessFile(textOf(file), true, true).importedFiles.map((imported) => imported.fileName);
}

describe('the map in DEVELOPERS.md', () => {
  it('has a row for every folder and file in src, and a folder or file for every row', () => {
    const there = readdirSync(join(root, 'src')).map((name) =>
      statSync(join(root, 'src', name)).isDirectory() ? name : name.replace(/\.ts$/, ''),
    );
    assert.deepEqual([...map.keys()].sort(), there.sort());
  });

  for (const [part, allowed] of map) {
    it(`${part} imports only what its row allows`, () => {
      const wrong: string[] = [];
      for (const file of sources.filter((source) => partOf(source) === part)) {
        for (const name of importsOf(file)) {
          if (!name.startsWith('.')) {
            continue;
          }
          const target = partOf(posix.join(posix.dirname(file), name));
          if (target !== part && allowed !== 'anything' && !allowed.includes(target)) {
            wrong.push(`${file} imports ${name}`);
          }
        }
      }
      assert.deepEqual(wrong, []);
    });
  }

  it('lets parts reach each other only through their index', () => {
    const wrong: string[] = [];
    for (const file of sources.filter((source) => partOf(source) !== 'dev')) {
      for (const name of importsOf(file).filter((imported) => imported.startsWith('.'))) {
        const target = posix.join(posix.dirname(file), name);
        if (partOf(target) !== partOf(file) && target.split('/').length > 2) {
          wrong.push(`${file} imports ${name}`);
        }
      }
    }
    assert.deepEqual(wrong, []);
  });
});

describe('what core does not import', () => {
  const importers = (wanted: (name: string) => boolean) =>
    sources.filter((file) => importsOf(file).some((name) => wanted(name)));

  it('only vscode/ imports vscode', () => {
    const wrong = importers((name) => name === 'vscode').filter((file) => partOf(file) !== 'vscode');
    assert.deepEqual(wrong, []);
  });

  it('only hosts touch files, processes and networks', () => {
    const isNode = (name: string) => name.startsWith('node:') || builtinModules.includes(name);
    assert.deepEqual(
      importers(isNode).filter((file) => !hosts.has(partOf(file))),
      [],
    );
  });

  it('one file touches mathjs', () => {
    assert.deepEqual(
      importers((name) => name === 'mathjs').filter((file) => partOf(file) !== 'dev'),
      ['src/units/mathjs-bridge.ts'],
    );
  });
});
