import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

export const root = resolve(__dirname, '../../..');

const started = performance.now();

/** A line on the console with the seconds since the run began. */
export const stamp = (text: string): void =>
  console.log(`[${((performance.now() - started) / 1000).toFixed(1)}s] ${text}`);

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
  process.on(signal, () => process.exit(1)); // So that the clean-up handlers on `exit` run.
}

/** One run's own folder, removed when the run ends. The name is short, for socket paths below it must be. */
export function makeScratch(): string {
  const folder = mkdtempSync(join(tmpdir(), 'kf-'));
  if (!process.env.KEEP) {
    process.on('exit', () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));
  }
  return folder;
}

/** A workspace with copies of the examples, for the tests to open and change. */
export function makeWorkspace(scratch: string): string {
  const workspace = join(scratch, 'ws');
  cpSync(join(root, 'examples'), workspace, { recursive: true });
  return workspace;
}

/** User settings for quiet, offline, repeatable runs. */
export function writeSettings(scratch: string, more: Readonly<Record<string, unknown>> = {}): void {
  const folder = join(scratch, 'data/User');
  mkdirSync(folder, { recursive: true });
  const settings = {
    'telemetry.telemetryLevel': 'off',
    'update.mode': 'none',
    'extensions.autoUpdate': false,
    'extensions.autoCheckUpdates': false,
    'workbench.startupEditor': 'none',
    'workbench.tips.enabled': false,
    'workbench.enableExperiments': false,
    'workbench.secondarySideBar.defaultVisibility': 'hidden',
    'workbench.reduceMotion': 'on',
    'security.workspace.trust.enabled': false,
    'git.enabled': false,
    'chat.disableAIFeatures': true,
    'chat.commandCenter.enabled': false,
    'editor.cursorBlinking': 'solid',
    'files.autoSave': 'off', // In the browser it is on unless said.
    ...more,
  };
  writeFileSync(join(folder, 'settings.json'), JSON.stringify(settings));
}
