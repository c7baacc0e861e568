import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { root } from '../host/scratch';
import { firstResult } from './first-result';
import { inspectPage } from './outputs';
import type { Stage } from './steps';
import type { Workbench } from './workbench';

const name = 'by-hand.kft.md';

const sheet = [
  '# By hand',
  '',
  'The run is `=run`.',
  '',
  '```kft',
  'input run = 85 ft from 5 ft to 400 ft "one-way length"',
  'feed = 12 AWG Cu',
  'drop = voltage_drop(feed, 10 A, run)',
  '```',
  '',
].join('\n');

/** What a person does from the keyboard alone in a sheet of one cell. */
export const keyboardSteps: Readonly<Record<string, (stage: Stage) => Promise<void>>> = {
  async 'opens a sheet from Quick Open in a window that has shown one'({ workbench, workspace }) {
    const file = join(workspace, name);
    writeFileSync(file, sheet);
    console.log(`       first result after ${await firstResult(workbench, file, '85')} ms`);
  },

  async 'expands a snippet in a cell, stop by stop'({ workbench, page, workspace }) {
    await atEnd(workbench);
    await page.keyboard.press('Enter');
    await expandCheck(page);
    await page.keyboard.press('Control+s');
    await isSaved(page, join(workspace, name), '\ncheck run <= 100 ft "in reach"\n```');
    await workbench.outputs.getByText('in reach').first().waitFor();
  },

  async 'offers no snippet within a formula'({ page }) {
    await page.keyboard.press('Enter');
    await page.keyboard.type('twice = ch');
    assert.deepEqual(await offered(page), []);
    await lineGone(page);
  },

  async 'makes a schedule of spreadsheet cells pasted into a cell, and one undo takes it back'({ workbench, page }) {
    await copyCells(page);
    await page.keyboard.press('Control+v');
    await workbench.cell('rows = schedule').waitFor();
    await workbench.outputs.getByRole('cell', { name: 'north wall' }).first().waitFor();
    await page.screenshot({ path: join(root, 'out/shots/pasted-schedule.png') });
    await page.keyboard.press('Control+z');
    await workbench.cell('rows = schedule').waitFor({ state: 'detached' });
    await workbench.cell('in reach').waitFor();
    await page.keyboard.press('Control+s');
  },

  async 'goes through the values from the keyboard, to a cell and to the clipboard'({ workbench, page }) {
    await workbench.command('Explorer: Focus on Values and Checks View');
    const drop = page.getByRole('treeitem', { name: /^drop, / });
    await downTo(page, drop);
    await page.screenshot({ path: join(root, 'out/shots/values-view.png') });
    await fromMenu(page, 'Copy Result As…');
    await page.getByRole('option', { name: /^Text/ }).first().waitFor();
    await page.keyboard.press('Enter');
    await page.getByText('Result copied as').first().waitFor();
    assert.match(await page.evaluate('navigator.clipboard.readText()'), /^drop = 3\.366 V/);
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

  async 'tells of a conductor from the keyboard as the command line does'({ workbench, page }) {
    await workbench.cell('drop =').locator('.view-line', { hasText: 'feed =' }).first().click();
    const inNotebook = await hoverByKeys(page);
    await page.screenshot({ path: join(root, 'out/shots/hover-by-keyboard.png') });
    assert.equal(inNotebook, explained());
    await workbench.command('View: Reopen Editor with Text Editor');
    await page.locator('.editor-instance .view-line', { hasText: 'feed =' }).first().click();
    assert.equal(await hoverByKeys(page), inNotebook);
  },

  async 'offers snippets in the fences of a text, and not in its prose'({ page, workspace }) {
    await page.keyboard.press('Control+Home');
    await page.keyboard.press('Control+End');
    assert.deepEqual(await offered(page), []);
    await page.locator('.editor-instance .view-line', { hasText: 'in reach' }).first().click();
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
    await page.keyboard.type('che');
    await page.keyboard.press('Control+Space');
    await expandCheck(page, '');
    await page.keyboard.press('Control+s');
    const twice = '\ncheck run <= 100 ft "in reach"'.repeat(2);
    await isSaved(page, join(workspace, name), twice);
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
    await workbench.command('Kilofoot: New Sheet From…');
    await page.keyboard.type('reel');
    await page.keyboard.press('Enter');
    await page.locator('.tab', { hasText: 'Untitled' }).waitFor();
    await workbench.notebook.waitFor();
    await page.keyboard.press('Control+s');
    await answerFile(page, join(workspace, 'reel-of-mine.kft.md'));
    await page.locator('.tab', { hasText: 'reel-of-mine' }).waitFor();
    await page.locator('.tab', { hasText: 'Walkthrough' }).click();
    await page.screenshot({ path: join(root, 'out/shots/walkthrough-after.png') });
    assert.equal(await step.getAttribute('aria-checked'), 'true');
    await workbench.command('View: Close All Editors');
  },
};

/** Presses the arrow until the line has the focus of its list. */
async function downTo(page: Page, item: Locator): Promise<void> {
  await item.waitFor();
  await page.locator('.tree-explorer-viewlet-tree-view .monaco-list:focus').waitFor();
  await page.keyboard.press('Home');
  const isFocused = () => item.evaluate((row) => row.classList.contains('focused'));
  for (let i = 0; i < 30 && !(await isFocused()); i++) {
    await page.keyboard.press('ArrowDown');
  }
  assert.ok(await isFocused(), 'the arrow does not reach it');
}

/** Takes an entry of the menu of what has the focus, by keys. */
async function fromMenu(page: Page, entry: string): Promise<void> {
  await page.keyboard.press('Shift+F10');
  const item = page.getByRole('menuitem', { name: entry });
  await item.waitFor();
  for (let i = 0; i < 20 && !(await item.evaluate((one) => one.matches(':focus, :focus-within'))); i++) {
    await page.keyboard.press('ArrowDown');
  }
  await page.keyboard.press('Enter');
}

/** The text of the hover on the conductor of the line that the caret is in, without blanks. */
async function hoverByKeys(page: Page): Promise<string> {
  await page.keyboard.press('Home');
  for (const _ of 'feed = 1') {
    await page.keyboard.press('ArrowRight');
  }
  await page.keyboard.press('Control+k');
  await page.keyboard.press('Control+i');
  const hover = page.locator('.monaco-hover:not(.hidden) .hover-contents', { hasText: 'DC resistance' }).first();
  await hover.waitFor();
  const text = (await hover.textContent()) ?? '';
  await page.keyboard.press('Escape');
  return text.replace(/\s/g, '');
}

/** What the command line tells of the same conductor, without its heading and without blanks. */
const explained = (): string =>
  execFileSync(process.execPath, [join(root, 'dist/cli.js'), 'explain', '12 AWG Cu'], { encoding: 'utf8' })
    .replace(/^.*\n/, '')
    .replace(/\s/g, '');

/** Answers the editor's own question for a file. */
async function answerFile(page: Page, path: string): Promise<void> {
  const box = page.locator('.quick-input-widget input[type="text"] >> visible=true').first();
  await page
    .locator('.quick-input-widget >> visible=true')
    .getByRole('button', { name: /^(OK|Run|Save|Show Local)/ })
    .first()
    .waitFor();
  await box.fill(path);
  await page.waitForTimeout(300);
  await page.keyboard.press('Enter');
}

/** Puts the caret at the end of the sheet's calculation cell. */
async function atEnd(workbench: Workbench): Promise<void> {
  await workbench.cell('drop =').locator('.view-line').first().click();
  await workbench.page.keyboard.press('Control+End');
}

/** Types the word of a snippet, takes it, and fills in its places. */
async function expandCheck(page: Page, word = 'che'): Promise<void> {
  await page.keyboard.type(word);
  await suggestion(page, /^check/).waitFor();
  await page.keyboard.press('Tab');
  await page.keyboard.type('run');
  await page.keyboard.press('Tab');
  await suggestion(page, /^<=/).waitFor();
  await page.keyboard.press('Enter'); // Takes the choice and goes on.
  await page.keyboard.type('100 ft');
  await page.keyboard.press('Tab');
  await page.keyboard.type('in reach');
  await page.keyboard.press('Tab');
  await page.keyboard.press('End');
}

const suggestion = (page: Page, label: RegExp): Locator => page.getByRole('option', { name: label }).first();

/** The snippets that are offered where the caret is. */
async function offered(page: Page): Promise<string[]> {
  await page.keyboard.press('Control+Space');
  const rows = page.locator('.suggest-widget.visible .monaco-list-row');
  await rows.first().waitFor();
  const snippets = rows.filter({ has: page.locator('.codicon-symbol-snippet') });
  const found = await snippets.allTextContents();
  await page.keyboard.press('Escape');
  return found;
}

/** Takes away the line that was begun last. */
async function lineGone(page: Page): Promise<void> {
  for (const key of ['Shift+Home', 'Delete', 'Backspace']) {
    await page.keyboard.press(key);
  }
  await page.keyboard.press('Enter');
}

async function isSaved(page: Page, file: string, part: string): Promise<void> {
  for (let i = 0; i < 50 && !readFileSync(file, 'utf8').includes(part); i++) {
    await page.waitForTimeout(100);
  }
  assert.ok(readFileSync(file, 'utf8').includes(part), readFileSync(file, 'utf8'));
}

/** The clipboard as a spreadsheet leaves it: the cells as a table of HTML, and as text with tabs. */
async function copyCells(page: Page): Promise<void> {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.evaluate(`(() => {
    const rows = [['Tag', 'Load (kVA)', 'Remark'], ['P1', '9.2', 'north wall'], ['P2', '1.5', '']];
    const cells = (row) => '<tr>' + row.map((cell) => '<td>' + cell + '</td>').join('') + '</tr>';
    const text = rows.map((row) => row.join('\\t')).join('\\r\\n') + '\\r\\n';
    const html = '<html><body><table>' + rows.map(cells).join('') + '</table></body></html>';
    const blob = (type, content) => new Blob([content], { type });
    const item = { 'text/plain': blob('text/plain', text), 'text/html': blob('text/html', html) };
    return navigator.clipboard.write([new ClipboardItem(item)]);
  })()`);
}
