/**
 * Tells how long the packaged extension takes to activate, in ten windows one after another, each with an extension host
 * of its own in which a sheet is opened: by the editor's own clock. Not a test, for it depends on the machine.
 *
 *     npm run bench:activation [-- --oldest]
 */
import { join } from 'node:path';
import { activationTime } from '../ui/activation-time';
import { Workbench } from '../ui/workbench';
import { startBrowser, workbenchAddress } from './browser';
import { makeScratch, makeWorkspace, root, writeSettings } from './scratch';
import { editionFromArguments, installPackage, startServer } from './server';

const times = 10;

async function main(): Promise<void> {
  const edition = editionFromArguments();
  const scratch = makeScratch();
  const workspace = makeWorkspace(scratch);
  writeSettings(scratch);
  installPackage(edition, scratch, join(root, 'kilofoot.vsix'));
  const server = await startServer(edition, scratch);
  const { page, context } = await startBrowser(scratch);
  const found: number[] = [];
  try {
    page.setDefaultTimeout(30_000);
    const workbench = new Workbench(page);
    for (let i = 0; i < times; i++) {
      await page.goto(workbenchAddress(server.authority, workspace));
      await workbench.ready();
      await workbench.command('View: Close All Editors');
      await workbench.open('kiln.kft.md');
      found.push(await activationTime(workbench));
    }
  } finally {
    await context.close();
    await server.stop();
  }
  found.sort((a, b) => a - b);
  console.log(`${edition} VS Code: activation takes ${found.join(', ')} ms; the median is ${medianOf(found)} ms.`);
}

const medianOf = (sorted: readonly number[]): number =>
  (sorted[Math.floor((sorted.length - 1) / 2)] + sorted[Math.floor(sorted.length / 2)]) / 2;

main().then(
  () => process.exit(0),
  (error) => {
    console.error(error);
    process.exit(1);
  },
);
