/** Draws `media/icon.png` from `media/icon.svg`: `npm run icon`. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { startBrowser } from '../../test/vscode/host/browser';
import { makeScratch, root } from '../../test/vscode/host/scratch';

async function main(): Promise<void> {
  const { page, context } = await startBrowser(makeScratch(), { width: 256, height: 256 });
  const drawing = readFileSync(join(root, 'media/icon.svg'), 'utf8');
  await page.setContent(`<body style="margin:0">${drawing}</body>`);
  await page.screenshot({ path: join(root, 'media/icon.png'), omitBackground: true });
  await context.close();
}

main().catch((error) => {
  console.error(error.message);
  process.exit(1);
});
