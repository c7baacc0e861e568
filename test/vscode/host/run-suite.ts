/**
 * Runs the suite inside a VS Code extension host.
 *
 *     tsx test/vscode/host/run-suite.ts [--web] [--oldest | --latest]
 *
 * `--web` takes the web worker host in place of the one in Node.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { type Browser, startBrowser, workbenchAddress } from './browser';
import { makeScratch, makeWorkspace, root, stamp, writeSettings } from './scratch';
import { editionFromArguments, type Server, startServer } from './server';

const kind = process.argv.includes('--web') ? 'web' : 'node';
const edition = editionFromArguments();

async function main(): Promise<number> {
  const scratch = makeScratch();
  const workspace = makeWorkspace(scratch);
  const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  // An extension with both `main` and `browser` runs in Node; this setting sends it to the web worker.
  const web = { 'remote.extensionKind': { [`${manifest.publisher}.${manifest.name}`]: ['web'] } };
  writeSettings(scratch, kind === 'web' ? web : {});
  let server: Server | undefined;
  let browser: Browser | undefined;
  try {
    server = await startServer(edition, scratch, { forTests: true });
    browser = await startBrowser(scratch);
    const said = await runIn(browser.page, server.authority, workspace);
    return said ? 0 : 1;
  } catch (error) {
    console.error(error, server?.log().slice(-3000) ?? '');
    return 1;
  } finally {
    await browser?.context.close().catch(() => {});
    await server?.stop();
  }
}

/** True when the host ended well and the suite said that tests ran and none failed; either alone is not enough. */
async function runIn(page: Page, authority: string, workspace: string): Promise<boolean> {
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
    workbenchAddress(authority, workspace, [
      ['extensionDevelopmentPath', remote(root)],
      ['extensionTestsPath', remote(join(root, `out/suite/index.${kind}.js`))],
      ['skipWelcome', 'true'],
      ['skipReleaseNotes', 'true'],
    ]),
  );
  stamp(`${edition} VS Code, ${kind} host`);
  const exit = await Promise.race([ended, misfortune(page)]).catch(async (error) => {
    mkdirSync(join(root, 'out'), { recursive: true });
    await page.screenshot({ path: join(root, 'out/host-failure.png') }).catch(() => {});
    throw error;
  });
  stamp(`the host ended with ${exit}`);
  if (!lines.length) {
    console.log(`No test ran. The host's last errors:\n  ${errors.slice(-20).join('\n  ')}`);
  }
  const report = lines.find((line) => line.startsWith('report '));
  if (report) {
    writeFileSync(join(root, `out/report-${edition}-${kind}.json`), report.slice(7));
  }
  return exit === 0 && lines.some((line) => /^[1-9]\d* passed, 0 failed$/.test(line));
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
