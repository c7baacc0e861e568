/**
 * Builds what is shipped into `dist/`: the extension for Node and for the browser, and the command line. With
 * `--tests` also the suite that runs inside VS Code, into `out/`.
 */
import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { type BuildOptions, build, type Plugin } from 'esbuild';
import { fontFiles, reportFormats } from '../report';

const root = join(__dirname, '..', '..');

/** Starter sheets by file name, made part of the extension because a browser host cannot list folders. */
function starterSheets(): Record<string, string> {
  const names = readdirSync(join(root, 'seeds')).filter((name) => name.endsWith('.kft.md'));
  return Object.fromEntries(names.sort().map((name) => [name, readFileSync(join(root, 'seeds', name), 'utf8')]));
}

/** Libraries that few sheets need, each a file of its own beside the products for Node, read when first used. */
const libraries = [
  'zod',
  'katex',
  'pdfmake/js/PDFDocument.js',
  'pdfmake/js/LayoutBuilder.js',
  'pdfmake/js/Renderer.js',
  'pdfmake/js/SVGMeasure.js',
  'pdfmake/js/tableLayouts.js',
  'pdfmake/js/standardPageSizes.js',
  'docx',
  'docx/math',
  'write-excel-file/universal',
  'mathjax/loader.js',
  'mathjax/core.js',
  'mathjax/adaptors/liteDOM.js',
  'mathjax/input/tex-base.js',
  'mathjax/input/tex/extensions/newcommand.js',
  'mathjax/input/tex/extensions/ams.js',
  'mathjax/output/svg.js',
  '@mathjax/mathjax-newcm-font/svg.js',
];

const ownFiles: Plugin = {
  name: 'libraries in files of their own',
  setup({ onResolve }) {
    onResolve({ filter: /./ }, ({ kind, path }) =>
      kind === 'dynamic-import' && libraries.includes(path)
        ? { path: `./lib/${fileOf(path)}`, external: true }
        : undefined,
    );
  },
};

/** The extension proper, a file of its own for Node; a browser's host can read but one. */
const onFirstUse: Plugin = {
  name: 'the extension in a file of its own',
  setup({ onResolve }) {
    onResolve({ filter: /^\.\/extension$/ }, () => ({ path: './sheets.js', external: true }));
  },
};

/** Of these libraries a browser's host takes only what is small; formats that need others are not offered there. */
const inBrowser: readonly string[] = ['zod', 'katex', 'write-excel-file/universal'];

const notInBrowser: Plugin = {
  name: 'libraries that a browser does without',
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /./ }, ({ kind, path }) =>
      kind === 'dynamic-import' && libraries.includes(path) && !inBrowser.includes(path)
        ? { path, namespace: 'absent' }
        : undefined,
    );
    onLoad({ filter: /./, namespace: 'absent' }, () => ({ contents: 'export default undefined;' }));
  },
};

/** Reports are written in a thread of their own, which a browser's host cannot start. */
const withoutThreads: Plugin = {
  name: 'no threads in a browser',
  setup({ onResolve }) {
    onResolve({ filter: /^\.\/write-apart$/ }, ({ resolveDir }) => ({ path: join(resolveDir, 'write-here.ts') }));
  },
};

const fileOf = (library: string): string => `${library.replace(/\.js$|^@/g, '').replace(/\W+/g, '-')}.js`;

const base: BuildOptions = {
  absWorkingDir: root,
  bundle: true,
  format: 'cjs',
  logLevel: 'warning',
  legalComments: 'none',
  external: ['vscode'],
  define: {
    STARTER_SHEETS: JSON.stringify(starterSheets()),
    REPORT_FORMATS_HERE: JSON.stringify(Object.keys(reportFormats)),
  },
};
const node: BuildOptions = {
  ...base,
  platform: 'node',
  target: 'node20',
  plugins: [ownFiles],
  supported: { 'dynamic-import': false }, // Becomes a `require` at its place, which every host understands.
};
const browser: BuildOptions = {
  ...base,
  platform: 'browser',
  conditions: ['worker'], // The host is a web worker: a library's build for pages would look for a document.
  target: 'es2022',
  plugins: [notInBrowser, withoutThreads],
  define: {
    ...base.define,
    global: 'globalThis',
    REPORT_FORMATS_HERE: JSON.stringify(['html', 'md', 'csv', 'xlsx']),
  },
  // The usual builds of these ask for what only Node has.
  alias: {
    'csv-parse/sync': 'csv-parse/browser/esm/sync',
    'csv-stringify/sync': 'csv-stringify/browser/esm/sync',
  },
};
const shipped: BuildOptions = { minify: true, keepNames: true };

const products: BuildOptions[] = [
  { ...node, ...shipped, plugins: [onFirstUse], entryPoints: ['src/vscode/activate.ts'], outfile: 'dist/extension.js' },
  { ...node, ...shipped, entryPoints: ['src/vscode/extension.ts'], outfile: 'dist/sheets.js' },
  { ...node, ...shipped, entryPoints: ['src/vscode/report-worker.ts'], outfile: 'dist/report-worker.js' },
  { ...browser, ...shipped, entryPoints: ['src/vscode/activate.ts'], outfile: 'dist/web/extension.js' },
  {
    ...base,
    ...shipped,
    platform: 'browser',
    format: 'esm', // A notebook imports what extends its renderers.
    target: 'es2022',
    entryPoints: ['src/renderer/activate.ts'],
    outfile: 'dist/renderer/markdown.js',
  },
  {
    ...node,
    ...shipped,
    entryPoints: ['src/cli/main.ts'],
    outfile: 'dist/cli.js',
    banner: { js: '#!/usr/bin/env node' },
  },
];
for (const library of libraries) {
  products.push({
    ...node,
    ...shipped,
    plugins: [],
    stdin: { contents: `module.exports = require('${library}');`, resolveDir: root },
    outfile: `dist/lib/${fileOf(library)}`,
  });
}
const suites: BuildOptions[] = [
  {
    ...node,
    external: ['vscode', 'mocha'],
    entryPoints: ['test/vscode/suite/index.node.ts'],
    outfile: 'out/suite/index.node.js',
  },
  {
    ...browser,
    define: { ...browser.define, 'process.env.HOST_TEST_GREP': JSON.stringify(process.env.HOST_TEST_GREP ?? '') },
    entryPoints: ['test/vscode/suite/index.web.ts'],
    outfile: 'out/suite/index.web.js',
  },
  { ...browser, entryPoints: ['test/vscode/virtual-files/extension.ts'], outfile: 'out/virtual-files/extension.js' },
];

async function main(): Promise<void> {
  const jobs = process.argv.includes('--tests') ? [...products, ...suites] : products;
  rmSync(join(root, 'dist'), { recursive: true, force: true });
  await Promise.all(jobs.map((job) => build(job)));
  mkdirSync(join(root, 'dist/fonts'));
  for (const name of fontFiles) {
    copyFileSync(require.resolve(`dejavu-fonts-ttf/ttf/${name}`), join(root, 'dist/fonts', name));
  }
  if (jobs.includes(suites[0])) {
    copyFileSync(join(root, 'test/vscode/virtual-files/package.json'), join(root, 'out/virtual-files/package.json'));
  }
  for (const { outfile } of jobs) {
    console.log(`${outfile} ${Math.round(statSync(join(root, outfile!)).size / 1024)} kB`);
  }
}

main().catch((error) => {
  console.error(error.message);
  process.exit(1);
});
