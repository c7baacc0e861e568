import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { root, writeSettings } from '../host/scratch';
import { activationTime } from './activation-time';
import { firstResult } from './first-result';
import { cellSteps, handSheet, textSteps } from './keyboard';
import { outputSteps } from './outputs';
import { viewSteps } from './views';
import type { Workbench } from './workbench';

const shots = join(root, 'out/shots');

export interface Stage {
  readonly workbench: Workbench;
  readonly page: Page;
  readonly workspace: string;
  readonly scratch: string;
  readonly address: string;
}

/** What a person does with the kiln sheet, in order; each step begins where the one before ended. */
export const steps: Readonly<Record<string, (stage: Stage) => Promise<void>>> = {
  async 'opens a sheet with its results'({ workbench, workspace }) {
    const time = await firstResult(workbench, join(workspace, 'kiln.kft.md'), '17.4');
    console.log(`       first result in a fresh window after ${time} ms`);
  },

  async 'tells of a conductor under the pointer'({ workbench }) {
    await workbench.reveal('existing = circuit');
    const hover = await workbench.hover('existing = circuit', /^THHN$|^Cu$|12/, 'DC resistance');
    assert.match((await hover.textContent()) ?? '', /1\.98 Ω\/kft/);
  },

  async 'refreshes results while a reading is typed'({ workbench, page }) {
    await page.keyboard.press('Escape');
    await workbench.reveal('element =');
    await workbench.token('supply =', /^207\.6$/).dblclick();
    await page.keyboard.type('240'); // A double click takes the digits before the point.
    await workbench.formula('20.22').waitFor();
    assert.equal(await page.locator('.quick-input-widget:visible').count(), 0, 'a picker asked for a kernel');
  },

  async 'marks a problem and tells of it'({ workbench, page }) {
    await workbench.typeAfter('current = supply', ' + supply');
    await workbench.cell('element =').locator('.squiggly-error').first().waitFor({ state: 'attached' });
    await workbench.command('Problems: Focus on Problems View');
    const row = page.locator('.markers-panel .monaco-list-row', { hasText: 'unlike-quantities' }).first();
    await row.waitFor();
    assert.match((await row.textContent()) ?? '', /supply/);
  },

  async 'opens the page of a problem from its code'({ workbench, page }) {
    await page.locator('.markers-panel a', { hasText: 'unlike-quantities' }).first().click();
    const tab = page.locator('.tab', { hasText: 'unlike-quantities' });
    await tab.waitFor();
    await workbench.outputs.locator('h1', { hasText: 'unlike-quantities' }).waitFor();
    await workbench.outputs.locator('pre', { hasText: '^^^^^' }).first().waitFor();
    await page.screenshot({ path: join(shots, 'page of a problem.png') });
    await workbench.command('View: Close Editor');
    await tab.waitFor({ state: 'detached' });
    await workbench.reveal('current = supply');
  },

  async 'saves what was typed and nothing else'({ workbench, page, workspace }) {
    await page.keyboard.press('Escape');
    const file = join(workspace, 'kiln.kft.md');
    const before = readFileSync(file, 'utf8');
    await workbench.typeAfter('current = supply', '');
    for (const _ of ' + supply') {
      await page.keyboard.press('Backspace');
    }
    await page.keyboard.press('Control+s');
    const expected = /supply = 240\.6 V/;
    for (let i = 0; i < 50 && !expected.test(readFileSync(file, 'utf8')); i++) {
      await page.waitForTimeout(100);
    }
    const after = readFileSync(file, 'utf8');
    const changed = after.split('\n').filter((line, i) => line !== before.split('\n')[i]);
    assert.equal(changed.length, 1, `lines that changed: ${changed.join(' | ')}`);
  },

  async 'offers starter sheets'({ workbench, page }) {
    await workbench.command('Kilofoot: New Sheet From…');
    const row = page.locator('.quick-input-list .monaco-list-row', { hasText: 'unmarked heater' }).first();
    await row.waitFor();
  },

  async 'opens a starter sheet'({ workbench, page }) {
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'unmarked heater' }).first().click();
    await page.locator('.tab', { hasText: 'Untitled' }).waitFor();
    await workbench.reveal('across =');
    await workbench.formula('16.64').waitFor();
  },

  async 'is offered among new files'({ workbench, page }) {
    await workbench.command('Create: New File...');
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'Kilofoot Sheet' }).first().waitFor();
  },

  async 'closes the untitled sheet without saving it'({ workbench, page }) {
    await page.keyboard.press('Escape');
    await workbench.command('View: Close Editor');
    await page.locator('.monaco-dialog-box .monaco-button', { hasText: "Don't Save" }).click();
    await page.locator('.tab', { hasText: 'Untitled' }).waitFor({ state: 'detached' });
  },

  async 'colours and answers in fences where the sheet is open as text'({ workbench, page }) {
    await workbench.open('kiln.kft.md');
    await workbench.command('View: Reopen Editor with Text Editor');
    const editor = page.locator('.editor-instance .monaco-editor >> visible=true').first();
    const line = editor.locator('.view-line', { hasText: /^supply/ }).first();
    await line.waitFor();
    for (const text of ['240.6', 'V', '// at']) {
      // Until the grammars are there every letter has the first colour.
      await line.locator('span span:not(.mtk1)', { hasText: text }).first().waitFor();
    }
    // The result at the line's end is drawn behind the text.
    await editor
      .locator('.view-line', { hasText: /^current.*=.*A$/ })
      .first()
      .waitFor();
  },

  async 'colours fences in the Markdown preview'({ workbench, page }) {
    await workbench.command('Markdown: Open Preview to the Side');
    await workbench.preview.locator('.hljs-variable', { hasText: 'supply' }).first().waitFor();
    await workbench.preview.locator('.hljs-symbol', { hasText: 'AWG' }).first().waitFor();
    await workbench.command('View: Close All Editors');
    await page.locator('.tabs-container .tab').first().waitFor({ state: 'detached' });
  },

  ...cellSteps,

  ...viewSteps,

  ...textSteps,

  ...outputSteps,

  async 'activates fast'({ workbench }) {
    console.log(`       activation ${await activationTime(workbench)} ms`);
  },

  'reads well in a dark theme': (stage) => reopenWith(stage, 'Default Dark Modern'),

  'reads well in high contrast': (stage) => reopenWith(stage, 'Default High Contrast'),

  'tells why, and shows the preview, in high contrast': whyAndPreview,

  'reads well in light high contrast': (stage) => reopenWith(stage, 'Default High Contrast Light'),
};

/** Shows the chain of a value below the sheet in front, and the Markdown preview of another. */
async function whyAndPreview({ workbench, page }: Stage): Promise<void> {
  await workbench.open(handSheet.name);
  await workbench.cell('drop =').locator('.view-line', { hasText: 'drop =' }).first().click();
  await page.keyboard.press('Home');
  await workbench.command('Kilofoot: Show Why…');
  await page
    .locator('.editor-instance', { hasText: /drop.*3\.366/ })
    .last()
    .waitFor();
  await page.screenshot({ path: join(shots, 'high contrast why.png') });
  await page.keyboard.press('Control+w');
  await workbench.command('View: Reopen Editor with Text Editor');
  await page.locator('.editor-instance .view-line', { hasText: 'drop =' }).first().waitFor();
  await workbench.command('Markdown: Open Preview to the Side');
  await workbench.preview.getByText(handSheet.says).waitFor();
}

async function reopenWith({ workbench, page, scratch, address }: Stage, theme: string): Promise<void> {
  writeSettings(scratch, { 'workbench.colorTheme': theme });
  page.on('dialog', (dialog) => void dialog.accept().catch(() => {}));
  await page.goto(address);
  await workbench.ready();
  // What was open before the page was left may come back, beside the sheet and over it.
  await workbench.command('View: Close All Editors');
  await page.locator('.tabs-container .tab').first().waitFor({ state: 'detached' });
  await workbench.open('kiln.kft.md');
  await workbench.reveal('element =');
  await workbench.formula('20.22').waitFor();
  await page.screenshot({ path: join(shots, `${theme} kiln.png`) });
  await workbench.open('boat-shop-panel.kft.md');
  await workbench.revealOutput(workbench.outputs.locator('svg.kf-drawing', { hasText: 'load by phase' }));
  await page.screenshot({ path: join(shots, `${theme} boat-shop.png`) });
  await workbench.open('part-reel.kft.md');
  await workbench.revealOutput(workbench.outputs.locator('svg.kf-drawing', { hasText: 'both sides' }));
}
