/** The same suite in VS Code on the desktop, for machines with a network, or with `VSCODE_EXECUTABLE` set. */
import { join } from 'node:path';
import { downloadAndUnzipVSCode, runTests } from '@vscode/test-electron';
import { makeScratch, makeWorkspace, root } from './scratch';

async function main(): Promise<number> {
  const scratch = makeScratch();
  const workspace = makeWorkspace(scratch);
  const version = process.env.VSCODE_VERSION ?? '1.90.2';
  const executable =
    process.env.VSCODE_EXECUTABLE ?? (await downloadAndUnzipVSCode({ version, timeout: 15_000 }).catch(unreachable));
  return runTests({
    vscodeExecutablePath: executable,
    extensionDevelopmentPath: root,
    extensionTestsPath: join(root, 'out/suite/index.node.js'),
    launchArgs: [
      workspace,
      ...['--disable-extensions', '--disable-workspace-trust', '--no-sandbox'],
      ...['--user-data-dir', join(scratch, 'data')],
    ],
  });
}

function unreachable(error: Error): never {
  throw new Error(`VS Code could not be downloaded (${error.message}). Without a network use npm run test:host.`);
}

main().then(
  (code) => process.exit(code),
  (error) => {
    console.error(error.message);
    process.exit(1);
  },
);
