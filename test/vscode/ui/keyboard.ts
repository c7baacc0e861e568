import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { root } from '../host/scratch';
import { editionFromArguments } from '../host/server';
import { firstResult } from './first-result';
import type { Stage } from './steps';
import type { Workbench } from './workbench';

/** A sheet of one cell, and what its prose says with its live value. */
export const handSheet = {
  name: 'by-hand.kft.md',
  says: 'The run is 85 ft.',
  text: [
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
  ].join('\n'),
} as const;

/** What a person does from the keyboard alone in a sheet of one cell. */
export const cellSteps: Readonly<Record<string, (stage: Stage) => Promise<void>>> = {
  async 'opens a sheet from Quick Open in a window that has shown one'({ workbench, workspace }) {
    const file = join(workspace, handSheet.name);
    writeFileSync(file, handSheet.text);
    console.log(`       first result after ${await firstResult(workbench, file, '85')} ms`);
  },

  async 'expands a snippet in a cell, stop by stop'({ workbench, page, workspace }) {
    await atEnd(workbench);
    await page.keyboard.press('Enter');
    await expandCheck(page);
    await page.keyboard.press('Control+s');
    await isSaved(page, join(workspace, handSheet.name), '\ncheck run <= 100 ft "in reach"\n```');
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
    if (editionFromArguments() === 'oldest') {
      await workbench.command('Kilofoot: Paste as Schedule'); // It lets nobody have a say in what is pasted.
    } else {
      await page.keyboard.press('Control+v');
    }
    await workbench.cell('rows = schedule').waitFor();
    await workbench.outputs.getByRole('cell', { name: 'north wall' }).first().waitFor();
    await page.screenshot({ path: join(root, 'out/shots/pasted-schedule.png') });
    await page.keyboard.press('Control+z');
    await workbench.cell('rows = schedule').waitFor({ state: 'detached' });
    await workbench.cell('in reach').waitFor();
    await page.keyboard.press('Control+s');
  },
};

/** The same in the cell and where the sheet is open as text. */
export const textSteps: Readonly<Record<string, (stage: Stage) => Promise<void>>> = {
  async 'tells of a conductor from the keyboard as the command line does'({ workbench, page, workspace }) {
    await firstResult(workbench, join(workspace, handSheet.name), '85');
    await workbench.cell('drop =').locator('.view-line', { hasText: 'feed =' }).first().click();
    const inNotebook = await hoverByKeys(page);
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
    await isSaved(page, join(workspace, handSheet.name), twice);
  },

  async 'shows live values in the Markdown preview'({ workbench, page }) {
    await workbench.command('Markdown: Open Preview to the Side');
    await workbench.preview.getByText(handSheet.says).waitFor();
    await page.screenshot({ path: join(root, 'out/shots/preview.png') });
    await workbench.command('View: Close All Editors');
  },
};

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
  await page.screenshot({ path: join(root, 'out/shots/hover-by-keyboard.png') });
  await page.keyboard.press('Escape');
  return text.replace(/\s/g, '');
}

/** What the command line tells of the same conductor, without its heading and without blanks. */
const explained = (): string =>
  execFileSync(process.execPath, [join(root, 'dist/cli.js'), 'explain', '12 AWG Cu'], { encoding: 'utf8' })
    .replace(/^.*\n/, '')
    .replace(/\s/g, '');

/** Puts the caret at the end of the sheet's calculation cell. */
async function atEnd(workbench: Workbench): Promise<void> {
  await workbench.cell('drop =').locator('.view-line').first().click();
  await workbench.page.keyboard.press('Control+End');
}

/** Types the word of a snippet, takes it, and fills in its places. */
async function expandCheck(page: Page, word = 'che'): Promise<void> {
  await page.keyboard.type(word);
  await suggestion(page, /^check/).waitFor();
  // The word alone stands first, and the snippet below it.
  const snippet = page.locator('.suggest-widget .monaco-list-row.focused .codicon-symbol-snippet');
  for (let i = 0; i < 5 && (await snippet.count()) === 0; i++) {
    await page.keyboard.press('ArrowDown');
  }
  await page.keyboard.press('Tab');
  await fillIn(page, 'run');
  await suggestion(page, /^<=/).waitFor();
  await page.keyboard.press('Enter'); // Takes the choice and goes on.
  await fillIn(page, '100 ft');
  await fillIn(page, 'in reach');
  await page.keyboard.press('End');
}

/** Types over a place of a snippet and goes on to the next; a Tab would take what is suggested first. */
async function fillIn(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text);
  const suggestions = page.locator('.suggest-widget.visible');
  await suggestions.waitFor({ timeout: 600 }).then(
    () => page.keyboard.press('Escape'),
    () => {}, // In a text, and in quotation marks, nothing is suggested unasked.
  );
  await page.keyboard.press('Tab');
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
