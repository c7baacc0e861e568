/**
 * Tells how long the packaged extension takes to activate, by the editor's own clock, and how long it is from Enter in
 * Quick Open to the first result that can be read: in ten windows one after another, each with an extension host of its
 * own, with the first sheet of the window and with a second one. Not a test, for it depends on the machine.
 *
 *     npm run bench:activation [-- --oldest | --web]
 *
 * `--web` takes the web worker host in place of the one in Node.
 */
import { join } from 'node:path';
import { activationTime } from '../ui/activation-time';
import { firstResult } from '../ui/first-result';
import { Workbench } from '../ui/workbench';
import { startBrowser, workbenchAddress } from './browser';
import { makeScratch, makeWorkspace, root, writeSettings } from './scratch';
import { editionFromArguments, installPackage, startServer } from './server';

const times = Number(process.env.TIMES ?? 10);

async function main(): Promise<void> {
  const edition = editionFromArguments();
  const scratch = makeScratch();
  const workspace = makeWorkspace(scratch);
  const isWeb = process.argv.includes('--web');
  writeSettings(scratch, isWeb ? { 'remote.extensionKind': { 'kilofoot.kilofoot': ['web'] } } : {});
  installPackage(edition, scratch, join(root, 'kilofoot.vsix'));
  const server = await startServer(edition, scratch);
  const { page, context } = await startBrowser(scratch);
  const [first, second, activation]: number[][] = [[], [], []];
  try {
    page.setDefaultTimeout(30_000);
    const workbench = new Workbench(page);
    for (let i = 0; i < times; i++) {
      await page.goto(workbenchAddress(server.authority, workspace));
      await workbench.ready();
      await workbench.command('View: Close All Editors');
      first.push(await firstResult(workbench, join(workspace, 'part-reel.kft.md'), '205'));
      second.push(await firstResult(workbench, join(workspace, 'kiln.kft.md'), '17.4'));
      activation.push(await activationTime(workbench));
    }
  } finally {
    await context.close();
    await server.stop();
  }
  console.log(`${edition} VS Code, ${isWeb ? 'web worker' : 'Node'} host, in ms:`);
  tell('activation', activation);
  tell('first result of the first sheet in a window', first);
  tell('first result of a second sheet', second);
}

function tell(what: string, found: number[]): void {
  found.sort((a, b) => a - b);
  console.log(`  ${what}: ${found.join(', ')}; the median is ${medianOf(found)}`);
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
