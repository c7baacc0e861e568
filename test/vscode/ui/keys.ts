import assert from 'node:assert/strict';
import type { Locator, Page } from 'playwright-core';

/** Presses the arrow until the line has the focus of its list. */
export async function downTo(page: Page, item: Locator): Promise<void> {
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
export async function fromMenu(page: Page, entry: string): Promise<void> {
  await page.keyboard.press('Shift+F10');
  const item = page.getByRole('menuitem', { name: entry });
  await item.waitFor();
  for (let i = 0; i < 20 && !(await item.evaluate((one) => one.matches(':focus, :focus-within'))); i++) {
    await page.keyboard.press('ArrowDown');
  }
  await page.keyboard.press('Enter');
}

/** Answers the editor's own question for a file. */
export async function answerFile(page: Page, path: string): Promise<void> {
  const question = page.locator('.quick-input-widget >> visible=true');
  // The editor writes the folder into the box once it has listed it, over whatever stands there.
  await question.getByRole('option', { name: /^\.\./ }).waitFor();
  await question.locator('input[type="text"] >> visible=true').fill(path);
  await page.waitForTimeout(200); // It looks the name up, and takes no answer before.
  await page.keyboard.press('Enter');
}
