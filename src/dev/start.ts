/** Builds, evaluates every example sheet on the console, and says how to open one in the editor: `npm start`. */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

const root = join(__dirname, '..', '..');
const node = (...args: string[]): number =>
  spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' }).status ?? 1;

const examples = readdirSync(join(root, 'examples'))
  .filter((name) => name.endsWith('.kft.md'))
  .map((name) => `examples/${name}`)
  .sort();

const built = node('--import', 'tsx', 'src/dev/build.ts');
// A sheet whose check fails, as an example may show, makes the command line end with 1; only 2 and above is a fault here.
const ran = built === 0 ? node('dist/cli.js', 'run', ...examples) : 0;
if (built !== 0 || ran > 1) {
  process.exit(1);
}
console.log(`
The same in VS Code: npm run package makes kilofoot.vsix; install it with "Extensions: Install from VSIX…",
then open ${examples[0]}. On the command line: node dist/cli.js run ${examples[0]}`);
