import { basename } from 'node:path';
import type { Workbench } from './workbench';

/**
 * How long it takes from Enter in Quick Open until a result of a sheet can be read in the web view, in ms. `path` is the
 * whole of it, for there is no file search in the tests' editor; `shows` is a number that the first output holds.
 */
export async function firstResult(workbench: Workbench, path: string, shows: string): Promise<number> {
  const { page } = workbench;
  await workbench.ready();
  await page.keyboard.press('Control+p');
  await page.locator('.quick-input-widget input[type="text"]').first().fill(path);
  await page.locator('.quick-input-list .monaco-list-row.focused', { hasText: basename(path) }).waitFor();
  const began = performance.now();
  await page.keyboard.press('Enter');
  await workbench.formula(shows).waitFor();
  return Math.round(performance.now() - began);
}
