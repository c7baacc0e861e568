/** Remakes the picture in the README from the kiln sheet: `npm run screenshot`. */
import { join } from 'node:path';
import { startBrowser, workbenchAddress } from '../host/browser';
import { makeScratch, makeWorkspace, root, writeSettings } from '../host/scratch';
import { editionFromArguments, installPackage, startServer } from '../host/server';
import { Workbench } from './workbench';

async function main(): Promise<void> {
  const edition = editionFromArguments();
  const scratch = makeScratch();
  const workspace = makeWorkspace(scratch);
  writeSettings(scratch, {
    'workbench.colorTheme': 'Default Light Modern',
    'workbench.activityBar.location': 'hidden',
    'window.menuBarVisibility': 'hidden',
  });
  installPackage(edition, scratch, join(root, 'kilofoot.vsix'));
  const server = await startServer(edition, scratch);
  const { page, context } = await startBrowser(scratch, { width: 1100, height: 1000 });
  try {
    page.setDefaultTimeout(30_000);
    await page.goto(workbenchAddress(server.authority, workspace));
    const workbench = new Workbench(page);
    await workbench.open('kiln.kft.md');
    await workbench.outputs.locator('.katex').first().waitFor({ state: 'attached' });
    await workbench.command('View: Toggle Primary Side Bar Visibility');
    await workbench.reveal('element =');
    await page.waitForTimeout(1500); // Heights of outputs settle without a sign.
    await page.screenshot({ path: join(root, 'media/kiln-sheet.png') });
  } finally {
    await context.close();
    await server.stop();
  }
}

main().then(
  () => process.exit(0),
  (error) => {
    console.error(error);
    process.exit(1);
  },
);
