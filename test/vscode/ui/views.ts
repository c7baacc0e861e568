import assert from 'node:assert/strict';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../host/scratch';
import { answerFile, downTo, fromMenu } from './keys';
import { inspectPage } from './outputs';
import type { Stage } from './steps';

/** Values, chains, cases and the walkthrough, each gone through by keyboard alone. */
export const viewSteps: Readonly<Record<string, (stage: Stage) => Promise<void>>> = {
  async 'goes through the values from the keyboard, to a cell and to the clipboard'({ workbench, page }) {
    const drop = page.getByRole('treeitem', { name: /^drop, / });
    await workbench.command('Explorer: Focus on Values and Checks View');
    await drop.waitFor();
    await page.keyboard.press('Tab'); // A view that was never shown takes the focus itself, before its list is there.
    await downTo(page, drop);
    await page.screenshot({ path: join(root, 'out/shots/values-view.png') });
    await fromMenu(page, 'Copy Result As…');
    await page.getByRole('option', { name: /^Text/ }).first().waitFor();
    await page.keyboard.press('Enter');
    await page.getByText('Result copied as').first().waitFor();
    assert.match(await page.evaluate('navigator.clipboard.readText()'), /drop = 3\.366 V$/);
    await downTo(page, drop);
    await page.keyboard.press('Enter');
    // The caret is where the value is defined: what is typed goes there.
    await page.locator('.cell-list-container .monaco-editor.focused', { hasText: 'drop =' }).waitFor();
  },

  async 'shows why from the values, and axe finds nothing serious in the page'({ workbench, page }) {
    await workbench.command('Explorer: Focus on Values and Checks View');
    await downTo(page, page.getByRole('treeitem', { name: /^drop, / }));
    await fromMenu(page, 'Show Why…');
    const chain = page.locator('.editor-instance', { hasText: /drop.*3\.366/ }).last();
    await chain.waitFor();
    await page.screenshot({ path: join(root, 'out/shots/why.png') });
    await inspectPage(page, '.editor-instance');
    await page.keyboard.press('Control+w');
  },

  async 'runs a file of cases from the keyboard'({ workbench, page, workspace }) {
    const cases = join(workspace, 'runs.csv');
    writeFileSync(cases, `run\n${Array.from({ length: 300 }, (_, i) => `${10 + i} ft\n`).join('')}`);
    await workbench.command('Kilofoot: Run Cases…');
    await answerFile(page, cases);
    await page.locator('.notification-list-item', { hasText: '300 cases are run' }).first().waitFor();
    await page.screenshot({ path: join(root, 'out/shots/cases-run.png') });
    assert.equal(readFileSync(join(workspace, 'runs.results.csv'), 'utf8').trimEnd().split('\n').length, 301);
    await workbench.command('Notifications: Clear All Notifications');
  },

  async 'stops a long run of cases from the keyboard, and nothing is written'({ workbench, page, workspace }) {
    const cases = join(workspace, 'long.csv');
    writeFileSync(cases, `run\n${'85 ft\n'.repeat(200_000)}`);
    await workbench.command('Kilofoot: Run Cases…');
    await answerFile(page, cases);
    await page.locator('.notification-list-item', { hasText: 'Running cases' }).first().waitFor();
    await page.screenshot({ path: join(root, 'out/shots/cases-running.png') });
    await workbench.command('Notifications: Focus Notification Toast');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.locator('.notification-list-item', { hasText: 'Stopped after' }).first().waitFor();
    assert.ok(!existsSync(join(workspace, 'long.results.csv')));
    await workbench.command('Notifications: Clear All Notifications');
    await workbench.command('View: Close All Editors');
  },

  async 'ticks a step of the walkthrough off once the sheet is saved'({ workbench, page, workspace }) {
    await workbench.command('Welcome: Open Walkthrough...');
    await page.keyboard.type('From an empty window');
    await page.keyboard.press('Enter');
    const step = page.getByRole('checkbox', { name: /Fill in what is blank/ }).first();
    await step.waitFor();
    await page.screenshot({ path: join(root, 'out/shots/walkthrough-before.png') });
    // The page has ticks put in while it is to be seen, so the sheet opens beside it.
    await page.getByRole('button', { name: 'New Sheet From…' }).focus();
    await page.keyboard.press('Enter');
    const reel = page.getByRole('option', { name: /^Reel check/ });
    await reel.waitFor();
    await page.keyboard.type('reel');
    await page.keyboard.press('Enter');
    await page.locator('.tab', { hasText: 'Untitled' }).waitFor();
    await workbench.notebook.waitFor();
    await page.keyboard.press('Control+s');
    await answerFile(page, join(workspace, 'reel-of-mine.kft.md'));
    await page.locator('.tab', { hasText: 'reel-of-mine' }).waitFor();
    await page.getByRole('checkbox', { name: /Fill in what is blank/, checked: true }).waitFor();
    await page.screenshot({ path: join(root, 'out/shots/walkthrough-after.png') });
    await workbench.command('View: Close All Editors');
  },
};
