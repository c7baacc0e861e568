/** Opens the report of every example and starter sheet as a web page in Chromium and lets axe look for obstacles. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import { findChromium, startBrowser } from '../../vscode/host/browser';
import { bytesOf } from '../report-of';

const root = join(__dirname, '..', '..', '..');

async function main(): Promise<number> {
  if (!findChromium()) {
    console.log('\nThe reports were NOT looked at for accessibility: that needs Chromium, which was not found.');
    console.log('On Debian: apt-get install chromium. Elsewhere set CHROMIUM to its path. Then: npm run test:reports');
    return 0;
  }
  const scratch = mkdtempSync(join(tmpdir(), 'kilofoot-reports-'));
  const { page, context } = await startBrowser(scratch);
  let failed = 0;
  const sheets = ['examples', 'seeds'].flatMap((folder) =>
    readdirSync(join(root, folder)).map((name) => join(folder, name)),
  );
  try {
    for (const sheet of sheets.filter((name) => /\.kft(\.md)?$/.test(name))) {
      const html = await bytesOf(readFileSync(join(root, sheet), 'utf8'), 'html');
      await page.setContent(new TextDecoder().decode(html));
      await page.addScriptTag({ path: require.resolve('axe-core/axe.min.js') });
      const { violations }: AxeResults = await page.evaluate('axe.run()');
      const pages = countPages(await page.pdf({ preferCSSPageSize: true }));
      const well = violations.length === 0 && pages > 0;
      failed += well ? 0 : 1;
      console.log(`${well ? '✔' : '✘'} ${sheet}: ${pages} printed pages`);
      for (const { id, impact, nodes } of violations) {
        console.log(`    ${id} (${impact}): ${nodes[0].html.slice(0, 200)}`);
      }
    }
  } finally {
    await context.close();
    rmSync(scratch, { recursive: true, force: true });
  }
  const looked = sheets.filter((name) => /\.kft(\.md)?$/.test(name)).length;
  console.log(`${looked - failed} passed, ${failed} failed`);
  return failed === 0 ? 0 : 1;
}

const countPages = (pdf: Uint8Array): number =>
  Buffer.from(pdf)
    .toString('latin1')
    .match(/\/Type\s*\/Page\b/g)?.length ?? 0;

main().then((code) => {
  process.exitCode = code;
});
