import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { useOneServiceWorker } from './one-service-worker';

export interface Browser {
  readonly page: Page;
  readonly context: BrowserContext;
}

/** The Chromium that is installed here, or undefined. */
export function findChromium(): string | undefined {
  const names = ['chromium', 'chromium-browser', 'google-chrome'];
  const folders = (process.env.PATH ?? '').split(delimiter);
  return process.env.CHROMIUM ?? names.flatMap((name) => folders.map((f) => join(f, name))).find((f) => existsSync(f));
}

/** Starts it with a fresh profile, able to reach the loopback alone. */
export async function startBrowser(scratch: string, viewport = { width: 1280, height: 900 }): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) {
    throw new Error('Chromium was not found; on Debian: apt-get install -y chromium');
  }
  const profile = join(scratch, 'chromium');
  mkdirSync(join(profile, 'Default'), { recursive: true });
  // A browser that blocks third-party cookies keeps the notebook's output frames from loading.
  const cookies = { profile: { cookie_controls_mode: 0, block_third_party_cookies: false } };
  writeFileSync(join(profile, 'Default/Preferences'), JSON.stringify(cookies));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath,
    headless: true,
    viewport,
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost, EXCLUDE *.localhost',
    ],
  });
  await useOneServiceWorker(context);
  const page = context.pages()[0] ?? (await context.newPage());
  if (process.env.VERBOSE) {
    page.on('console', (message) => console.log(`  page: ${message.type()} ${message.text().slice(0, 900)}`));
  }
  return { page, context };
}

/** The workbench's address with a folder open; `payload` carries VS Code's own test options. */
export function workbenchAddress(
  authority: string,
  folder: string,
  payload: readonly (readonly string[])[] = [],
): string {
  return `http://${authority}/?${new URLSearchParams({ folder, payload: JSON.stringify(payload) })}`;
}
