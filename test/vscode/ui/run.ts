/**
 * Installs the packaged extension into VS Code and works with it as a person would, through the page alone. Leaves a
 * picture of each step in `out/shots`.
 *
 *     tsx test/vscode/ui/run.ts [--oldest | --latest]
 *
 * `UI_TEST_GREP` picks steps by their names; most begin where the one before ended.
 */
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, startBrowser, workbenchAddress } from '../host/browser';
import { makeScratch, makeWorkspace, root, stamp, writeSettings } from '../host/scratch';
import { editionFromArguments, installPackage, type Server, startServer } from '../host/server';
import { steps } from './steps';
import { Workbench } from './workbench';

const shots = join(root, 'out/shots');

async function main(): Promise<number> {
  rmSync(shots, { recursive: true, force: true });
  mkdirSync(shots, { recursive: true });
  const edition = editionFromArguments();
  const scratch = makeScratch();
  const workspace = makeWorkspace(scratch);
  writeSettings(scratch, { 'workbench.colorTheme': 'Default Light Modern' });
  let server: Server | undefined;
  let browser: Browser | undefined;
  let failed = 0;
  let passed = 0;
  try {
    installPackage(edition, scratch, join(root, 'kilofoot.vsix'));
    server = await startServer(edition, scratch);
    browser = await startBrowser(scratch);
    const { page } = browser;
    page.setDefaultTimeout(Number(process.env.UI_TEST_TIMEOUT ?? 20_000));
    const address = workbenchAddress(server.authority, workspace);
    await page.goto(address);
    stamp(`${edition} VS Code, the package installed`);
    const wanted = new RegExp(process.env.UI_TEST_GREP ?? '');
    for (const [index, [name, step]] of Object.entries(steps).entries()) {
      if (!wanted.test(name)) {
        continue;
      }
      const began = performance.now();
      try {
        await step({ workbench: new Workbench(page), page, workspace, scratch, address });
        passed++;
        console.log(`  ok   ${name} (${((performance.now() - began) / 1000).toFixed(1)} s)`);
      } catch (error) {
        failed++;
        console.log(`  FAIL ${name}\n       ${String((error as Error).stack).replace(/\n/g, '\n       ')}`);
      }
      const file = `${String(index + 1).padStart(2, '0')}-${name.replace(/\W+/g, '-')}.png`;
      await page.screenshot({ path: join(shots, file) });
    }
  } catch (error) {
    failed++;
    console.error(error, server?.log().slice(-2000) ?? '');
  } finally {
    await browser?.context.close();
    await server?.stop();
  }
  console.log(`${passed} passed, ${failed} failed`);
  return failed === 0 && passed > 0 ? 0 : 1;
}

main().then((code) => process.exit(code));
