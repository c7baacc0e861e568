import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Frame, Page } from 'playwright-core';
import type { Stage } from './steps';
import type { Workbench } from './workbench';

/** What outputs draw and let a reader do, by keyboard, and what axe finds in the page that they stand in. */
export const outputSteps: Readonly<Record<string, (stage: Stage) => Promise<void>>> = {
  async 'draws the doubt that decides a check'({ workbench }) {
    await workbench.open('part-reel.kft.md');
    await workbench.command('View: Hide Panel');
    const drawing = workbench.outputs.locator('svg.kf-drawing', { hasText: 'both sides' }).first();
    await workbench.revealOutput(drawing);
    assert.match((await drawing.locator('desc').textContent()) ?? '', /205 ft/);
  },

  async 'has outputs in which axe finds nothing serious'({ workbench }) {
    await inspect(workbench);
  },

  async 'sorts a schedule by keyboard, its totals last'({ workbench, page }) {
    await workbench.open('boat-shop-panel.kft.md');
    const heading = workbench.outputs.locator('th', { hasText: /^load/ }).first();
    await workbench.revealOutput(heading);
    await heading.locator('button').focus();
    const rows = workbench.outputs.locator('table', { has: heading }).locator('tbody tr');
    const before = await rows.allTextContents();
    await page.keyboard.press('Enter');
    assert.equal(await heading.getAttribute('aria-sort'), 'ascending');
    const after = await rows.allTextContents();
    assert.notDeepEqual(after, before);
    assert.deepEqual([...after].sort(), [...before].sort());
    assert.match(after.at(-1)!, /Total/);
    await workbench.outputs.locator('svg.kf-drawing', { hasText: 'load by phase' }).waitFor();
  },

  async 'has schedules and charts in which axe finds nothing serious'({ workbench }) {
    await inspect(workbench);
  },
};

const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');

/** Has axe look at the web view of the sheet in front; what the editor itself puts there is not ours to mend. */
async function inspect(workbench: Workbench): Promise<void> {
  const element = await workbench.outputs.locator('body').elementHandle();
  const frame = (await element!.ownerFrame()) as Frame;
  await inspectPage(frame, '.output');
}

/** Has axe look at a part of a page. */
export async function inspectPage(page: Frame | Page, part: string): Promise<void> {
  await page.evaluate(axe);
  const { violations, passes }: AxeResults = await page.evaluate(
    `axe.run(['${part}'], { resultTypes: ['violations', 'passes'] })`,
  );
  const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  assert.deepEqual(
    serious.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' | ')}`),
    [],
  );
  assert.ok(passes.length > 0, 'axe looked at nothing');
}
