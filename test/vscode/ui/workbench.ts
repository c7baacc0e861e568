import type { FrameLocator, Locator, Page } from 'playwright-core';

/** Handles of the workbench page; the selectors hold from VS Code 1.90 on. */
export class Workbench {
  constructor(readonly page: Page) {}

  /** The frame with the outputs of the notebook that was opened last. */
  get outputs(): FrameLocator {
    return this.page.frameLocator('iframe.webview.ready >> visible=true >> nth=-1').frameLocator('iframe#active-frame');
  }

  /** The frame of the Markdown preview that was opened last. */
  get preview(): FrameLocator {
    return this.outputs;
  }

  /** A formula with this text that is in view: the same may stand in steps that are folded, before it or behind it. */
  formula(text: string): Locator {
    return this.outputs.locator('.katex >> visible=true').filter({ hasText: text }).first();
  }

  /** Editors behind the one in front stay in the page, hidden. */
  get notebook(): Locator {
    return this.page.locator('.notebookOverlay >> visible=true').first();
  }

  cell(part: string): Locator {
    return this.notebook.locator('.cell-list-container .monaco-list-row', { hasText: part }).first();
  }

  /** A run of text in a cell's editor. */
  token(part: string, token: RegExp): Locator {
    return this.cell(part).locator('.view-line span span', { hasText: token }).first();
  }

  async command(title: string): Promise<void> {
    await this.page.keyboard.press('F1');
    await this.page.locator('.quick-input-widget input[type="text"]').first().fill(`>${title}`);
    const exactly = new RegExp(`^${title.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}$`);
    const name = this.page.locator('.label-name', { hasText: exactly });
    await this.page.locator('.quick-input-list .monaco-list-row').filter({ has: name }).first().click();
  }

  /** A file opens as plain text until the extensions are registered. */
  async ready(): Promise<void> {
    await this.page.waitForFunction("performance.getEntriesByName('code/didLoadExtensions').length > 0");
  }

  async open(file: string): Promise<void> {
    await this.ready();
    await this.page.locator(`.explorer-folders-view .monaco-list-row[aria-label^="${file}"]`).dblclick();
    await this.notebook.waitFor();
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
    // A hover in the way would take the wheel, so the pointer leaves it first.
    await this.page.mouse.move(100, 700);
    await this.page.waitForTimeout(600);
    await this.notebook
      .locator('.cell-list-container')
      .first()
      .hover({ position: { x: 20, y: 300 } });
    for (let i = 0; i < 20; i++) {
      await this.page.mouse.wheel(0, -1000);
    }
    await this.page.waitForTimeout(500);
    for (let i = 0; i < 40; i++) {
      const cell = this.cell(part);
      const box = (await cell.count()) > 0 ? await cell.boundingBox() : null;
      if (box && box.y > 130 && box.y < 500) {
        return;
      }
      await this.page.mouse.wheel(0, box ? box.y - 300 : 150);
      await this.page.waitForTimeout(300);
    }
    throw new Error(`no cell holds ${part}`);
  }

  /** Scrolls the notebook until a part of an output is in the middle of what is seen. */
  async revealOutput(part: Locator): Promise<void> {
    await this.notebook
      .locator('.cell-list-container')
      .first()
      .hover({ position: { x: 20, y: 300 } });
    for (let i = 0; i < 60; i++) {
      const box = (await part.count()) > 0 ? await part.boundingBox() : null;
      if (box && box.y > 130 && box.y < 500) {
        return;
      }
      // What is not drawn stands far above all that is.
      await this.page.mouse.wheel(0, box && box.y > -3000 ? box.y - 300 : 300);
      await this.page.waitForTimeout(200);
    }
    throw new Error('the output does not come into view');
  }

  /** The hover at a token, told from other hovers by what it says. */
  async hover(part: string, token: RegExp, says: string): Promise<Locator> {
    await this.token(part, token).hover();
    const hover = this.page.locator('.monaco-hover:not(.hidden) .hover-contents', { hasText: says }).first();
    await hover.waitFor();
    return hover;
  }
}
