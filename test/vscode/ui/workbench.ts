import type { FrameLocator, Locator, Page } from 'playwright-core';

/** Handles of the workbench page; the selectors hold from VS Code 1.90 on. */
export class Workbench {
  constructor(readonly page: Page) {}

  /** The frame with the outputs of the visible notebook. */
  get outputs(): FrameLocator {
    return this.page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame');
  }

  cell(part: string): Locator {
    return this.page.locator('.notebookOverlay .cell-list-container .monaco-list-row', { hasText: part }).first();
  }

  /** A run of text in a cell's editor. */
  token(part: string, token: RegExp): Locator {
    return this.cell(part).locator('.view-line span span', { hasText: token }).first();
  }

  async command(title: string): Promise<void> {
    await this.page.keyboard.press('F1');
    await this.page.locator('.quick-input-widget input[type="text"]').first().fill(`>${title}`);
    await this.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: title }).waitFor();
    await this.page.keyboard.press('Enter');
  }

  /** A file opens as plain text until the extensions are registered, so that is waited for. */
  async open(file: string): Promise<void> {
    await this.page.waitForFunction("performance.getEntriesByName('code/didLoadExtensions').length > 0");
    await this.page.locator(`.explorer-folders-view .monaco-list-row[aria-label^="${file}"]`).dblclick();
    await this.page.locator('.notebookOverlay').waitFor();
    await this.outputs.locator('.preview').first().waitFor();
  }

  /** Types at the end of the line that holds `part`. */
  async typeAfter(part: string, text: string): Promise<void> {
    await this.cell(part).locator('.view-line', { hasText: part }).first().click();
    await this.page.keyboard.press('End');
    await this.page.keyboard.type(text);
  }

  /** Scrolls the notebook until the cell is drawn; only cells in view exist. */
  async reveal(part: string): Promise<void> {
    const list = this.page.locator('.notebookOverlay .cell-list-container').first();
    await list.hover({ position: { x: 300, y: 300 } });
    await this.page.mouse.wheel(0, -20_000);
    for (let i = 0; i < 60; i++) {
      await this.page.waitForTimeout(100);
      const box = await this.cell(part)
        .boundingBox({ timeout: 100 })
        .catch(() => null);
      if (box && box.y < 500) {
        return;
      }
      await this.page.mouse.wheel(0, 150);
    }
    throw new Error(`no cell holds ${part}`);
  }

  async hover(part: string, token: RegExp): Promise<Locator> {
    await this.token(part, token).hover();
    const hover = this.page.locator('.monaco-hover:not(.hidden) .hover-contents').first();
    await hover.waitFor();
    return hover;
  }
}
