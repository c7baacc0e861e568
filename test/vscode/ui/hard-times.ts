/**
 * What must not lose a person's work, in the packaged extension and a real window: a workspace that is not trusted, forms
 * that are left half filled in, a file that another program changed, an editor that is killed.
 *
 *     tsx test/vscode/ui/hard-times.ts [--oldest | --latest]
 */
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, startBrowser, workbenchAddress } from '../host/browser';
import { makeScratch, makeWorkspace, root, stamp, writeSettings } from '../host/scratch';
import { editionFromArguments, installPackage, type Server, startServer } from '../host/server';
import { Workbench } from './workbench';

const sheet = (run: string) =>
  `# Forms\n\n\`\`\`kft\ninput run = ${run} from 5 ft to 400 ft "one way"\ninput drop = 3 % from 1 % to 5 %\n\`\`\`\n\n` +
  '```kft\ntwice = run * 2\n```\n';

/** From somebody else: with HTML that would run, drawings, a table that sorts and steps that fold. */
const guest =
  '# Guest\n\nBefore <img src="x" onerror="steal()"> **after**, `= i`.\n\n' +
  '```kft\ni = 208 V / 13 Ω\nmeasured = 15.5 A ± 1 A\ncheck measured <= 16 A\n```\n\n' +
  '```kft\npanel = schedule\n  | tag  | phase | load    |\n  | ---  | ---   | ---     |\n' +
  '  | oven | A     | 3.6 kVA |\n  | urn  | B     | 1.4 kVA |\ntotal = sum(panel.load)\n```\n';

const edition = editionFromArguments();

class HardTimes {
  readonly scratch = makeScratch();
  readonly workspace = makeWorkspace(this.scratch);
  readonly file = join(this.workspace, 'forms.kft.md');
  private server!: Server;
  private browser!: Browser;

  constructor() {
    writeFileSync(this.file, sheet('85 ft'));
    writeFileSync(join(this.workspace, 'guest.kft.md'), guest);
  }

  get page() {
    return this.browser.page;
  }

  get workbench() {
    return new Workbench(this.page);
  }

  /** Starts server and window; again, it is the same place with the same folders. */
  async start({ isRestricted = false } = {}): Promise<void> {
    writeSettings(this.scratch, {
      'security.workspace.trust.enabled': isRestricted,
      'security.workspace.trust.startupPrompt': 'never',
      'security.workspace.trust.banner': 'never',
    });
    const port = this.server?.authority.split(':')[1];
    this.server = await startServer(edition, this.scratch, { isRestricted, port });
    this.browser = await startBrowser(this.scratch);
    this.page.setDefaultTimeout(20_000);
    await this.page.goto(workbenchAddress(this.server.authority, this.workspace));
  }

  /** Server and window are gone without a last word, as in a power cut. */
  async kill(): Promise<void> {
    this.server.kill();
    await this.page.goto('chrome://crash').catch(() => {}); // The page dies and does not answer.
    await this.browser.context.close();
  }

  async stop(): Promise<void> {
    await this.browser?.context.close().catch(() => {});
    await this.server?.stop();
  }

  picture(name: string): Promise<unknown> {
    return this.page.screenshot({ path: join(root, 'out/shots', `hard-${edition}-${name.replace(/\W+/g, '-')}.png`) });
  }

  shows(result: string): Promise<void> {
    return this.workbench.formula(result).waitFor();
  }

  notice(words: string): Promise<void> {
    return this.page.locator('.notification-list-item', { hasText: words }).first().waitFor();
  }

  async press(...keys: readonly string[]): Promise<void> {
    for (const key of keys) {
      await this.page.keyboard.press(key);
    }
  }

  /** The text box of a form, once it is there with a title. */
  async form(title: string): Promise<void> {
    await this.page.locator('.quick-input-widget >> visible=true', { hasText: title }).first().waitFor();
  }

  /** The files that the editor keeps of what is not saved. */
  backups(): string[] {
    const folder = join(this.scratch, 'data/User/Backups');
    const files = existsSync(folder) ? readdirSync(folder, { recursive: true, withFileTypes: true }) : [];
    return files.filter((file) => file.isFile()).map((file) => readFileSync(join(file.parentPath, file.name), 'utf8'));
  }
}

const steps: Readonly<Record<string, (at: HardTimes) => Promise<void>>> = {
  async 'opens a sheet with its results in a workspace that is not trusted'(at) {
    await at.workbench.open('forms.kft.md');
    await at.page.locator('.statusbar-item', { hasText: 'Restricted Mode' }).first().waitFor();
    await at.page.locator('.pane-header', { hasText: 'Values and Checks' }).click();
    await at.page.locator('.monaco-list-row', { hasText: /twice.*170 ft/ }).waitFor();
    await at.page.locator('.pane-header', { hasText: 'Values and Checks' }).click();
    await at.shows('170');
    await at.workbench.outputs.locator('h1', { hasText: 'Forms' }).waitFor();
    await at.picture('restricted');
    await at.workbench.open('guest.kft.md');
    await at.shows('16');
    // What is written as HTML runs nowhere: neither cleaned by the editor nor shown as it is written by us.
    assert.equal(await at.workbench.outputs.locator('[onerror]').count(), 0);
    await at.picture('restricted guest');
    await at.kill();
    await at.start();
    await at.workbench.open('forms.kft.md');
    await at.shows('170');
  },

  async 'leaves everything as it is when a form is left'(at) {
    await at.workbench.command('Kilofoot: Change an Input…');
    await at.form('Change an Input');
    await at.page.keyboard.type('drop');
    await at.press('Escape');
    await at.workbench.command('Kilofoot: Change an Input…');
    await at.form('Change an Input');
    await at.page.keyboard.type('run');
    await at.press('Enter');
    await at.form('New value of run');
    await at.page.keyboard.type('9000');
    await at.page.locator('.quick-input-message', { hasText: '400 ft' }).first().waitFor();
    await at.press('Enter'); // Refused: the form stays.
    await at.form('New value of run');
    await at.press('Escape');
    await at.form('Change an Input');
    await at.press('Escape');
    await at.workbench.command('Kilofoot: Export Report…');
    await at.form('Export Report');
    await at.press('Escape');
    await at.shows('170');
    assert.equal(await at.page.locator('.tab.dirty').count(), 0, 'the sheet became dirty');
    assert.equal(readFileSync(at.file, 'utf8'), sheet('85 ft'));
  },

  async 'takes a value by the keyboard alone'(at) {
    await at.workbench.command('Kilofoot: Change an Input…');
    await at.form('Change an Input');
    await at.page.keyboard.type('run');
    await at.press('Enter');
    await at.form('New value of run');
    await at.page.keyboard.type('100');
    await at.press('Enter');
    await at.form('Change an Input');
    await at.press('Escape');
    await at.shows('200');
    await at.page.locator('.tab.dirty', { hasText: 'forms.kft.md' }).waitFor();
  },

  async 'says that another program changed the file, and saves over nothing'(at) {
    const theirs = `${sheet('60 ft')}\nTheirs.\n`;
    writeFileSync(at.file, theirs);
    await at.notice('forms.kft.md was changed by another program, and here are changes of yours that are not saved.');
    await at.press('Control+s');
    await at.notice('The content of the file is newer');
    assert.equal(readFileSync(at.file, 'utf8'), theirs);
    await at.shows('200');
    await at.picture('changed elsewhere');
    await at.workbench.command('Notifications: Clear All Notifications');
    await at.workbench.command('File: Revert File');
    await at.shows('120');
  },

  async 'has what was typed again after the editor is killed'(at) {
    const before = readFileSync(at.file, 'utf8');
    await at.workbench.command('Kilofoot: Change an Input…');
    await at.form('Change an Input');
    await at.page.keyboard.type('run');
    await at.press('Enter');
    await at.form('New value of run');
    await at.page.keyboard.type('77');
    await at.press('Enter');
    await at.form('Change an Input');
    await at.press('Escape');
    await at.shows('154');
    // What the editor keeps is the sheet itself, byte for byte, behind a first line of its own.
    const expected = before.replace('60 ft', '77 ft');
    const isKept = () => at.backups().some((text) => text.endsWith(`\n${expected}`));
    for (let i = 0; i < 100 && !isKept(); i++) {
      await at.page.waitForTimeout(100);
    }
    assert.ok(isKept(), `no copy is kept: ${at.backups().join('\n---\n')}`);
    await at.kill();
    assert.equal(readFileSync(at.file, 'utf8'), before);
    await at.start();
    await at.page.locator('.tab.dirty', { hasText: 'forms.kft.md' }).click();
    await at.workbench.notebook.waitFor();
    await at.shows('154');
    await at.press('Control+s');
    await at.page.locator('.tab:not(.dirty)', { hasText: 'forms.kft.md' }).waitFor();
    assert.equal(readFileSync(at.file, 'utf8'), expected);
  },
};

async function main(): Promise<number> {
  mkdirSync(join(root, 'out/shots'), { recursive: true });
  const at = new HardTimes();
  let [passed, failed] = [0, 0];
  try {
    installPackage(edition, at.scratch, join(root, 'kilofoot.vsix'));
    await at.start({ isRestricted: true });
    stamp('the package installed');
    for (const [name, step] of Object.entries(steps)) {
      try {
        await step(at);
        passed++;
        console.log(`  ok   ${name}`);
      } catch (error) {
        failed++;
        console.log(`  FAIL ${name}\n       ${String((error as Error).stack).replace(/\n/g, '\n       ')}`);
      }
      await at.picture(name).catch(() => {});
    }
  } catch (error) {
    failed++;
    console.error(error);
  } finally {
    await at.stop();
  }
  console.log(`${passed} passed, ${failed} failed`);
  return failed === 0 && passed > 0 ? 0 : 1;
}

main().then((code) => process.exit(code));
