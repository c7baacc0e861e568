/** Entry for the web worker host: the same suite with the browser build of mocha, all in one file. */
import 'mocha/mocha.js';
import { loadTests } from './load-tests';
import { follow } from './report';

declare const mocha: BrowserMocha & { run(done: (failures: number) => void): Mocha.Runner };

export async function run(): Promise<void> {
  mocha.setup({
    ui: 'bdd',
    timeout: 60_000,
    reporter: class {} as never,
    grep: process.env.HOST_TEST_GREP || undefined,
  });
  loadTests();
  const failures = await new Promise<number>((resolve) => follow(mocha.run(resolve)));
  if (failures) {
    throw new Error(`${failures} failed`);
  }
}
