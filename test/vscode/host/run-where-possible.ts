/** Runs the suite in the default host, or says plainly that it was not run and how to get what is missing. */
import { spawnSync } from 'node:child_process';
import { findChromium } from './browser';
import { root } from './scratch';

if (findChromium()) {
  process.exit(spawnSync('npm', ['run', '--silent', 'test:host'], { cwd: root, stdio: 'inherit' }).status ?? 1);
}
console.log(`
The tests inside VS Code were NOT run: they need Chromium, which was not found.
On Debian: apt-get install chromium. Elsewhere set CHROMIUM to its path. Then: npm run test:host`);
