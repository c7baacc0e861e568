import assert from 'node:assert/strict';
import { join } from 'node:path';
import { build, type Metafile } from 'esbuild';

const root = join(__dirname, '../..');

/** How a product's modules hang together, as the build sees it. */
async function modulesOf(entry: string, external: readonly string[] = []): Promise<Metafile> {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    external: ['vscode', ...external],
    bundle: true,
    write: false,
    metafile: true,
    format: 'cjs',
    platform: 'node',
    logLevel: 'error',
    outdir: 'out',
  });
  return metafile;
}

/** The modules that are run as soon as the entry is: all but those that are imported when first used. */
function runAtOnce({ inputs }: Metafile, entry: string): string[] {
  const seen = new Set([entry]);
  for (const module of seen) {
    for (const { path, kind, external } of inputs[module]?.imports ?? []) {
      if (!external && kind !== 'dynamic-import') {
        seen.add(path);
      }
    }
  }
  return [...seen];
}

describe('what the editor loads', () => {
  it('at activation is two small files of our own, and no library', async () => {
    const entry = 'src/vscode/activate.ts';
    const modules = runAtOnce(await modulesOf(entry, ['./extension']), entry);
    assert.deepEqual(modules.sort(), [entry, 'src/vscode/is-text-sheet.ts', 'src/vscode/names.ts']);
  });

  it('for the first sheet is neither mathjs, nor a typesetter, nor an exporter, nor the whole of zod', async () => {
    const entry = 'src/vscode/extension.ts';
    const modules = runAtOnce(await modulesOf(entry), entry);
    assert.ok(modules.length > 300, 'the sheets themselves are among them');
    const libraries = new Set(
      modules.flatMap((module) => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(module)?.[1] ?? []),
    );
    const late = ['mathjs', 'katex', 'mathjax', 'pdfmake', 'docx', 'write-excel-file', 'zod'];
    assert.deepEqual(
      late.filter((library) => libraries.has(library)),
      [],
      [...libraries].join(),
    );
  });
});
