/** Entry for hosts in Node: VS Code on the desktop and the VS Code server. */
import Mocha from 'mocha';
import { loadTests } from './load-tests';
import { follow } from './report';

export async function run(): Promise<void> {
  const mocha = new Mocha({
    ui: 'bdd',
    timeout: 60_000,
    reporter: class {} as never,
    grep: process.env.HOST_TEST_GREP,
  });
  // `describe` and `it` become globals before the tests are loaded.
  mocha.suite.emit('pre-require', globalThis as never, '', mocha);
  loadTests();
  const failures = await new Promise<number>((resolve) => follow(mocha.run(resolve)));
  if (failures) {
    throw new Error(`${failures} failed`);
  }
}
