import assert from 'node:assert/strict';
import type { Workbench } from './workbench';

/** How long the activation took by the editor's own clock, in ms. */
export async function activationTime(workbench: Workbench): Promise<number> {
  const { page } = workbench;
  await workbench.command('Developer: Show Running Extensions');
  // The slowest stand first, and only rows in view are there.
  const list = page.locator('.runtime-extensions-editor .monaco-list');
  await list.locator('.monaco-list-row').first().waitFor();
  const row = list.locator('.monaco-list-row', { hasText: 'Kilofoot' });
  await list.hover();
  for (let i = 0; i < 40 && (await row.count()) === 0; i++) {
    await page.mouse.wheel(0, 100);
    await page.waitForTimeout(100);
  }
  await row.waitFor();
  const time = /Activation: (\d+)ms/.exec((await row.textContent()) ?? '');
  assert.ok(time, 'no activation time is shown');
  return Number(time[1]);
}
