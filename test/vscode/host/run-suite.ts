/**
 * Runs the suite inside a VS Code extension host.
 *
 *     tsx test/vscode/host/run-suite.ts [--web] [--oldest | --latest]
 *
 * `--web` takes the web worker host in place of the one in Node.
 */
import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { virtualWorkspace } from '../virtual-files/files';
import { type Browser, startBrowser, workbenchAddress } from './browser';
import { makeScratch, makeWorkspace, root, stamp, writeSettings } from './scratch';
import { editionFromArguments, type Server, startServer } from './server';

const kind = process.argv.includes('--web') ? 'web' : 'node';
const edition = editionFromArguments();

/** A window of the editor with tests of its own in it. */
interface Window {
  readonly what: string;
  /** A path of the server's disk, or a whole address. */
  readonly folder: string;
  /** The folder of our extension. The tests are asked for in there, for that tells VS Code the host to run them in. */
  readonly ours: string;
  /** The same, or the folder that holds it and others. */
  readonly extensions: string;
}

/** VS Code takes one folder of extensions that are being developed: here it holds ours and the one for the tests. */
function withVirtualFiles(scratch: string): string {
  const folder = join(scratch, 'both');
  mkdirSync(folder);
  symlinkSync(root, join(folder, 'kilofoot'));
  symlinkSync(join(root, 'out/virtual-files'), join(folder, 'virtual-files'));
  return folder;
}

async function main(): Promise<number> {
  const scratch = makeScratch();
  const both = withVirtualFiles(scratch);
  const windows: readonly Window[] = [
    { what: 'a folder of the server', folder: makeWorkspace(scratch), ours: root, extensions: root },
    { what: 'a folder on no disk', folder: virtualWorkspace, ours: join(both, 'kilofoot'), extensions: both },
  ];
  const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  // An extension with both `main` and `browser` runs in Node; this setting sends it to the web worker.
  const web = { 'remote.extensionKind': { [`${manifest.publisher}.${manifest.name}`]: ['web'] } };
  writeSettings(scratch, kind === 'web' ? web : {});
  let server: Server | undefined;
  let browser: Browser | undefined;
  try {
    server = await startServer(edition, scratch, { forTests: true });
    browser = await startBrowser(scratch);
    const passed: (number | undefined)[] = [];
    for (const window of windows) {
      const page = await browser.context.newPage();
      passed.push(await runIn(page, server.authority, window));
      await page.close();
    }
    // Where a person asked for some tests alone, a window may hold none of them.
    const isEnough = process.env.HOST_TEST_GREP ? passed.some((count) => count) : passed.every((count) => count);
    return isEnough && !passed.includes(undefined) ? 0 : 1;
  } catch (error) {
    console.error(error, server?.log().slice(-3000) ?? '');
    return 1;
  } finally {
    await browser?.context.close().catch(() => {});
    await server?.stop();
  }
}

/** How many tests passed when the host ended well and the suite said that none failed: either alone is not enough. */
async function runIn(
  page: Page,
  authority: string,
  { what, folder, ours, extensions }: Window,
): Promise<number | undefined> {
  const lines: string[] = [];
  const errors: string[] = [];
  const ended = new Promise<number>((resolve) => void page.exposeFunction('codeAutomationExit', resolve));
  await page.exposeFunction('codeAutomationLog', (type: string, args: unknown[]) => {
    for (const line of args.join(' ').split('\n')) {
      if (line.startsWith('[host-test] ')) {
        lines.push(line.slice(12));
        console.log(line.slice(12));
      } else if (type === 'error') {
        errors.push(line);
      }
    }
  });
  const remote = (file: string) => `vscode-remote://${authority}${file}`;
  await page.goto(
    workbenchAddress(authority, folder, [
      ['extensionDevelopmentPath', remote(extensions)],
      ['extensionTestsPath', remote(join(ours, `out/suite/index.${kind}.js`))],
      ['skipWelcome', 'true'],
      ['skipReleaseNotes', 'true'],
    ]),
  );
  stamp(`${edition} VS Code, ${kind} host, ${what}`);
  const exit = await Promise.race([ended, misfortune(page)]).catch(async (error) => {
    mkdirSync(join(root, 'out'), { recursive: true });
    await page.screenshot({ path: join(root, 'out/host-failure.png') }).catch(() => {});
    throw error;
  });
  stamp(`the host ended with ${exit}`);
  if (!lines.length) {
    console.log(`No test ran. The host's last errors:\n  ${errors.slice(-20).join('\n  ')}`);
  }
  const report = lines.find((line) => line.startsWith('report ') && line !== 'report {}');
  if (report) {
    writeFileSync(join(root, `out/report-${edition}-${kind}.json`), report.slice(7));
  }
  const [count] = lines.flatMap((line) => /^(\d+) passed, 0 failed$/.exec(line)?.[1] ?? []);
  return exit === 0 && count !== undefined ? Number(count) : undefined;
}

/** Rejects when the page dies or the time is up. */
function misfortune(page: Page): Promise<never> {
  return new Promise((_, reject) => {
    const limit = Number(process.env.LIMIT_MS ?? 900_000);
    setTimeout(() => reject(new Error(`no result within ${limit} ms`)), limit).unref();
    page.on('crash', () => reject(new Error('the page crashed')));
    page.on('close', () => reject(new Error('the page closed')));
  });
}

main().then((code) => process.exit(code));
